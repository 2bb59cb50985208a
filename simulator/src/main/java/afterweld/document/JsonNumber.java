package afterweld.document;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * A number with a fixed number of decimals, so that the same result is the same text.
 *
 * @param value in the unit of its key; not finite where the model gives none
 * @param decimals digits behind the point
 */
public record JsonNumber(double value, int decimals) {
  @Override
  public String toString() {
    if (!Double.isFinite(value)) {
      return "null";
    }
    return BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_EVEN).toPlainString();
  }
}
