package afterweld.section;

import afterweld.strength.Strength;
import afterweld.thermal.furnace.FurnaceStep;
import afterweld.thermal.furnace.FurnaceStep.Age;
import afterweld.thermal.furnace.FurnaceStep.Anneal;
import afterweld.thermal.furnace.FurnaceStep.SolutionTreat;
import afterweld.weld.Side;
import afterweld.weld.Warning;
import afterweld.weld.WeldCase;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * How far ageing past the peak is believed: down to five sixths of the highest yield. Metal that
 * has lost more gets no strength, until it is solution treated or annealed again.
 *
 * <p>Source: reheating tests of 6061-T6 and 6063-T6 extrusions, which end where the yield falls
 * under the minimum of 240 MPa, five sixths of the peak: not within 64 h at 177 °C, 16 h at 199 °C,
 * 4 h at 218 °C (Donovan, Fortune, Trout, California Polytechnic State University 2015). The model
 * meets these times within a factor of 1.5; below it falls faster than handbook curves do. Taken to
 * hold for castings and weld metal too (assumed).
 */
public final class OverageingLimit {
  /** The code of the warning that a schedule goes beyond it. */
  public static final String CODE = "overaged-beyond-tests";

  private static final double KEPT = 5.0 / 6;

  /** A curve that rises by less than this share from a place on has its peak behind it. */
  private static final double RISE = 1.02;

  private static final int HALVINGS = 7;
  private static final int DOUBLINGS = 6;

  private static final String TESTS =
      "6061-T6 kept its minimum yield for over 64 h at 177 °C (350 °F), 16 h at 199 °C (390 °F), 4 h"
          + " at 218 °C (425 °F) in published tests";

  private OverageingLimit() {}

  /** What must stand beside curves that end there. */
  public static Warning aboutCurves() {
    return new Warning(
        "overageing-limit",
        "Past the peak, values are given down to five sixths of the highest yield, as far as tests"
            + " go ("
            + TESTS
            + "). Under that none is given: a hardness test on a piece aged the same way tells.");
  }

  private static Warning aboutSchedule() {
    return new Warning(
        CODE,
        "This ageing takes the metal under five sixths of its highest yield, further than tests go ("
            + TESTS
            + "): no strength is given after it. Age it shorter or cooler; if softening is meant,"
            + " a hardness test on a piece aged the same way tells.");
  }

  /**
   * A curve over the time of one ageing, without what lies beyond the limit.
   *
   * @param curve from the shortest time to one long enough to show whether the metal still rises
   */
  public static List<Strength> claimed(List<Strength> curve) {
    double[] yields = curve.stream().mapToDouble(Strength::yield).toArray();
    return IntStream.range(0, yields.length)
        .mapToObj(i -> beyond(yields, i) ? Strength.NOT_PREDICTED : curve.get(i))
        .toList();
  }

  /** Whether a share of a yield that is left is too little to be believed. */
  public static boolean beyond(double share) {
    return share < KEPT;
  }

  private static boolean beyond(double[] yields, int at) {
    double before = DoubleStream.of(yields).limit(at + 1L).max().orElseThrow();
    double after = DoubleStream.of(yields).skip(at).max().orElseThrow();
    return yields[at] < KEPT * before && after <= RISE * yields[at];
  }

  /** The stations of a profile, without the strengths of the shown states that lie beyond it. */
  static List<Station> claimed(WeldCase weldCase, List<Station> stations, int[] shownStates) {
    List<Boolean> left = beyond(weldCase, weldCase.left());
    List<Boolean> right =
        weldCase.right().equals(weldCase.left()) ? left : beyond(weldCase, weldCase.right());
    if (!left.contains(true) && !right.contains(true)) {
      return stations;
    }
    List<Boolean> either =
        IntStream.range(0, left.size()).mapToObj(i -> left.get(i) || right.get(i)).toList();
    return stations.stream()
        .map(
            station ->
                switch (station.place()) {
                  case LEFT -> without(station, left, shownStates);
                  case RIGHT -> without(station, right, shownStates);
                  case WELD -> without(station, either, shownStates);
                })
        .toList();
  }

  /** What to say about a case whose own schedule goes beyond it; none if it does not. */
  static Stream<Warning> warning(WeldCase weldCase) {
    boolean goes = sides(weldCase).anyMatch(side -> beyond(weldCase, side).contains(true));
    return goes ? Stream.of(aboutSchedule()) : Stream.empty();
  }

  /** Whether a base of the case is beyond it at the end of the schedule. */
  static boolean atTheEnd(WeldCase weldCase) {
    int last = weldCase.afterWeld().size() + 1;
    return sides(weldCase).anyMatch(side -> beyond(weldCase, side).get(last));
  }

  private static Stream<Side> sides(WeldCase weldCase) {
    return Stream.of(weldCase.left(), weldCase.right()).distinct();
  }

  private static Station without(Station station, List<Boolean> beyond, int[] shownStates) {
    Estimate none =
        new Estimate(Strength.NOT_PREDICTED, Strength.NOT_PREDICTED, Strength.NOT_PREDICTED);
    List<Estimate> estimates = new ArrayList<>(station.estimates());
    for (int i = 0; i < shownStates.length; i++) {
      if (beyond.get(shownStates[i])) {
        estimates.set(i, none);
      }
    }
    return new Station(
        station.distance(), station.place(), station.zone(), station.peakTemperature(), estimates);
  }

  /** Of every state, whether the base of a side is beyond the limit in it. */
  private static List<Boolean> beyond(WeldCase weldCase, Side side) {
    List<Boolean> states = new ArrayList<>(Collections.nCopies(2, false));
    List<FurnaceStep> steps = weldCase.afterWeld();
    boolean now = false;
    for (int i = 0; i < steps.size(); i++) {
      if (steps.get(i) instanceof SolutionTreat || steps.get(i) instanceof Anneal) {
        now = false;
      } else if (steps.get(i) instanceof Age age && side.alloy().heatTreatable()) {
        now = now || beyond(AgeingTrial.base(weldCase, side, steps.subList(0, i)), age);
      }
      states.add(now);
    }
    return states;
  }

  private static boolean beyond(AgeingTrial trial, Age age) {
    List<Double> times =
        IntStream.rangeClosed(-HALVINGS, DOUBLINGS)
            .mapToObj(power -> Math.scalb(age.time(), power))
            .toList();
    double[] yields = trial.at(age, times).stream().mapToDouble(Strength::yield).toArray();
    return beyond(yields, HALVINGS);
  }
}
