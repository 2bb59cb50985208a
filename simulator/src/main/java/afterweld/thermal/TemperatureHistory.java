package afterweld.thermal;

import afterweld.material.TemperRecipe;
import java.util.Arrays;

/**
 * Temperature against time in straight pieces: what a weld, a furnace or a shelf does to one point
 * of metal. Immutable; time in seconds from the start of the history, temperature in kelvin.
 */
public final class TemperatureHistory {
  private final double[] time;
  private final double[] temperature;

  private TemperatureHistory(double[] time, double[] temperature) {
    this.time = time;
    this.temperature = temperature;
  }

  /**
   * A history through the given points.
   *
   * @param time seconds, rising (equal neighbours make a jump), first 0
   * @param temperature kelvin, same length, at least two points
   * @throws IllegalArgumentException if lengths differ, time falls or a value is not finite
   */
  public static TemperatureHistory of(double[] time, double[] temperature) {
    if (time.length != temperature.length || time.length < 2 || time[0] != 0) {
      throw new IllegalArgumentException("a history needs two or more points from time 0");
    }
    for (int i = 0; i < time.length; i++) {
      boolean falls = i > 0 && time[i] < time[i - 1];
      if (falls || !Double.isFinite(time[i]) || !(temperature[i] > 0) || temperature[i] > 6000) {
        throw new IllegalArgumentException(
            "point " + i + ": " + time[i] + " s, " + temperature[i] + " K");
      }
    }
    return new TemperatureHistory(time.clone(), temperature.clone());
  }

  /** A history of constant temperature. */
  public static TemperatureHistory hold(double temperature, double duration) {
    return of(new double[] {0, duration}, new double[] {temperature, temperature});
  }

  /** How a temper is made. */
  public static TemperatureHistory of(TemperRecipe recipe) {
    TemperatureHistory history = hold(recipe.startTemperature(), 0);
    for (TemperRecipe.Leg leg : recipe.legs()) {
      history = history.thenTo(leg.endTemperature(), leg.duration());
    }
    return history;
  }

  /** How many points it has. */
  public int size() {
    return time.length;
  }

  /** Time of point {@code i}, s. */
  public double time(int i) {
    return time[i];
  }

  /** Temperature of point {@code i}, K. */
  public double temperature(int i) {
    return temperature[i];
  }

  /** Length of the whole history, s. */
  public double duration() {
    return time[time.length - 1];
  }

  /** Temperature at the end, K. */
  public double endTemperature() {
    return temperature[temperature.length - 1];
  }

  /** Highest temperature, K. */
  public double peakTemperature() {
    return Arrays.stream(temperature).max().orElseThrow();
  }

  /** Temperature at any time, K; before the start and after the end the nearest point's. */
  public double at(double moment) {
    int i = Arrays.binarySearch(time, moment);
    if (i >= 0) {
      return temperature[i];
    }
    int next = -i - 1;
    if (next == 0) {
      return temperature[0];
    }
    if (next == time.length) {
      return endTemperature();
    }
    double part = (moment - time[next - 1]) / (time[next] - time[next - 1]);
    return temperature[next - 1] + part * (temperature[next] - temperature[next - 1]);
  }

  /**
   * The part of this history up to a moment; the whole of it if the moment is later than its end.
   */
  public TemperatureHistory until(double moment) {
    if (moment >= duration()) {
      return this;
    }
    int kept = 0;
    while (time[kept] < moment) {
      kept++;
    }
    kept = Math.max(1, kept);
    double[] times = Arrays.copyOf(time, kept + 1);
    double[] temperatures = Arrays.copyOf(temperature, kept + 1);
    times[kept] = Math.max(0, moment);
    temperatures[kept] = at(moment);
    return new TemperatureHistory(times, temperatures);
  }

  /** The part of this history from a moment on; at its end, if the moment is later than that. */
  public TemperatureHistory from(double moment) {
    if (moment <= 0) {
      return this;
    }
    int left = 0;
    while (left < time.length && time[left] <= moment) {
      left++;
    }
    if (left == time.length) {
      return hold(endTemperature(), 0);
    }
    int length = time.length - left + 1;
    double[] times = new double[length];
    double[] temperatures = new double[length];
    temperatures[0] = at(moment);
    for (int i = 1; i < length; i++) {
      times[i] = time[left + i - 1] - moment;
      temperatures[i] = temperature[left + i - 1];
    }
    return new TemperatureHistory(times, temperatures);
  }

  /** This history and then {@code next}; a difference of temperature between them is a jump. */
  public TemperatureHistory then(TemperatureHistory next) {
    boolean joins = endTemperature() == next.temperature[0];
    int skip = joins ? 1 : 0;
    int length = time.length + next.time.length - skip;
    double[] times = Arrays.copyOf(time, length);
    double[] temperatures = Arrays.copyOf(temperature, length);
    for (int i = skip; i < next.time.length; i++) {
      times[time.length + i - skip] = duration() + next.time[i];
      temperatures[time.length + i - skip] = next.temperature[i];
    }
    return new TemperatureHistory(times, temperatures);
  }

  /** This history with a straight leg to {@code endTemperature} after it. */
  public TemperatureHistory thenTo(double endTemperature, double legDuration) {
    return then(of(new double[] {0, legDuration}, new double[] {endTemperature(), endTemperature}));
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof TemperatureHistory that
        && Arrays.equals(time, that.time)
        && Arrays.equals(temperature, that.temperature);
  }

  @Override
  public int hashCode() {
    return 31 * Arrays.hashCode(time) + Arrays.hashCode(temperature);
  }

  @Override
  public String toString() {
    return "TemperatureHistory[" + size() + " points, " + duration() + " s]";
  }
}
