package afterweld.cli;

import afterweld.section.OutputQuantity;
import afterweld.section.UnitSystem;
import afterweld.section.WeldCase;
import afterweld.study.GridInput;
import afterweld.study.GridStudy;
import afterweld.study.GridStudy.Node;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/** A map over one or two inputs as a table, as CSV and for programs. */
final class GridOutput {
  static final String CAUTION =
      "Best estimates for sound metal, without their bands; not a design value. The qualified"
          + " procedure and the test coupon decide.";

  private static final double EVEN = 0.01;

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
    head.add("lowest_" + OutputQuantity.YIELD.key(units));
    head.add("joint_" + OutputQuantity.TENSILE.key(units));
    head.add("softened_width_" + units.lengthUnit());
    head.add("bead_width_" + units.lengthUnit());
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
    cells.add(number(units.stress(node.lowestYield()), 2));
    cells.add(number(units.stress(node.tensile()), 2));
    cells.add(number(units.length(node.softenedWidth()), 3));
    cells.add(number(units.length(node.beadWidth()), 3));
    return String.join(",", cells) + "\n";
  }

  private static String number(double value, int decimals) {
    return Double.isFinite(value) ? new JsonNumber(value, decimals).toString() : "";
  }

  /** What a person reads. */
  String text() {
    String over = inputs().stream().map(in -> in.label(units)).collect(Collectors.joining(" and "));
    StringBuilder text = new StringBuilder(Paragraph.of(weldCase.title()));
    text.append(
        Paragraph.of(
            "Map over "
                + over
                + ", "
                + study.nodes().size()
                + " places; last state, dressed flush. The arc efficiency of the case is kept, the"
                + " bead follows."));
    List<String> noWeld =
        study.nodes().stream().map(Node::noWeld).filter(why -> !why.isEmpty()).toList();
    if (!noWeld.isEmpty()) {
      text.append(
          Paragraph.of("No weld at " + noWeld.size() + " places, such as: " + noWeld.get(0) + "."));
    }
    return text.append('\n').append(notices.text()).append('\n').append(answer()).toString();
  }

  /** The answer only. */
  String answer() {
    return study
        .weakest()
        .map(node -> answer(node, study.strongest().orElseThrow()))
        .orElse(Paragraph.of("No strength is predicted anywhere on this map."));
  }

  private String answer(Node weakest, Node strongest) {
    if (strongest.lowestYield() - weakest.lowestYield() < EVEN * strongest.lowestYield()) {
      return Paragraph.of(
          "The lowest yield varies by less than 1 % over the whole map. For instance "
              + place(weakest));
    }
    return study.insideErrorBand()
        ? Paragraph.of("Lowest: " + place(weakest))
            + Paragraph.of("Highest: " + place(strongest) + asGood(strongest))
            + Paragraph.of(bandWords(weakest))
        : Paragraph.of("Weakest: " + place(weakest))
            + Paragraph.of("Strongest: " + place(strongest) + asGood(strongest));
  }

  /** A flat top has no one place that is best. */
  private String asGood(Node strongest) {
    long others =
        study.nodes().stream()
            .filter(node -> node.lowestYield() >= (1 - EVEN) * strongest.lowestYield())
            .count();
    return others == 1
        ? ""
        : " "
            + (others - 1)
            + (others == 2 ? " other place has" : " other places have")
            + " the same within 1 %.";
  }

  private String bandWords(Node weakest) {
    return "All differences over this map lie inside the model's own error band of one value ("
        + OutputQuantity.YIELD.text(units, weakest.lowestYield())
        + " "
        + units.stressUnit()
        + ": "
        + OutputQuantity.YIELD.text(units, weakest.lowestYieldLow())
        + " to "
        + OutputQuantity.YIELD.text(units, weakest.lowestYieldHigh())
        + "). They show which way it tends, not that one place is stronger.";
  }

  private String place(Node node) {
    List<String> at = new ArrayList<>();
    for (int i = 0; i < inputs().size(); i++) {
      GridInput input = inputs().get(i);
      double value = input.kind().in(units, node.values().get(i));
      at.add(
          String.format(
              Locale.ROOT,
              "%s %.3g %s",
              input.key().replace('_', ' '),
              value,
              input.kind().unit(units)));
    }
    return String.join(", ", at)
        + ": lowest yield "
        + OutputQuantity.YIELD.text(units, node.lowestYield())
        + " "
        + units.stressUnit()
        + ", joint tensile strength "
        + OutputQuantity.TENSILE.text(units, node.tensile())
        + " "
        + units.stressUnit()
        + ", over 2 % below the base on "
        + OutputQuantity.DISTANCE.text(units, node.softenedWidth())
        + " "
        + units.lengthUnit()
        + ".";
  }

  /** For programs, always metric. */
  String json() {
    Map<String, Object> root = new LinkedHashMap<>();
    root.put("title", weldCase.title());
    root.put("grid", study.axes().stream().map(GridOutput::axis).toList());
    root.put("inside_error_band", study.insideErrorBand());
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
    json.put("lowest_yield_MPa", new JsonNumber(node.lowestYield() * 1e-6, 1));
    json.put("lowest_yield_low_MPa", new JsonNumber(node.lowestYieldLow() * 1e-6, 1));
    json.put("lowest_yield_high_MPa", new JsonNumber(node.lowestYieldHigh() * 1e-6, 1));
    json.put("joint_tensile_MPa", new JsonNumber(node.tensile() * 1e-6, 1));
    json.put("softened_width_mm", new JsonNumber(node.softenedWidth() * 1e3, 2));
    json.put("bead_width_mm", new JsonNumber(node.beadWidth() * 1e3, 2));
    json.put("no_weld", node.noWeld().isEmpty() ? null : node.noWeld());
    return json;
  }
}
