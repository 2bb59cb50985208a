package afterweld.document;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.OptionalDouble;

/**
 * A number with a fixed number of decimals, so that the same result is the same text.
 *
 * @param value in the unit of its key; not finite where the model gives none
 * @param decimals digits behind the point
 */
public record JsonNumber(double value, int decimals) {
  private static final double MEGA = 1e-6;
  private static final double DAY = 86400;

  /** A stress, Pa, in megapascals. */
  static JsonNumber megapascal(double pascal) {
    return new JsonNumber(pascal * MEGA, 1);
  }

  /** A stress, Pa, in megapascals; of none a number that is not finite. */
  static JsonNumber megapascal(OptionalDouble pascal) {
    return megapascal(pascal.orElse(Double.NaN));
  }

  /** A time, s, in days. */
  static JsonNumber days(double seconds) {
    return new JsonNumber(seconds / DAY, 4);
  }

  @Override
  public String toString() {
    if (!Double.isFinite(value)) {
      return "null";
    }
    return BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_EVEN).toPlainString();
  }
}
