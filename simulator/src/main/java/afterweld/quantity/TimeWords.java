package afterweld.quantity;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Map;

/** A time in the words of the shop. */
public final class TimeWords {
  private static final int DECIMALS = 2;

  /** Units from the longest; each is used from twice its length on. */
  private static final List<Map.Entry<String, Double>> UNITS =
      List.of(
          Map.entry("days", 86400.0),
          Map.entry("h", 3600.0),
          Map.entry("min", 60.0),
          Map.entry("s", 1.0));

  private TimeWords() {}

  /**
   * A time in the longest unit that says it exactly.
   *
   * @param seconds s
   */
  public static String of(double seconds) {
    return UNITS.stream()
        .filter(unit -> seconds >= 2 * unit.getValue() && exact(seconds / unit.getValue()))
        .findFirst()
        .map(unit -> rounded(seconds / unit.getValue()) + " " + unit.getKey())
        .orElseGet(() -> rounded(seconds) + " s");
  }

  private static boolean exact(double value) {
    double hundredths = 100 * value;
    return Math.abs(hundredths - Math.rint(hundredths)) < 1e-6 * hundredths;
  }

  private static String rounded(double value) {
    BigDecimal decimal = BigDecimal.valueOf(value).setScale(DECIMALS, RoundingMode.HALF_UP);
    return decimal.signum() == 0 ? "0" : decimal.stripTrailingZeros().toPlainString();
  }
}
