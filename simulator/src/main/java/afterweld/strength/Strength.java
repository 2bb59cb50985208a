package afterweld.strength;

import afterweld.quantity.Check;

/**
 * What a test would read at one place: 0.2 % proof stress and tensile strength in Pa, Vickers
 * hardness. Where the model cannot tell, the values are NaN ({@link #NOT_PREDICTED}).
 *
 * @param yield 0.2 % proof stress, Pa
 * @param tensile tensile strength, Pa
 * @param hardness HV
 */
public record Strength(double yield, double tensile, double hardness) {
  /** Refuses values below 0, and some of the three without the others. */
  public Strength {
    boolean all = Double.isFinite(yield) && Double.isFinite(tensile) && Double.isFinite(hardness);
    boolean none = Double.isNaN(yield) && Double.isNaN(tensile) && Double.isNaN(hardness);
    if (!all && !none) {
      throw new IllegalArgumentException(
          "yield "
              + yield
              + " Pa, tensile "
              + tensile
              + " Pa, hardness "
              + hardness
              + " HV: must be all or none");
    }
    if (all) {
      Check.notNegative("yield", yield, "Pa");
      Check.notNegative("tensile strength", tensile, "Pa");
      Check.notNegative("hardness", hardness, "HV");
    }
  }

  /** The answer where no model applies. */
  public static final Strength NOT_PREDICTED = new Strength(Double.NaN, Double.NaN, Double.NaN);

  /** Whether the model could tell. */
  public boolean predicted() {
    return !Double.isNaN(yield);
  }

  /** All three values times a factor. */
  public Strength times(double factor) {
    return new Strength(yield * factor, tensile * factor, hardness * factor);
  }
}
