package afterweld.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Locale;

/**
 * Values inside a sentence, metric with US beside it: a sentence travels to tables, charts and
 * pages in either system of units, and must be read right in both.
 */
public final class BothUnits {
  private static final double HAIR = 1e-6;
  private static final double BAR = 1e5;
  private static final double PSI = 6894.757293168361;
  private static final double SAME_GAUGE = 0.02;
  private static final double WHOLE_MILLIMETRES = 0.0995;

  private BothUnits() {}

  /**
   * A temperature given in K: {@code 530 °C (985 °F)}. One that is set in whole °F leads with them:
   * {@code 350 °F (177 °C)}.
   */
  public static String temperature(double kelvin) {
    double celsius = UnitSystem.METRIC.temperature(kelvin);
    double fahrenheit = UnitSystem.US.temperature(kelvin);
    return whole(fahrenheit) && !whole(celsius)
        ? both("%.0f °F (%.0f °C)", fahrenheit, celsius)
        : both("%.0f °C (%.0f °F)", celsius, tradeFahrenheit(celsius, fahrenheit));
  }

  /** A furnace's setting given in K, in one system alone: {@code 177 °C}, or {@code 350 °F}. */
  public static String temperature(UnitSystem units, double kelvin) {
    double celsius = UnitSystem.METRIC.temperature(kelvin);
    return units == UnitSystem.METRIC
        ? both("%.0f °C", celsius)
        : both("%.0f °F", tradeFahrenheit(celsius, UnitSystem.US.temperature(kelvin)));
  }

  /**
   * Furnaces are set and limits are written in steps of 5 °F: a whole number of °C within 1 °F of
   * such a step is that step (177 °C is 350 °F, 530 °C is 985 °F, 65 °C is 150 °F). Common
   * practice.
   */
  private static double tradeFahrenheit(double celsius, double fahrenheit) {
    double step = 5.0 * Math.round(fahrenheit / 5);
    return whole(celsius) && Math.abs(step - fahrenheit) < 1 + HAIR ? step : fahrenheit;
  }

  private static boolean whole(double value) {
    return Math.abs(value - Math.rint(value)) < HAIR;
  }

  /** A difference of temperature given in K: {@code 6 °C (11 °F)}. */
  public static String difference(double kelvin) {
    return both("%.0f °C (%.0f °F)", kelvin, UnitSystem.US.temperatureDifference(kelvin));
  }

  /** A length given in m: {@code 6 mm (0.24 in)}. */
  public static String length(double metres) {
    return millimetres(metres) + both(" (%.2f in)", UnitSystem.US.length(metres));
  }

  /**
   * A gauge length given in m: {@code 50 mm (2 in)}. The two are one gauge by the standards of
   * either side (common practice), and so are 25 and 1, 100 and 4, 200 and 8.
   */
  public static String gauge(double metres) {
    double inches = UnitSystem.US.length(metres);
    double nominal = Math.rint(inches);
    return Math.abs(nominal - inches) < SAME_GAUGE * inches
        ? millimetres(metres) + both(" (%.0f in)", nominal)
        : length(metres);
  }

  private static String millimetres(double metres) {
    double shown = UnitSystem.METRIC.length(metres);
    boolean whole = Math.abs(metres) >= WHOLE_MILLIMETRES;
    BigDecimal figures =
        whole
            ? new BigDecimal(shown).setScale(0, RoundingMode.HALF_UP)
            : new BigDecimal(shown).round(new MathContext(3));
    return figures.signum() == 0 ? "0 mm" : figures.stripTrailingZeros().toPlainString() + " mm";
  }

  /** An area given in m²: {@code 21 mm² (0.032 in²)}. */
  public static String area(double squareMetres) {
    return both("%.3g mm² (%.2g in²)", squareMetres * 1e6, squareMetres / (0.0254 * 0.0254));
  }

  /** A stress given in Pa: {@code 276 MPa (40.0 ksi)}. */
  public static String stress(double pascal) {
    return both(
        "%.0f MPa (%.1f ksi)", UnitSystem.METRIC.stress(pascal), UnitSystem.US.stress(pascal));
  }

  /**
   * A temperature given in K, in the units asked for first: {@code 985 °F (530 °C)}.
   *
   * @param first the system that leads
   */
  public static String temperature(double kelvin, UnitSystem first) {
    return led(temperature(kelvin), first);
  }

  /** A pressure given in Pa, to three figures: {@code 400 bar (5800 psi)}. */
  public static String pressure(double pascal) {
    return pressure(UnitSystem.METRIC, pascal) + " (" + pressure(UnitSystem.US, pascal) + ")";
  }

  /** The same in one system alone: {@code 400 bar}, or {@code 5800 psi}. */
  public static String pressure(UnitSystem units, double pascal) {
    return units == UnitSystem.METRIC
        ? threeFigures(pascal / BAR) + " bar"
        : threeFigures(pascal / PSI) + " psi";
  }

  private static String threeFigures(double value) {
    return new BigDecimal(value).round(new MathContext(3)).stripTrailingZeros().toPlainString();
  }

  /** A difference of temperature given in K, in the units asked for first. */
  public static String difference(double kelvin, UnitSystem first) {
    return led(difference(kelvin), first);
  }

  /** A length given in m, in the units asked for first. */
  public static String length(double metres, UnitSystem first) {
    return led(length(metres), first);
  }

  /** Puts what stands in brackets first where the other system is asked for. */
  private static String led(String both, UnitSystem first) {
    int bracket = both.indexOf(" (");
    boolean us = both.startsWith("°F", bracket - 2) || both.startsWith("in", bracket - 2);
    if (us == (first == UnitSystem.US) || first == UnitSystem.METRIC) {
      return both;
    }
    return both.substring(bracket + 2, both.length() - 1) + " (" + both.substring(0, bracket) + ")";
  }

  private static String both(String pattern, Object... values) {
    return String.format(Locale.ROOT, pattern, values);
  }
}
