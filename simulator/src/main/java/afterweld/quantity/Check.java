package afterweld.quantity;

import java.util.List;
import java.util.OptionalDouble;

/**
 * Refuses numbers that mean nothing, with the name, the value, the limit and the unit in the
 * message. NaN and infinity never pass; an optional value that is not there always does.
 */
public final class Check {
  private Check() {}

  /** The value, if it is above 0. */
  public static double positive(String what, double value, String unit) {
    if (!(value > 0) || Double.isInfinite(value)) {
      throw refused(what, value, unit, "above 0 and finite");
    }
    return value;
  }

  /** Refuses a value that is there and not above 0. */
  public static void positive(String what, OptionalDouble value, String unit) {
    value.ifPresent(number -> positive(what, number, unit));
  }

  /** The value, if it is 0 or more. */
  public static double notNegative(String what, double value, String unit) {
    return within(what, value, 0, Double.MAX_VALUE, unit);
  }

  /** Refuses a value that is there and below 0. */
  public static void notNegative(String what, OptionalDouble value, String unit) {
    value.ifPresent(number -> notNegative(what, number, unit));
  }

  /** The value, if it lies in the closed range. */
  public static double within(String what, double value, double low, double high, String unit) {
    if (!(value >= low && value <= high)) {
      String limits = high == Double.MAX_VALUE ? low + " or more" : low + " to " + high;
      throw refused(what, value, unit, limits + (unit.isEmpty() ? "" : " " + unit));
    }
    return value;
  }

  /** The value, if it lies from 0 to 1. */
  public static double share(String what, double value) {
    return within(what, value, 0, 1, "");
  }

  /** The value, if it is a number at all. */
  public static double finite(String what, double value, String unit) {
    if (!Double.isFinite(value)) {
      throw refused(what, value, unit, "finite");
    }
    return value;
  }

  /** Refuses numbers of which one is below the one before it, or none. */
  public static void rising(String what, double... values) {
    for (int i = 1; i < values.length; i++) {
      if (!(values[i] >= values[i - 1])) {
        throw new IllegalArgumentException(
            what + " " + values[i - 1] + " to " + values[i] + ": must be from low to high");
      }
    }
  }

  /** Refuses a text that says nothing. */
  public static void said(String what, String text) {
    if (text.isBlank()) {
      throw new IllegalArgumentException(what + ": must be said");
    }
  }

  /** Refuses an empty list. */
  public static void some(String what, List<?> list) {
    if (list.isEmpty()) {
      throw new IllegalArgumentException(what + ": must be at least one");
    }
  }

  private static IllegalArgumentException refused(
      String what, double value, String unit, String must) {
    String number = unit.isEmpty() ? Double.toString(value) : value + " " + unit;
    return new IllegalArgumentException(what + " " + number + ": must be " + must);
  }
}
