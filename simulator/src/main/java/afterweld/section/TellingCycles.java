package afterweld.section;

import afterweld.section.SectionProfile.TellingCycle;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * Picks the thermal cycles that tell what the weld did on the softer side: just outside the pool,
 * in the middle of what went back into solution, at the softest place, and where softening ends. A
 * weld that softens nothing, in annealed metal, is told by the place next to the pool.
 */
final class TellingCycles {
  private static final int AS_WELDED = 1;
  private static final Comparator<StationRun> NEXT_TO_POOL =
      Comparator.comparing(StationRun::melted)
          .thenComparingDouble(run -> Math.abs(run.distance()))
          .thenComparingDouble(run -> -run.distance());

  private TellingCycles() {}

  /** At most four cycles, nearest the weld first. */
  static List<TellingCycle> of(List<StationRun> runs) {
    List<StationRun> affected = softerSide(runs);
    if (affected.isEmpty()) {
      return runs.stream().min(NEXT_TO_POOL).map(TellingCycles::cycle).stream().toList();
    }
    TreeSet<StationRun> chosen =
        new TreeSet<>(Comparator.comparingDouble(run -> Math.abs(run.distance())));
    chosen.add(affected.get(0));
    chosen.add(softest(affected.stream()));
    chosen.add(affected.get(affected.size() - 1));
    List<StationRun> dissolved =
        affected.stream().filter(run -> run.zone() == Zone.SOLUTIONIZED).toList();
    if (!dissolved.isEmpty()) {
      chosen.add(dissolved.get(dissolved.size() / 2));
    }
    return chosen.stream().map(TellingCycles::cycle).toList();
  }

  private static TellingCycle cycle(StationRun run) {
    return new TellingCycle(run.distance(), run.zone(), run.heat().history());
  }

  /** Affected stations outside the weld on the side with the softest one, nearest first. */
  private static List<StationRun> softerSide(List<StationRun> runs) {
    List<StationRun> affected =
        new ArrayList<>(
            runs.stream().filter(run -> !run.melted() && run.zone() != Zone.BASE).toList());
    if (affected.isEmpty()) {
      return affected;
    }
    boolean right = softest(affected.stream()).distance() > 0 || mirrored(affected);
    affected.removeIf(run -> run.distance() > 0 != right);
    affected.sort(Comparator.comparingDouble(run -> Math.abs(run.distance())));
    return affected;
  }

  private static boolean mirrored(List<StationRun> affected) {
    double sum = affected.stream().mapToDouble(StationRun::distance).sum();
    return Math.abs(sum) < 1e-9;
  }

  private static StationRun softest(Stream<StationRun> runs) {
    return runs.min(Comparator.comparingDouble(run -> run.strengths().get(AS_WELDED).hardness()))
        .orElseThrow();
  }
}
