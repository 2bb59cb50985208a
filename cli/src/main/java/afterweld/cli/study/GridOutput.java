package afterweld.cli.study;

import afterweld.cli.command.Notices;
import afterweld.cli.terminal.JsonNumber;
import afterweld.cli.terminal.JsonText;
import afterweld.cli.terminal.Paragraph;
import afterweld.quantity.OutputQuantity;
import afterweld.quantity.UnitSystem;
import afterweld.study.GridInput;
import afterweld.study.GridStudy;
import afterweld.study.GridStudy.Node;
import afterweld.study.JointFigures;
import afterweld.study.Ranking;
import afterweld.weld.WeldCase;
import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalInt;
import java.util.stream.Collectors;

/** A map over one or two inputs as a table, as CSV and for programs. */
final class GridOutput {
  static final String CAUTION =
      "Best estimates for sound metal, without their bands; not a design value. The qualified"
          + " procedure and the test coupon decide.";

  private final WeldCase weldCase;
  private final GridStudy study;
  private final Notices notices;
  private final UnitSystem units;

  GridOutput(WeldCase weldCase, GridStudy study, Notices notices, UnitSystem units) {
    this.notices = notices;
    this.weldCase = weldCase;
    this.study = study;
    this.units = units;
  }

  private List<GridInput> inputs() {
    return study.axes().stream().map(GridStudy.Axis::input).toList();
  }

  /** A row for each place. */
  String csv() {
    List<String> head = new ArrayList<>();
    inputs().forEach(input -> head.add(input.key() + "_" + unit(input, units)));
    head.add("joint_proof_" + units.stressUnit());
    head.add("joint_" + OutputQuantity.TENSILE.key(units));
    head.add("lowest_hardness_HV");
    head.add("lowest_" + OutputQuantity.YIELD.key(units));
    head.add("softened_width_" + units.lengthUnit());
    head.add("bead_width_" + units.lengthUnit());
    head.add("verdict");
    head.add("blank_or_objected");
    return String.join(",", head)
        + "\n"
        + study.nodes().stream().map(this::row).collect(Collectors.joining());
  }

  private static String unit(GridInput input, UnitSystem units) {
    String unit = input.kind().unit(units);
    return unit.equals("%") ? "percent" : unit.replace("°", "").replace('/', '_');
  }

  private String row(Node node) {
    List<String> cells = new ArrayList<>();
    for (int i = 0; i < inputs().size(); i++) {
      cells.add(number(inputs().get(i).kind().in(units, node.values().get(i)), 3));
    }
    JointFigures figures = node.joint().figures();
    cells.add(number(units.stress(figures.proof()), 2));
    cells.add(number(units.stress(figures.tensile()), 2));
    cells.add(number(figures.hardness(), 1));
    cells.add(number(units.stress(node.lowestYield().middle()), 2));
    cells.add(number(units.length(node.softenedWidth()), 3));
    cells.add(number(units.length(node.beadWidth()), 3));
    cells.add(RankingJson.verdict(study.aim(), node.joint()).orElse(""));
    cells.add(quoted(GridAnswer.against(node.joint())));
    return String.join(",", cells) + "\n";
  }

  private static String quoted(String text) {
    return text.isEmpty() ? "" : '"' + text.replace("\"", "\"\"") + '"';
  }

  private static String number(double value, int decimals) {
    return Double.isFinite(value) ? new JsonNumber(value, decimals).toString() : "";
  }

  /** What a person reads. */
  String text() {
    String over = inputs().stream().map(in -> in.label(units)).collect(Collectors.joining(" and "));
    return Paragraph.of(weldCase.title())
        + Paragraph.of(
            "Map over "
                + over
                + ", "
                + study.nodes().size()
                + " places; last state, dressed flush. The bead follows the inputs at the arc"
                + " efficiency of the case, "
                + efficiencies()
                + ": write that as efficiency, in place of bead_width, to have a place as a case.")
        + "\n"
        + notices.text()
        + "\n"
        + answer();
  }

