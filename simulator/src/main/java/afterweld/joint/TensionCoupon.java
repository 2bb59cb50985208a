package afterweld.joint;

import afterweld.quantity.Check;

/**
 * How a joint is pulled: a strip cut across the weld with an extensometer centred on it.
 *
 * @param gauge gauge length, m
 * @param width of the strip, m; sets the neck's share of the elongation
 * @param modulus Young's modulus, 60 to 80 GPa, in Pa
 * @param neck what the neck adds to the elongation: this number times the square root of the
 *     strip's section over the gauge length. Assumed; plausible from 0 to 0.3, to be calibrated
 */
public record TensionCoupon(double gauge, double width, double modulus, double neck) {
  /** Assumed number for the neck. */
  public static final double ASSUMED_NECK = 0.15;

  /** 50 mm gauge on a strip 38 mm wide. */
  public static final TensionCoupon DEFAULT = over(0.050);

  /** Checks all four. */
  public TensionCoupon {
    Check.positive("gauge length", gauge, "m");
    Check.positive("strip width", width, "m");
    YoungsModulus.checked(modulus);
    Check.within("neck number", neck, 0, 0.3, "");
  }

  /** A strip 38 mm wide with the given gauge length (m). */
  public static TensionCoupon over(double gauge) {
    return new TensionCoupon(gauge, 0.038, PowerLaw.DEFAULT_MODULUS, ASSUMED_NECK);
  }
}
