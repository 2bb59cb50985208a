package afterweld.document;

import afterweld.quantity.OutputQuantity;
import afterweld.quantity.UnitSystem;
import afterweld.section.Estimate;
import afterweld.strength.Strength;
import java.util.Locale;

/** The three values of a strength, looked up by the list of output quantities. */
public final class Quantities {
  private Quantities() {}

  /** SI value of one of hardness, yield and tensile strength. */
  public static double of(Strength strength, OutputQuantity quantity) {
    return switch (quantity) {
      case HARDNESS -> strength.hardness();
      case YIELD -> strength.yield();
      case TENSILE -> strength.tensile();
      case DISTANCE, PEAK_TEMPERATURE ->
          throw new IllegalArgumentException(quantity + " is no strength");
    };
  }

  /** Such as {@code 54 MPa (46 to 62)}. */
  public static String withBand(OutputQuantity quantity, UnitSystem units, Estimate estimate) {
    String low = quantity.text(units, of(estimate.low(), quantity));
    String high = quantity.text(units, of(estimate.high(), quantity));
    String middle = quantity.text(units, of(estimate.middle(), quantity));
    return middle + " " + quantity.unit(units) + " (" + low + " to " + high + ")";
  }

  /** One word for a column head, such as {@code yield}. */
  public static String word(OutputQuantity quantity) {
    return quantity.name().toLowerCase(Locale.ROOT);
  }
}
