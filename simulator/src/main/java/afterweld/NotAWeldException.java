package afterweld;

import afterweld.thermal.HeatInputException;

/** A case whose numbers cannot make a weld: out of range, or not fitting together. */
public final class NotAWeldException extends Exception {
  private static final long serialVersionUID = 1;

  private final String field;
  private final int pass;

  NotAWeldException(HeatInputException cause) {
    super(cause.getMessage(), cause);
    this.field = cause.field();
    this.pass = cause.pass();
  }

  /** What is at fault, in the words of a case file, such as {@code travel_speed}. */
  public String field() {
    return field;
  }

  /** Which pass is at fault, from 0. */
  public int pass() {
    return pass;
  }
}