  private String efficiencies() {
    return study.efficiencies().stream()
        .map(efficiency -> String.format(Locale.ROOT, "%.3f", efficiency))
        .distinct()
        .collect(Collectors.joining(", "));
  }

  /** The answer only. */
  String answer() {
    return new GridAnswer(study, units).text();
  }

  /** For programs, always metric. */
  String json() {
    Map<String, Object> root = new LinkedHashMap<>();
    root.put("title", weldCase.title());
    root.put("grid", study.axes().stream().map(GridOutput::axis).toList());
    root.put("efficiencies", study.efficiencies().stream().map(e -> new JsonNumber(e, 4)).toList());
    root.put("ranked_by", RankingJson.rankedBy(study.aim()));
    root.put("as_written", RankingJson.joint(study.aim(), study.asWritten()));
    Ranking ranking = study.ranking();
    root.put("best", json(ranking.best()));
    root.put("as_good_within_1_percent", places(ranking.asGood()));
    root.put("within_the_error_of_the_best", places(ranking.withinError()));
    root.put("inside_error_band", ranking.insideError());
    root.put("places", study.nodes().stream().map(this::placeJson).toList());
    notices.addTo(root);
    return JsonText.of(root);
  }

  private static Map<String, Object> axis(GridStudy.Axis axis) {
    GridInput.Kind kind = axis.input().kind();
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("input", axis.input().key());
    json.put("unit", kind.unit(UnitSystem.METRIC));
    json.put("from", new JsonNumber(kind.in(UnitSystem.METRIC, axis.low()), 3));
    json.put("to", new JsonNumber(kind.in(UnitSystem.METRIC, axis.high()), 3));
    return json;
  }

  private Map<String, Object> placeJson(Node node) {
    Map<String, Object> json = new LinkedHashMap<>();
    for (int i = 0; i < inputs().size(); i++) {
      GridInput input = inputs().get(i);
      json.put(
          input.key() + "_" + unit(input, UnitSystem.METRIC),
          new JsonNumber(input.kind().in(UnitSystem.METRIC, node.values().get(i)), 3));
    }
    json.putAll(RankingJson.joint(study.aim(), node.joint()));
    json.put("lowest_yield_MPa", new JsonNumber(node.lowestYield().middle() * 1e-6, 1));
    json.put("lowest_yield_low_MPa", new JsonNumber(node.lowestYield().low() * 1e-6, 1));
    json.put("lowest_yield_high_MPa", new JsonNumber(node.lowestYield().high() * 1e-6, 1));
    json.put("softened_width_mm", new JsonNumber(node.softenedWidth() * 1e3, 2));
    json.put("bead_width_mm", new JsonNumber(node.beadWidth() * 1e3, 2));
    return json;
  }

  private Map<String, Object> json(OptionalInt place) {
    return place.isPresent() ? placeJson(study.nodes().get(place.getAsInt())) : null;
  }

  /** How many, and from where to where along each axis. */
  private Map<String, Object> places(List<Integer> places) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("places", (long) places.size());
    for (int i = 0; i < inputs().size() && !places.isEmpty(); i++) {
      int axis = i;
      GridInput input = inputs().get(axis);
      DoubleSummaryStatistics values =
          places.stream()
              .mapToDouble(place -> study.nodes().get(place).values().get(axis))
              .summaryStatistics();
      json.put(input.key() + "_" + unit(input, UnitSystem.METRIC), ends(input, values));
    }
    return json;
  }

  private static List<JsonNumber> ends(GridInput input, DoubleSummaryStatistics values) {
    return List.of(
        new JsonNumber(input.kind().in(UnitSystem.METRIC, values.getMin()), 3),
        new JsonNumber(input.kind().in(UnitSystem.METRIC, values.getMax()), 3));
  }
}
