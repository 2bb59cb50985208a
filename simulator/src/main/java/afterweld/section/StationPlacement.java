package afterweld.section;

import afterweld.thermal.PlateField;
import afterweld.thermal.WeldTimeline;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;

/**
 * Where the stations of one side begin: on a ladder of peak temperatures, so that they lie close
 * together where the metal changes and far apart in the base. A pair hugs the fusion line and
 * another the solidus, so that a step in the strength stays a step. Distances in m from the weld
 * centre, without sign.
 */
final class StationPlacement {
  private static final double HUG = 1e-5;
  private static final double ROUND_TO = 1e-5;
  private static final double LADDER_STEP = 14;
  private static final double LADDER_END = 453.15;
  private static final double ABOVE_START = 20;
  private static final double FAR = 1.5;
  private static final double SHORTEST_BASE = 0.030;

  private final List<PlateField> fields;
  private final List<Double> offsets;
  private final double width;
  private final double solidus;

  /**
   * Placement for one side.
   *
   * @param side its part
   * @param timeline heat of all passes in its leg
   * @param offsets of the passes' beads towards this side, m
   */
  StationPlacement(Side side, WeldTimeline timeline, List<Double> offsets) {
    this.fields = IntStream.range(0, offsets.size()).mapToObj(timeline::field).toList();
    this.offsets = List.copyOf(offsets);
    this.width = side.width().orElse(Double.POSITIVE_INFINITY);
    this.solidus = side.alloy().solidus();
  }

  /** The stations, nearest first, the weld centre included. */
  List<Double> distances() {
    TreeSet<Double> all = new TreeSet<>(aroundFusionLine());
    all.addAll(aroundSolidus());
    List<Double> ladder = ladder();
    all.addAll(ladder);
    double end = ladder.get(ladder.size() - 1);
    all.add(rounded(end * (1 + FAR) / 2));
    all.add(rounded(Math.max(end * FAR, SHORTEST_BASE)));
    return new ArrayList<>(all.headSet(width, true).tailSet(0.0));
  }

  private List<Double> aroundFusionLine() {
    double fusion = furthest(PlateField::fusionHalfWidth);
    return List.of(0.0, rounded(fusion / 2), rounded(0.85 * fusion), fusion - HUG, fusion + HUG);
  }

  private List<Double> aroundSolidus() {
    double fusion = furthest(PlateField::fusionHalfWidth);
    double edge = reach(solidus);
    return List.of(rounded((fusion + edge) / 2), edge - HUG, edge + HUG);
  }

  private List<Double> ladder() {
    double warmest = fields.stream().mapToDouble(PlateField::startTemperature).max().orElseThrow();
    double coolest = Math.max(LADDER_END, warmest + ABOVE_START);
    int rungs = Math.max(1, (int) ((solidus - coolest) / LADDER_STEP));
    return IntStream.rangeClosed(1, rungs)
        .parallel()
        .mapToObj(rung -> rounded(reach(solidus - rung * LADDER_STEP)))
        .toList();
  }

  /** How far from the weld centre any pass brings the metal to a peak temperature, m. */
  private double reach(double peak) {
    return furthest(field -> field.isotherm(peak));
  }

  private double furthest(ToDoubleFunction<PlateField> halfWidth) {
    return IntStream.range(0, fields.size())
        .mapToDouble(i -> halfWidth.applyAsDouble(fields.get(i)) + offsets.get(i))
        .max()
        .orElseThrow();
  }

  static double rounded(double distance) {
    return Math.round(distance / ROUND_TO) * ROUND_TO;
  }
}
