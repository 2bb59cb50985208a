package afterweld.section;

import afterweld.section.WeldReplay.AtStation;
import afterweld.strength.Strength;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * Computes the stations of a section from left to right, all cores at once, and adds stations where
 * neighbours differ. The two sides of a symmetric weld are computed once. The result does not
 * depend on the number of cores.
 */
final class StationLine {
  private static final int ROUNDS = 2;
  private static final double SMALLEST_GAP = 0.3e-3;
  private static final double YIELD_STEP = 12e6;

  private final SideRun left;
  private final SideRun right;
  private final boolean symmetric;
  private final StationDensity density;

  /**
   * A line of stations.
   *
   * @param symmetric whether the right side is the left one mirrored
   * @param density how often stations are added
   */
  StationLine(SideRun left, SideRun right, boolean symmetric, StationDensity density) {
    this.left = left;
    this.right = right;
    this.symmetric = symmetric;
    this.density = density;
  }

  /**
   * The stations from left to right, where they are needed.
   *
   * @param leftStart distances on the left to begin with, m without sign, nearest first
   * @param rightStart the same on the right
   */
  List<StationRun> compute(List<Double> leftStart, List<Double> rightStart) {
    List<StationRun> leftRuns = refined(left, leftStart, -1);
    return joined(leftRuns, symmetric ? mirrored(leftRuns) : refined(right, rightStart, 1));
  }

  /**
   * Stations from left to right, none added: a preview.
   *
   * @param lefts distances on the left, m without sign, nearest first
   * @param rights the same on the right
   */
  List<StationRun> some(List<Double> lefts, List<Double> rights) {
    List<StationRun> leftRuns = ZoneRule.inOrder(at(left, lefts, -1));
    return joined(
        leftRuns, symmetric ? mirrored(leftRuns) : ZoneRule.inOrder(at(right, rights, 1)));
  }

  /** The stations of a preview, moment by moment. */
  List<AtStation> replayed(List<Double> lefts, List<Double> rights) {
    List<AtStation> all = new ArrayList<>(replayed(left, lefts, -1));
    Collections.reverse(all);
    List<AtStation> others =
        symmetric
            ? reversed(all).stream().map(AtStation::mirrored).toList()
            : replayed(right, rights, 1);
    others.stream().filter(station -> station.distance() > 0).forEach(all::add);
    return all;
  }

  private static List<AtStation> replayed(SideRun side, List<Double> distances, int sign) {
    return distances.parallelStream()
        .map(distance -> side.replayed(0.0 + sign * distance))
        .toList();
  }

  private static List<AtStation> reversed(List<AtStation> stations) {
    List<AtStation> turned = new ArrayList<>(stations);
    Collections.reverse(turned);
    return turned;
  }

  /**
   * Another run of the same stations.
   *
   * @param runs stations from left to right
   * @param which those to compute again; the others are kept
   */
  List<StationRun> again(List<StationRun> runs, Predicate<StationRun> which) {
    List<StationRun> leftRuns = repeated(left, half(runs, run -> run.distance() <= 0), which);
    Collections.reverse(leftRuns);
    return joined(
        leftRuns,
        symmetric
            ? mirrored(leftRuns)
            : repeated(right, half(runs, run -> run.distance() > 0), which));
  }

  private static Stream<StationRun> half(List<StationRun> runs, Predicate<StationRun> side) {
    return runs.stream().filter(side);
  }

  private static List<StationRun> repeated(
      SideRun side, Stream<StationRun> runs, Predicate<StationRun> which) {
    return new ArrayList<>(
        runs.toList().parallelStream()
            .map(run -> which.test(run) ? side.at(run.distance()) : run)
            .toList());
  }

  private static List<StationRun> mirrored(List<StationRun> runs) {
    return runs.stream().map(StationRun::mirrored).toList();
  }

  /** Left half reversed and right half; the weld centre belongs to the left. */
  private static List<StationRun> joined(List<StationRun> leftRuns, List<StationRun> rightRuns) {
    List<StationRun> all = new ArrayList<>(leftRuns);
    Collections.reverse(all);
    rightRuns.stream().filter(run -> run.distance() > 0).forEach(all::add);
    return all;
  }

  private List<StationRun> refined(SideRun side, List<Double> distances, int sign) {
    List<StationRun> line = at(side, distances, sign);
    for (int round = 0; round < ROUNDS; round++) {
      line.addAll(at(side, between(line), sign));
      line.sort(Comparator.comparingDouble(run -> Math.abs(run.distance())));
    }
    return ZoneRule.inOrder(line);
  }

  private static List<StationRun> at(SideRun side, List<Double> distances, int sign) {
    return new ArrayList<>(
        distances.parallelStream().map(distance -> side.at(0.0 + sign * distance)).toList());
  }

  private List<Double> between(List<StationRun> line) {
    int lowest = density.full() ? -1 : lowest(line);
    List<Double> added = new ArrayList<>();
    for (int i = 1; i < line.size(); i++) {
      double inner = Math.abs(line.get(i - 1).distance());
      double outer = Math.abs(line.get(i).distance());
      boolean besideLowest = i == lowest || i - 1 == lowest;
      if (outer - inner > SMALLEST_GAP && (besideLowest || differ(line.get(i - 1), line.get(i)))) {
        added.add(StationPlacement.rounded((inner + outer) / 2));
      }
    }
    return added;
  }

  /** The station with the lowest yield in the last state. */
  private static int lowest(List<StationRun> line) {
    int lowest = 0;
    for (int i = 1; i < line.size(); i++) {
      if (last(line.get(i)).yield() < last(line.get(lowest)).yield()) {
        lowest = i;
      }
    }
    return lowest;
  }

  private static Strength last(StationRun run) {
    return run.strengths().get(run.strengths().size() - 1);
  }

  private boolean differ(StationRun one, StationRun other) {
    int states = one.strengths().size();
    for (int state = density.full() ? 0 : states - 1; state < states; state++) {
      Strength a = one.strengths().get(state);
      Strength b = other.strengths().get(state);
      if (Math.abs(a.yield() - b.yield()) > YIELD_STEP) {
        return true;
      }
    }
    return false;
  }
}
