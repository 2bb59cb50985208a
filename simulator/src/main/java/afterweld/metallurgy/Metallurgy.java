package afterweld.metallurgy;

import afterweld.thermal.TemperatureHistory;

/**
 * How the state of one metal follows its temperature. Implementations are immutable and may be used
 * by several threads at once.
 *
 * @param <S> the kind of state of this family of alloys
 */
public interface Metallurgy<S extends State> {

  /**
   * The state before any history.
   *
   * @param temperature temperature at which the history begins, K
   */
  S start(double temperature);

  /**
   * The state after one more history. Following a history at once or in parts cut at its points
   * gives the same state.
   *
   * @param state a state of this metal
   * @param history what happens to it, s and K
   */
  S advance(S state, TemperatureHistory history);

  /** The state after a history that begins with {@link #start}. */
  default S follow(TemperatureHistory history) {
    return advance(start(history.temperature(0)), history);
  }
}
