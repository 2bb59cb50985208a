package afterweld.thermal;

import afterweld.quantity.Check;
import afterweld.quantity.UnitSystem;
import java.util.List;
import java.util.Optional;

/**
 * What the welding did to one station, from the preheat to room temperature. SI units and kelvin.
 *
 * @param distance from the weld centre, m; negative on the left
 * @param history the whole time line
 * @param passTimes of each pass
 * @param passPeaks peak temperature of each pass, K
 * @param melted whether a pass melted it: a peak at or above the middle of the melting range
 */
public record StationHistory(
    double distance,
    TemperatureHistory history,
    List<PassTimes> passTimes,
    List<Double> passPeaks,
    boolean melted) {
  /**
   * Weld metal is solid under this, K: the eutectic with Mg2Si and silicon lies near 555 °C
   * (handbook, from memory).
   */
  private static final double FROZEN = 540 + UnitSystem.ZERO_CELSIUS;

  /** Copies the list. */
  public StationHistory {
    passTimes = List.copyOf(passTimes);
    passPeaks = List.copyOf(passPeaks);
  }

  /**
   * Where a pass lies on the station's time line. Stations feel the arc at different times before
   * it passes them: whoever wants them on one clock lays the times of the arc on each other.
   *
   * @param start when the station begins to feel it, s from the start of the history
   * @param arc when the arc goes by, s from the start of the history
   */
  public record PassTimes(double start, double arc) {
    /** Refuses what it cannot be. */
    public PassTimes {
      Check.finite("time", start, "s");
      Check.finite("time", arc, "s");
    }
  }

  /** Highest temperature of all passes, K. */
  public double peakTemperature() {
    return passPeaks.stream().mapToDouble(Double::doubleValue).max().orElseThrow();
  }

  /**
   * What weld metal goes through as cast: the time line from where the station last falls through
   * 540 °C. Empty if it was not melted.
   */
  public Optional<TemperatureHistory> sinceFrozen() {
    return melted ? Optional.of(sinceLastFallThrough(FROZEN)) : Optional.empty();
  }

  private TemperatureHistory sinceLastFallThrough(double temperature) {
    int first = history.size() - 1;
    while (history.temperature(first - 1) < temperature) {
      first--;
    }
    double part =
        (history.temperature(first - 1) - temperature)
            / (history.temperature(first - 1) - history.temperature(first));
    double lapse = history.time(first) - history.time(first - 1);
    double start = history.time(first - 1) + part * lapse;
    int count = history.size() - first + 1;
    double[] times = new double[count];
    double[] temperatures = new double[count];
    temperatures[0] = temperature;
    for (int i = 1; i < count; i++) {
      times[i] = history.time(first + i - 1) - start;
      temperatures[i] = history.temperature(first + i - 1);
    }
    return TemperatureHistory.of(times, temperatures);
  }
}
