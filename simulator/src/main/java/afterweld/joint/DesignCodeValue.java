package afterweld.joint;

import afterweld.quantity.Check;
import afterweld.quantity.OutputQuantity;
import afterweld.quantity.UnitSystem;

/**
 * What a design code gives for a weld.
 *
 * @param code the code
 * @param clause clause or table; empty if not known
 * @param item what the value is, with the side it is for
 * @param value in {@code unit}
 * @param unit MPa or mm
 * @param published the value as the code prints it in ksi or inches, such as {@code 24}; empty for
 *     a code that is metric
 * @param status edition as far as known, and how well the value is supported
 */
public record DesignCodeValue(
    String code,
    String clause,
    String item,
    double value,
    String unit,
    String published,
    String status) {
  private static final double METRES_PER_MM = 1e-3;
  private static final double PASCAL_PER_MPA = 1e6;

  /** Refuses what it cannot be. */
  public DesignCodeValue {
    Check.said("code", code);
    Check.said("item", item);
    Check.positive("value", value, unit);
  }

  /** The same for one side only. */
  DesignCodeValue named(String side) {
    return new DesignCodeValue(code, clause, item + side, value, unit, published, status);
  }

  /**
   * The value with its unit, as the code prints it: {@code 165 MPa (24 ksi)}, or {@code 24 ksi}.
   */
  public String text(UnitSystem units) {
    boolean length = unit.equals("mm");
    OutputQuantity quantity = length ? OutputQuantity.DISTANCE : OutputQuantity.YIELD;
    String us = published + " " + quantity.unit(UnitSystem.US);
    if (units == UnitSystem.US && !published.isEmpty()) {
      return us;
    }
    double si = value * (length ? METRES_PER_MM : PASCAL_PER_MPA);
    String converted = quantity.text(units, si) + " " + quantity.unit(units);
    return published.isEmpty() ? converted : converted + " (" + us + ")";
  }
}
