package afterweld.section;

import afterweld.strength.Strength;
import java.util.ArrayList;
import java.util.List;

/**
 * Metal delivered artificially aged (T5, T6) gains nothing while it lies at room temperature: the
 * temper is stable, and its strength on delivery is that of its table. The model would let what
 * solute is left form clusters and make 6063-T5 a tenth stronger within a month. Common practice;
 * metal in T4, T1 or W does age on the shelf.
 */
final class OnTheShelf {
  private OnTheShelf() {}

  /**
   * Strengths of such metal, none after natural ageing above that on delivery.
   *
   * @param strengths on delivery, after natural ageing, then after each furnace step
   */
  static List<Strength> held(List<Strength> strengths) {
    List<Strength> held = new ArrayList<>(strengths);
    held.set(1, AgedOnly.lower(strengths.get(1), strengths.get(0)));
    return held;
  }
}
