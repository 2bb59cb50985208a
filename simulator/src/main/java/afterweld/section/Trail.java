package afterweld.section;

import afterweld.metallurgy.State;
import afterweld.strength.Strength;
import afterweld.thermal.TemperatureHistory;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A place in one piece of metal's life, from which several histories may go on. What was followed
 * once is kept, so that another ageing time does not repeat the solution treatment before it. May
 * be used by several threads at once; two that follow the same history at the same moment both
 * compute it and find the same.
 *
 * @param <S> kind of state of the metal
 */
final class Trail<S extends State> {
  private static final int MOST_KEPT = 32;

  private final SectionMetal<S> metal;
  private final S state;
  private final Strength strength;
  private final Map<TemperatureHistory, Trail<S>> onwards = new LinkedHashMap<>();

  /** The metal of a section in a state. */
  Trail(SectionMetal<S> metal, S state) {
    this.metal = metal;
    this.state = state;
    this.strength = metal.strength().apply(state);
  }

  /** How strong it is here. */
  Strength strength() {
    return strength;
  }

  /** Where a history leads from here. */
  Trail<S> after(TemperatureHistory history) {
    synchronized (onwards) {
      Trail<S> known = onwards.get(history);
      if (known != null) {
        return known;
      }
    }
    Trail<S> found = new Trail<>(metal, metal.metallurgy().advance(state, history));
    synchronized (onwards) {
      if (onwards.size() >= MOST_KEPT) {
        onwards.remove(onwards.keySet().iterator().next());
      }
      onwards.putIfAbsent(history, found);
    }
    return found;
  }

  /** Strengths after each of the histories that follow one another from here. */
  List<Strength> strengthsAlong(List<TemperatureHistory> histories) {
    List<Strength> strengths = new ArrayList<>();
    Trail<S> trail = this;
    for (TemperatureHistory history : histories) {
      trail = trail.after(history);
      strengths.add(trail.strength());
    }
    return strengths;
  }

  /**
   * Strength at every point of a history from here, cut at its points, which changes nothing.
   *
   * @return one per point of the history
   */
  List<Strength> strengthsWithin(TemperatureHistory history) {
    List<Strength> strengths = new ArrayList<>(List.of(strength));
    S now = state;
    for (int i = 1; i < history.size(); i++) {
      now = metal.metallurgy().advance(now, piece(history, i));
      strengths.add(metal.strength().apply(now));
    }
    return strengths;
  }

  private static TemperatureHistory piece(TemperatureHistory history, int end) {
    double[] times = {0, history.time(end) - history.time(end - 1)};
    double[] temperatures = {history.temperature(end - 1), history.temperature(end)};
    return TemperatureHistory.of(times, temperatures);
  }

  /** The zone that the weld made of it, if it changed it and here is where it has cooled. */
  Zone zoneIfChanged() {
    return metal.zone().apply(metal.before(), state);
  }
}
