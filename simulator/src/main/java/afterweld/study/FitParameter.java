package afterweld.study;

import java.util.Locale;

/**
 * One thing a fit may move.
 *
 * @param name such as {@code arc efficiency}
 * @param unit empty if it has none
 * @param start where the fit begins
 * @param low lowest value
 * @param high highest value
 * @param step what counts as one step of it: the scale of the Jacobian
 */
public record FitParameter(
    String name, String unit, double start, double low, double high, double step) {
  /** Checks the order of its values. */
  public FitParameter {
    if (!(low < start && start < high && step > 0)) {
      throw new IllegalArgumentException(name + " " + low + " " + start + " " + high);
    }
  }

  /** A name at the head of a sentence. */
  static String capital(String name) {
    return name.substring(0, 1).toUpperCase(Locale.ROOT) + name.substring(1);
  }

  /** A value with its unit; lengths in mm. */
  String words(double value) {
    return switch (unit) {
      case "m" -> String.format(Locale.ROOT, "%.2f mm", value * 1e3);
      case "" -> String.format(Locale.ROOT, "%.3f", value);
      default -> String.format(Locale.ROOT, "%.1f %s", value, unit);
    };
  }
}
