package afterweld.material;

import afterweld.quantity.Check;
import java.util.Optional;

/**
 * A temper of an alloy as the trade names it.
 *
 * @param name such as {@code T6} or {@code H14}
 * @param recipe how it is made, for heat-treatable alloys; empty for work-hardened tempers, whose
 *     handbook strength is an input
 * @param handbook strength from a handbook, if the library has one
 * @param source where the recipe (or, without one, the handbook strength) comes from
 */
public record Temper(
    String name, Optional<TemperRecipe> recipe, Optional<Handbook> handbook, Source source) {
  /** Refuses what it cannot be. */
  public Temper {
    Check.said("name of a temper", name);
  }

  /**
   * Handbook strength.
   *
   * @param yield 0.2 % proof stress, Pa
   * @param tensile tensile strength, Pa
   * @param minimum true for the minimum of a standard, false for a typical value
   * @param source the handbook
   */
  public record Handbook(double yield, double tensile, boolean minimum, Source source) {
    /** Refuses what it cannot be. */
    public Handbook {
      Check.positive("handbook yield", yield, "Pa");
      Check.within("handbook tensile strength", tensile, yield, Double.MAX_VALUE, "Pa");
    }
  }
}
