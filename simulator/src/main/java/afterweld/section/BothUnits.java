package afterweld.section;

import java.util.Locale;

/**
 * Values inside a sentence, metric with US beside it: a sentence travels to tables, charts and
 * pages in either system of units, and must be read right in both.
 */
public final class BothUnits {
  private static final double WHOLE_MILLIMETRES = 0.0995;

  private BothUnits() {}

  /** A temperature given in K: {@code 530 °C (986 °F)}. */
  public static String temperature(double kelvin) {
    return both(
        "%.0f °C (%.0f °F)",
        UnitSystem.METRIC.temperature(kelvin), UnitSystem.US.temperature(kelvin));
  }

  /** A difference of temperature given in K: {@code 6 °C (11 °F)}. */
  public static String difference(double kelvin) {
    return both("%.0f °C (%.0f °F)", kelvin, UnitSystem.US.temperatureDifference(kelvin));
  }

  /** A length given in m: {@code 6 mm (0.24 in)}. */
  public static String length(double metres) {
    String pattern =
        Math.abs(metres) < WHOLE_MILLIMETRES ? "%.3g mm (%.2f in)" : "%.0f mm (%.2f in)";
    return both(pattern, UnitSystem.METRIC.length(metres), UnitSystem.US.length(metres));
  }

  /** A stress given in Pa: {@code 276 MPa (40.0 ksi)}. */
  public static String stress(double pascal) {
    return both(
        "%.0f MPa (%.1f ksi)", UnitSystem.METRIC.stress(pascal), UnitSystem.US.stress(pascal));
  }

  private static String both(String pattern, double metric, double us) {
    return String.format(Locale.ROOT, pattern, metric, us);
  }
}
