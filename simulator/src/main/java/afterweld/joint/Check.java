package afterweld.joint;

import java.util.Locale;

/** Refuses numbers that mean nothing, with the value, the limit and the unit in the message. */
final class Check {
  private Check() {}

  /** The value, if it is finite and above 0. */
  static double positive(String what, double value, String unit) {
    if (!(value > 0) || Double.isInfinite(value)) {
      throw new IllegalArgumentException(
          String.format(Locale.ROOT, "%s %s %s: must be above 0 and finite", what, value, unit));
    }
    return value;
  }

  /** The value, if it lies in the closed range. */
  static double within(String what, double value, double low, double high, String unit) {
    if (!(value >= low && value <= high)) {
      throw new IllegalArgumentException(
          String.format(
              Locale.ROOT, "%s %s %s: must be %s to %s %s", what, value, unit, low, high, unit));
    }
    return value;
  }

  /** Young's modulus of an aluminium alloy, Pa. */
  static double modulus(double value) {
    return within("Young's modulus", value, 60e9, 80e9, "Pa");
  }
}
