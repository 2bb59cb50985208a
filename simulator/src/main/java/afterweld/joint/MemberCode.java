package afterweld.joint;

import afterweld.quantity.Check;

/**
 * A flat member with a weld, as design codes reckon it: characteristic values, no predicted
 * strength.
 *
 * <pre>
 * along the weld, EN    N = [ A - sum (1 - haz proof/proof) A_haz ] proof     / 1.10 for design
 * across the weld, EN   N = A haz tensile                                     / 1.25 for design
 * along the weld, US    F = base - (A_wz/A)(base - welded), 1 in each side of the centre line
 * </pre>
 *
 * Source: EN 1999-1-1:2007 6.2 and Aluminum Design Manual, both from memory. An older edition of
 * the latter leaves the zone out below 15 % of the section: check the edition.
 */
public final class MemberCode {
  /** Partial factor on yielding. */
  public static final double YIELD_FACTOR = 1.10;

  /** Partial factor on rupture. */
  public static final double RUPTURE_FACTOR = 1.25;

  /** The US weld-affected zone each side of the centre line, m. */
  public static final double US_REACH = 0.0254;

  private MemberCode() {}

  /**
   * Characteristic force along the weld on the effective area, N.
   *
   * @param width of the plate, m
   * @param thickness m
   * @param code strengths
   * @param reach of the zone each side of the weld, m
   */
  public static double alongWeld(double width, double thickness, CodeStrength code, double reach) {
    double gross = area(width, thickness);
    double zone = Math.min(2 * Check.positive("reach", reach, "m"), width) * thickness;
    return (gross - (1 - code.hazProof() / code.proof()) * zone) * code.proof();
  }

  /** Characteristic force across the weld, N. */
  public static double acrossWeld(double width, double thickness, CodeStrength code) {
    return area(width, thickness) * code.hazTensile();
  }

  /** US weighted stress along the weld, Pa: base and welded stress weighted by their areas. */
  public static double weighted(double width, double base, double welded) {
    Check.positive("width", width, "m");
    return base - Math.min(1, 2 * US_REACH / width) * (base - welded);
  }

  private static double area(double width, double thickness) {
    return Check.positive("width", width, "m") * Check.positive("thickness", thickness, "m");
  }
}
