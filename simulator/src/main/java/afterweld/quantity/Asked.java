package afterweld.quantity;

/**
 * A value that somebody asks for, kept as it was written: 24 ksi stays 24 ksi, also where
 * everything else is shown in MPa.
 *
 * @param quantity what it measures; a service temperature counts as {@link
 *     OutputQuantity#PEAK_TEMPERATURE}
 * @param value SI and kelvin, hardness HV
 * @param written number as written and the name of its unit, such as {@code 24 ksi} or {@code 70
 *     HB}
 */
public record Asked(OutputQuantity quantity, double value, String written) {
  /** Refuses what it cannot be. */
  public Asked {
    Check.positive("asked value", value, "");
    Check.said("asked value", written);
  }

  /** A value nobody wrote down: written as results show it, in metric units. */
  public static Asked of(OutputQuantity quantity, double value) {
    String text = quantity.text(UnitSystem.METRIC, value);
    return new Asked(quantity, value, text + " " + quantity.unit(UnitSystem.METRIC));
  }

  /**
   * As written, with the unit of the results behind it where that is another: {@code 24 ksi (165
   * MPa)}, {@code 70 HB (80 HV)}, but {@code 24 ksi} among results in ksi.
   */
  public String text(UnitSystem units) {
    return withBracket(units, quantity.text(units, value));
  }

  /** The same, exact enough to tell it from a result beside it (SI and kelvin). */
  public String textBeside(UnitSystem units, double other) {
    return withBracket(units, quantity.textBeside(units, value, other));
  }

  /**
   * As written, with the other unit behind: {@code 24 ksi (165 MPa)}, {@code 165 MPa (23.9 ksi)}.
   */
  public String inBothUnits() {
    String metric = text(UnitSystem.METRIC);
    return metric.equals(written) ? text(UnitSystem.US) : metric;
  }

  private String withBracket(UnitSystem units, String shown) {
    String unit = quantity.unit(units);
    return written.endsWith(" " + unit) ? written : written + " (" + shown + " " + unit + ")";
  }
}
