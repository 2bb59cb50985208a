package afterweld.charts.plot;

import afterweld.quantity.OutputQuantity;
import afterweld.quantity.UnitSystem;
import java.util.Locale;

/** Numbers as charts print them: few digits, a real minus sign, the unit beside the number. */
public final class Figures {
  private Figures() {}

  /** A value from SI and kelvin with its unit, such as {@code 62 HV} or {@code −0.37 in}. */
  public static String of(OutputQuantity quantity, UnitSystem units, double si) {
    return shown(quantity, units, quantity.in(units, si));
  }

  /** A value that is already in the unit of the system, with that unit. */
  public static String shown(OutputQuantity quantity, UnitSystem units, double value) {
    return rounded(value, decimals(quantity, units)) + " " + quantity.unit(units);
  }

  private static int decimals(OutputQuantity quantity, UnitSystem units) {
    return switch (quantity) {
      case HARDNESS, PEAK_TEMPERATURE -> 0;
      case YIELD, TENSILE -> units == UnitSystem.METRIC ? 0 : 1;
      case DISTANCE -> units == UnitSystem.METRIC ? 1 : 2;
    };
  }

  /** A number with a fixed count of decimals. */
  public static String rounded(double value, int decimals) {
    String digits = String.format(Locale.ROOT, "%." + decimals + "f", value);
    boolean zero = digits.chars().noneMatch(c -> c >= '1' && c <= '9');
    return zero ? digits.replace("-", "") : digits.replace('-', '−');
  }

  /** A number without needless zeros, as on an axis. */
  public static String shortest(double value) {
    String digits = rounded(value, 4);
    return digits.replaceFirst("\\.?0+$", "");
  }
}
