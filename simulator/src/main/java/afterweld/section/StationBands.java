package afterweld.section;

import afterweld.section.Station.Place;
import afterweld.strength.Strength;
import afterweld.weld.Side;
import afterweld.weld.WeldCase;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleBinaryOperator;

/**
 * Turns runs of the same stations into stations with bands: the extremes of the runs at the ends of
 * default inputs, widened by the model's own error; middle and zone from the middle run. Metal that
 * is as it was delivered keeps the minimum of its temper ({@link DeliveredMinimum}).
 */
final class StationBands {
  private static final int BEFORE = 0;
  private static final int AS_WELDED = 1;

  private final WeldCase weldCase;
  private final int[] shownStates;
  private final Optional<DeliveredMinimum> left;
  private final Optional<DeliveredMinimum> right;

  /**
   * Bands of a case.
   *
   * @param shownStates which of the computed states are shown
   */
  StationBands(WeldCase weldCase, int[] shownStates) {
    this.weldCase = weldCase;
    this.shownStates = shownStates.clone();
    this.left = DeliveredMinimum.of(weldCase.left());
    this.right = DeliveredMinimum.of(weldCase.right());
  }

  /**
   * The stations.
   *
   * @param middle the runs with the best inputs, from left to right
   * @param others the same stations run with other inputs
   */
  List<Station> stations(List<StationRun> middle, List<List<StationRun>> others) {
    List<Station> stations = new ArrayList<>();
    for (int i = 0; i < middle.size(); i++) {
      List<StationRun> runs = new ArrayList<>(List.of(middle.get(i)));
      for (List<StationRun> other : others) {
        runs.add(other.get(i));
      }
      stations.add(station(runs));
    }
    return stations;
  }

  private Station station(List<StationRun> runs) {
    StationRun middle = runs.get(0);
    List<Estimate> estimates = new ArrayList<>();
    for (int state : shownStates) {
      estimates.add(estimate(runs, state));
    }
    return new Station(
        middle.distance(),
        place(middle),
        middle.zone(),
        middle.heat().peakTemperature(),
        estimates);
  }

  private static Place place(StationRun run) {
    if (run.melted()) {
      return Place.WELD;
    }
    return run.distance() <= 0 ? Place.LEFT : Place.RIGHT;
  }

  private Estimate estimate(List<StationRun> runs, int state) {
    return new Estimate(
        runs.get(0).strengths().get(state),
        runs.stream()
            .map(run -> low(run, state))
            .reduce((a, b) -> each(Math::min, a, b))
            .orElseThrow(),
        runs.stream()
            .map(run -> band(run, state).high(run.strengths().get(state)))
            .reduce((a, b) -> each(Math::max, a, b))
            .orElseThrow());
  }

  private Strength low(StationRun run, int state) {
    Strength strength = run.strengths().get(state);
    Strength low = band(run, state).low(strength);
    boolean delivered = state == BEFORE || (state == AS_WELDED && run.zone() == Zone.BASE);
    Optional<DeliveredMinimum> least = run.distance() <= 0 ? left : right;
    return delivered ? least.map(one -> one.under(low, strength)).orElse(low) : low;
  }

  private static Strength each(DoubleBinaryOperator choice, Strength a, Strength b) {
    return new Strength(
        choice.applyAsDouble(a.yield(), b.yield()),
        choice.applyAsDouble(a.tensile(), b.tensile()),
        choice.applyAsDouble(a.hardness(), b.hardness()));
  }

  private ErrorBand band(StationRun run, int state) {
    Side side = run.distance() <= 0 ? weldCase.left() : weldCase.right();
    return ErrorBand.of(side.temper().name(), run.zone(), state, weldCase.afterWeld());
  }
}
