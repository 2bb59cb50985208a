package afterweld.joint;

import afterweld.quantity.Check;

/** What Young's modulus of an aluminium alloy can be. */
public final class YoungsModulus {
  private YoungsModulus() {}

  /** The value in Pa, if it is that of an aluminium alloy. */
  public static double checked(double value) {
    return Check.within("Young's modulus", value, 60e9, 80e9, "Pa");
  }
}
