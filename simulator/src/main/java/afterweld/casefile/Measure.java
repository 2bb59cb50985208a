package afterweld.casefile;

import afterweld.casefile.text.Names;
import afterweld.casefile.text.Quoted;
import afterweld.quantity.UnitSystem;
import afterweld.strength.HardnessScale;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Optional;

/**
 * A key of the case file that holds a quantity: what it measures and from where to where it may go.
 *
 * @param key name of the key
 * @param dimension what it measures
 * @param low lowest value, in the unit
 * @param high highest value, in the unit
 * @param unit unit of the two limits, and of messages
 * @param aboveLow true if the lowest value itself is not allowed
 */
record Measure(
    String key, Dimension dimension, double low, double high, Unit unit, boolean aboveLow) {
  /** Limits count as met this far beyond them, so that a converted 500 °F is still 260 °C. */
  private static final double ROUNDING = 1e-9;

  /** From {@code low} to {@code high}, both allowed. */
  static Measure within(String key, Dimension dimension, double low, double high, String unit) {
    return new Measure(key, dimension, low, high, dimension.unit(unit).orElseThrow(), false);
  }

  /** Above {@code low}, up to {@code high}. */
  static Measure above(String key, Dimension dimension, double low, double high, String unit) {
    return new Measure(key, dimension, low, high, dimension.unit(unit).orElseThrow(), true);
  }

  /** Whether a value is above another by more than conversion of units can explain. */
  static boolean exceeds(double value, double limit) {
    return value > limit + ROUNDING * Math.abs(limit);
  }

  /**
   * What a text came to.
   *
   * @param value SI, or NaN with a problem
   * @param problem what was found and expected; empty if all is well
   */
  record Reading(double value, String problem) {
    /** Whether the text is a value in range. */
    boolean good() {
      return problem.isEmpty();
    }
  }

  /** Reads a text such as {@code 1/4 in}. */
  Reading read(String text) {
    Optional<Quantity> quantity = Quantity.parse(text);
    if (quantity.isEmpty()) {
      return bad("found " + Quoted.of(text), "");
    }
    String unitText = quantity.get().unit();
    Optional<Unit> written = dimension.unit(unitText);
    return written.isPresent()
        ? checked(text, quantity.get().number(), written.get())
        : bad(unitProblem(text, unitText), unitHint(unitText));
  }

  /** A good text with the name of its unit, as results repeat it: {@code 24ksi} is "24 ksi". */
  String tidy(String text) {
    String unitName =
        Quantity.parse(text).flatMap(found -> dimension.unit(found.unit())).orElse(unit).name();
    return Quantity.numberText(text) + " " + unitName;
  }

  /** Whether the text has a unit of this measure. */
  boolean understands(String text) {
    return Quantity.parse(text).flatMap(found -> dimension.unit(found.unit())).isPresent();
  }

  private Reading checked(String text, double number, Unit written) {
    if (Double.isNaN(number)) {
      return bad("found " + Quoted.of(text) + ", which is not a number", "");
    }
    double value = written.toInside().applyAsDouble(number);
    if (Double.isNaN(value)) {
      String expected = "; expected " + written.reach();
      return new Reading(Double.NaN, "found " + Quoted.of(text) + expected);
    }
    if (!Double.isFinite(unit.fromInside().applyAsDouble(value))) {
      return bad("found " + Quoted.of(text) + ", which is infinite", "");
    }
    return inRange(value) ? new Reading(inside(value), "") : outside(text, value, written);
  }

  private boolean inRange(double value) {
    double shown = unit.fromInside().applyAsDouble(value);
    boolean tooLow = aboveLow ? shown <= low : shown < low - slack(low);
    return !tooLow && shown <= high + slack(high);
  }

  /** Only a unit whose zero lies elsewhere turns a zero into a little more or less than it. */
  private double slack(double limit) {
    boolean shifted = dimension == Dimension.TEMPERATURE;
    return ROUNDING * (shifted ? UnitSystem.ZERO_CELSIUS : Math.abs(limit));
  }

  /**
   * What lies beyond a limit by no more than rounding is that limit, so that nothing exceeds it.
   */
  private double inside(double value) {
    double shown = unit.fromInside().applyAsDouble(value);
    boolean beyond = shown < low || shown > high;
    return beyond ? unit.toInside().applyAsDouble(Math.max(low, Math.min(high, shown))) : value;
  }

  private Reading outside(String text, double value, Unit written) {
    String same = written.equals(unit) ? "" : " (" + show(value) + ")";
    return new Reading(Double.NaN, "found " + Quoted.of(text) + same + "; expected " + limits());
  }

  private String unitProblem(String text, String written) {
    String found = "found " + Quoted.of(text);
    if (written.isEmpty()) {
      return found + ", a number without a unit";
    }
    if (written.startsWith(",")) {
      return found + " with a comma (write 2.5, not 2,5)";
    }
    return dimension.unitless() ? found : found + "; unknown unit " + Quoted.of(written);
  }

  private String unitHint(String unitText) {
    if (dimension == Dimension.HARDNESS && HardnessScale.webster(unitText)) {
      return "; " + HardnessScale.NO_WEBSTER;
    }
    return dimension.unitless() ? "" : Names.hint(unitText, dimension.unitNames());
  }

  private Reading bad(String found, String hint) {
    return new Reading(Double.NaN, found + "; expected " + expected() + hint);
  }

  /** What is expected: kind, range, units. */
  String expected() {
    return dimension.unitless()
        ? limits()
        : limits() + " (units: " + String.join(", ", dimension.unitNames()) + ")";
  }

  private String limits() {
    String range = dimension.words() + (aboveLow ? " above " : " from ") + number(low);
    return (range + (aboveLow ? ", up to " : " to ") + number(high) + " " + unit.name()).strip();
  }

  /** A value in the unit of the limits. */
  String show(double value) {
    return (number(unit.fromInside().applyAsDouble(value)) + " " + unit.name()).strip();
  }

  private static String number(double value) {
    return new BigDecimal(value).round(new MathContext(4)).stripTrailingZeros().toPlainString();
  }
}
