package afterweld.joint.bend;

import afterweld.joint.JointSettings.BendSettings;
import afterweld.joint.StressStrainLaw;
import afterweld.joint.YoungsModulus;
import afterweld.quantity.Check;

/**
 * How a strip across the weld is bent.
 *
 * @param strip angle, length, width and load
 * @param released whether the angle is that after release; else it is that under load
 * @param planeStrain whether the strip is so wide that it can't shrink along its width
 * @param modulus Young's modulus, 60 to 80 GPa, in Pa
 */
public record BendCoupon(
    BendSettings strip, boolean released, boolean planeStrain, double modulus) {

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
    return new BendCoupon(strip, false, false, StressStrainLaw.DEFAULT_MODULUS);
  }

  /** The same strip in plane strain. */
  public BendCoupon inPlaneStrain() {
    return new BendCoupon(strip, released, true, modulus);
  }

  /** The same strip, bent until the angle is left after release. */
  public BendCoupon untilReleased() {
    return new BendCoupon(strip, true, planeStrain, modulus);
  }
}
