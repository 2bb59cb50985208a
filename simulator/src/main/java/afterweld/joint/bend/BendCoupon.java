package afterweld.joint.bend;

import afterweld.joint.JointSettings.BendSettings;
import afterweld.joint.PowerLaw;
import afterweld.joint.YoungsModulus;
import afterweld.quantity.Check;

/**
 * How a strip across the weld is bent.
 *
 * @param strip angle, length, width and load
 * @param modulus Young's modulus, 60 to 80 GPa, in Pa
 */
public record BendCoupon(BendSettings strip, double modulus) {

  /** Checks angle, length, width and modulus. */
  public BendCoupon {
    if (!(strip.angle() > 0 && strip.angle() <= Math.PI)) {
      throw new IllegalArgumentException(
          "bend angle " + Math.toDegrees(strip.angle()) + " degrees: must be above 0, at most 180");
    }
    Check.positive("strip length", strip.length(), "m");
    Check.positive("strip width", strip.width(), "m");
    YoungsModulus.checked(modulus);
  }

  /** The angle is that under load, the strip narrow, the modulus 69 GPa. */
  public static BendCoupon of(BendSettings strip) {
    return new BendCoupon(strip, PowerLaw.DEFAULT_MODULUS);
  }
}
