package afterweld.section;

import afterweld.thermal.StationTimeline;
import afterweld.weld.Side;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
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
  private static final double LADDER_END = 453.15;
  private static final double ABOVE_START = 20;
  private static final double FAR = 1.5;
  private static final double SHORTEST_BASE = 0.030;

  /** Rungs of a preview: of one side that stands for both, or of each of two. */
  private static final int FEW_MIRRORED = 11;

  private static final int FEW_EACH = 6;

  private final StationTimeline timeline;
  private final double warmest;
  private final double width;
  private final double solidus;
  private final StationDensity density;

  /**
   * Placement for one side.
   *
   * @param side its part
   * @param timeline heat of all passes in its leg
   * @param warmest start temperature of a pass, K
   * @param density how close the ladder is
   */
  StationPlacement(Side side, StationTimeline timeline, double warmest, StationDensity density) {
    this.timeline = timeline;
    this.warmest = warmest;
    this.width = side.width().orElse(Double.POSITIVE_INFINITY);
    this.solidus = side.alloy().solidus();
    this.density = density;
  }

  /** The stations, nearest first, the weld centre included. */
  List<Double> distances() {
    TreeSet<Double> all = new TreeSet<>(aroundFusionLine());
    all.addAll(aroundSolidus());
    List<Double> ladder = ladder();
    all.addAll(ladder);
    double end = ladder.get(ladder.size() - 1);
    if (density.full()) {
      all.add(rounded(end * (1 + FAR) / 2));
    }
    addBase(all, end);
    return new ArrayList<>(all.headSet(width, true).tailSet(0.0));
  }

  /**
   * Some of them, for a preview: at the fusion line, evenly up the ladder, and one in the base.
   *
   * @param mirrored whether this side stands for the other one too
   */
  List<Double> few(boolean mirrored) {
    TreeSet<Double> some = new TreeSet<>(aroundFusionLine());
    int most = mirrored ? FEW_MIRRORED : FEW_EACH;
    int last = rungs();
    List<Double> rungs =
        rungs(IntStream.range(0, most).map(i -> 1 + Math.round((last - 1f) * i / (most - 1))));
    some.addAll(rungs);
    addBase(some, rungs.get(most - 1));
    return new ArrayList<>(some.headSet(width, true).tailSet(0.0));
  }

  /** One beyond the ladder's end, or where the leg ends. */
  private void addBase(Set<Double> all, double end) {
    all.add(rounded(Math.max(end * FAR, SHORTEST_BASE)));
    if (end > width - ROUND_TO) {
      all.add(width);
    }
  }

  private List<Double> aroundFusionLine() {
    double fusion = timeline.fusionReach();
    return density.full()
        ? List.of(0.0, rounded(fusion / 2), rounded(0.85 * fusion), fusion - HUG, fusion + HUG)
        : List.of(0.0, fusion - HUG, fusion + HUG);
  }

  private List<Double> aroundSolidus() {
    double fusion = timeline.fusionReach();
    double edge = timeline.reach(solidus);
    return List.of(rounded((fusion + edge) / 2), edge - HUG, edge + HUG);
  }

  private List<Double> ladder() {
    return rungs(IntStream.rangeClosed(1, rungs()));
  }

  private int rungs() {
    double coolest = Math.max(LADDER_END, warmest + ABOVE_START);
    return Math.max(1, (int) ((solidus - coolest) / density.step()));
  }

  private List<Double> rungs(IntStream which) {
    return which.parallel().mapToObj(this::reach).toList();
  }

  private double reach(int rung) {
    return rounded(timeline.reach(solidus - rung * density.step()));
  }

  static double rounded(double distance) {
    return Math.round(distance / ROUND_TO) * ROUND_TO;
  }
}
