package afterweld.document;

import static afterweld.document.JsonNumber.megapascal;

import afterweld.quantity.UnitSystem;
import afterweld.study.GridInput;
import afterweld.study.GridStudy;
import afterweld.study.GridStudy.Node;
import afterweld.study.Ranking;
import afterweld.weld.WeldCase;
import java.util.DoubleSummaryStatistics;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;

/** The result of {@code spread --grid} for programs. */
public final class GridJson {
  private final WeldCase weldCase;
  private final GridStudy study;
  private final Notices notices;

  /** The JSON of a map. */
  public GridJson(WeldCase weldCase, GridStudy study, Notices notices) {
    this.weldCase = weldCase;
    this.study = study;
    this.notices = notices;
  }

  /** The JSON text, always metric. */
  public String text() {
    Map<String, Object> root = new LinkedHashMap<>();
    root.put("title", weldCase.title());
    root.put("grid", study.axes().stream().map(GridJson::axis).toList());
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
    for (int i = 0; i < study.inputs().size(); i++) {
      GridInput input = study.inputs().get(i);
      json.put(
          input.column(UnitSystem.METRIC),
          new JsonNumber(input.kind().in(UnitSystem.METRIC, node.values().get(i)), 3));
    }
    json.putAll(RankingJson.joint(study.aim(), node.joint()));
    json.put("lowest_yield_MPa", megapascal(node.lowestYield().middle()));
    json.put("lowest_yield_low_MPa", megapascal(node.lowestYield().low()));
    json.put("lowest_yield_high_MPa", megapascal(node.lowestYield().high()));
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
    for (int i = 0; i < study.inputs().size() && !places.isEmpty(); i++) {
      int axis = i;
      GridInput input = study.inputs().get(axis);
      DoubleSummaryStatistics values =
          places.stream()
              .mapToDouble(place -> study.nodes().get(place).values().get(axis))
              .summaryStatistics();
      json.put(input.column(UnitSystem.METRIC), ends(input, values));
    }
    return json;
  }

  private static List<JsonNumber> ends(GridInput input, DoubleSummaryStatistics values) {
    return List.of(
        new JsonNumber(input.kind().in(UnitSystem.METRIC, values.getMin()), 3),
        new JsonNumber(input.kind().in(UnitSystem.METRIC, values.getMax()), 3));
  }
}
