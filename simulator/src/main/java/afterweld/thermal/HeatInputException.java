package afterweld.thermal;

import java.util.Locale;

/** A weld that cannot be: a number out of range, or numbers that do not fit together. */
public final class HeatInputException extends IllegalArgumentException {
  private static final long serialVersionUID = 1;

  private final String field;
  private final int pass;

  /**
   * A fault.
   *
   * @param field what is at fault, in the words of a case, such as {@code travel_speed}
   * @param message a sentence for people
   */
  public HeatInputException(String field, String message) {
    this(field, message, 0);
  }

  private HeatInputException(String field, String message, int pass) {
    super(message);
    this.field = field;
    this.pass = pass;
  }

  /** The same fault found in a later pass, counted from 0. */
  public HeatInputException inPass(int index) {
    return new HeatInputException(field, getMessage(), index);
  }

  /** A value outside the range that a pass can have. */
  public static HeatInputException outside(
      String field, double value, String unit, String expected) {
    return outside(field, field.replace('_', ' '), value, unit, expected);
  }

  static HeatInputException outside(
      String field, String what, double value, String unit, String expected) {
    String number = String.format(Locale.ROOT, "%.4g %s", value, unit).trim();
    return new HeatInputException(field, what + " " + number + " (expected " + expected + ")");
  }

  /** What is at fault, in the words of a case. */
  public String field() {
    return field;
  }

  /** Which pass is at fault, from 0. */
  public int pass() {
    return pass;
  }
}
