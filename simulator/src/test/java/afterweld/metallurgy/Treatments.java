package afterweld.metallurgy;

import afterweld.material.Composition;
import afterweld.material.Element;
import afterweld.thermal.TemperatureHistory;
import java.util.Map;

/** Compositions and histories of the reference calculations. Temperatures in °C, times in s. */
public final class Treatments {
  /** One hour. */
  public static final double HOUR = 3600;

  /** One day. */
  public static final double DAY = 24 * HOUR;

  /** 6061 as the model has it, wt%. */
  public static final Composition ALLOY_6061 = composition(0.6, 1.0, 0.28, 0.35, 0, 0.2);

  /** 6063 as the model has it, wt%. */
  public static final Composition ALLOY_6063 = composition(0.4, 0.7, 0, 0.2, 0, 0);

  /** 6082 as the model has it, wt%. */
  public static final Composition ALLOY_6082 = composition(1.0, 0.9, 0, 0.3, 0.6, 0);

  /** 6005A as the model has it, wt%. */
  public static final Composition ALLOY_6005A = composition(0.7, 0.55, 0.1, 0.25, 0.15, 0.1);

  private static final double COOLING_POINTS = 40;

  private Treatments() {}

  /** A composition, wt%. */
  public static Composition composition(
      double si, double mg, double cu, double fe, double mn, double cr) {
    return Composition.of(
        Map.of(
            Element.SI,
            si,
            Element.MG,
            mg,
            Element.CU,
            cu,
            Element.FE,
            fe,
            Element.MN,
            mn,
            Element.CR,
            cr));
  }

  /** Kelvin. */
  public static double kelvin(double celsius) {
    return celsius + 273.15;
  }

  /** Constant temperature. */
  public static TemperatureHistory hold(double celsius, double duration) {
    return TemperatureHistory.hold(kelvin(celsius), duration);
  }

  /** A history with one more leg at a heating or cooling rate in K/s. */
  public static TemperatureHistory ramp(TemperatureHistory history, double celsius, double rate) {
    double change = Math.abs(kelvin(celsius) - history.endTemperature());
    return history.thenTo(kelvin(celsius), change / rate);
  }

  /** Time on the shelf at 25 °C. */
  public static TemperatureHistory shelf(double duration) {
    return hold(25, duration);
  }

  /** One hour at a solution temperature and a quench. */
  public static TemperatureHistory solution(double celsius) {
    return ramp(hold(celsius, HOUR), 25, 300);
  }

  /** One day on the shelf, then artificial ageing. */
  public static TemperatureHistory aged(double celsius, double duration) {
    return ramp(ramp(shelf(DAY), celsius, 0.5).then(hold(celsius, duration)), 25, 2);
  }

  /** Solution treatment, a day, 175 °C for 8 hours. */
  public static TemperatureHistory t6(double solutionCelsius) {
    return solution(solutionCelsius).then(aged(175, 8 * HOUR));
  }

  /** Solution treatment and 30 days. */
  public static TemperatureHistory t4(double solutionCelsius) {
    return solution(solutionCelsius).then(shelf(30 * DAY));
  }

  /** Solution treatment of a part that is at room temperature, with the ageing of T6 after it. */
  public static TemperatureHistory retreatment(double solutionCelsius) {
    return shelf(0).thenTo(kelvin(solutionCelsius), 600).then(t6(solutionCelsius));
  }

  /**
   * What a weld does to a point beside it: up at 60 K/s, down exponentially.
   *
   * @param peak °C
   * @param cooling time from 400 to 200 °C, s
   */
  public static TemperatureHistory weldCycle(double peak, double cooling) {
    double decay = cooling / Math.log(375.0 / 175);
    double end = decay * Math.log((peak - 25) / 1.5);
    TemperatureHistory cycle = ramp(shelf(0), peak, 60);
    double last = 0;
    for (int i = 1; i <= COOLING_POINTS; i++) {
      double time = end * Math.pow(i / COOLING_POINTS, 1.5);
      cycle = cycle.thenTo(kelvin(25 + (peak - 25) * Math.exp(-time / decay)), time - last);
      last = time;
    }
    return cycle.thenTo(kelvin(25), 60);
  }
}
