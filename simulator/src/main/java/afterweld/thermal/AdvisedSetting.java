package afterweld.thermal;

import afterweld.quantity.UnitSystem;
import java.util.Locale;

/**
 * A setting that just does, in the words of a shop and rounded to the hot side, so that whoever
 * sets what is written gets what is promised. Units beside every number.
 */
public final class AdvisedSetting {
  private static final double HAIR = 1e-9;
  private static final double MILLIMETRES = 1e3;
  private static final double INCHES_A_MINUTE = 60 / 0.0254;

  private AdvisedSetting() {}

  /**
   * A current that is enough: {@code 111 A}.
   *
   * @param amperes A
   */
  public static String current(double amperes) {
    return whole(amperes) + " A";
  }

  /**
   * A travel speed that is slow enough: {@code 9.6 mm/s (22 in/min)}.
   *
   * @param speed m/s
   */
  public static String speed(double speed) {
    return down(speed * MILLIMETRES) + " mm/s (" + down(speed * INCHES_A_MINUTE) + " in/min)";
  }

  /**
   * A preheat that is hot enough: {@code 101 °C (214 °F)}.
   *
   * @param kelvin K
   */
  public static String preheat(double kelvin) {
    double celsius = kelvin - UnitSystem.ZERO_CELSIUS;
    return whole(celsius) + " °C (" + whole(1.8 * celsius + 32) + " °F)";
  }

  private static String whole(double value) {
    return String.format(Locale.ROOT, "%.0f", Math.ceil(value - HAIR));
  }

  /** Two figures, the rest cut off. */
  private static String down(double value) {
    double step = Math.pow(10, Math.floor(Math.log10(value)) - 1);
    double cut = step * Math.floor(value / step + HAIR);
    return String.format(Locale.ROOT, step >= 1 ? "%.0f" : step >= 0.1 ? "%.1f" : "%.2f", cut);
  }
}
