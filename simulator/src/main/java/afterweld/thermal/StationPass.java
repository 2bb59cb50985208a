package afterweld.thermal;

import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;

/**
 * One pass as one place feels it: temperature against the time since the arc passed by. SI units
 * and kelvin.
 *
 * <p>The metal starts at the pass's start temperature. From the peak on the warm body itself cools
 * to the ambient, T = T_amb + (T0 − T_amb) exp(−m² a t); without that a preheated part would stay
 * warm for ever.
 */
final class StationPass {
  private static final double LONGEST_SEARCH = 5000;
  private static final double PEAK_SHARPNESS = 0.3;
  private static final double NOTICED = 0.5;

  private final PlateField field;
  private final HeatPotential potential;
  private final double y;
  private final double peakTime;
  private final double scale;

  /**
   * A place.
   *
   * @param y distance from the bead's centre, m
   * @param peakTime when it is hottest, s after the arc passed
   * @param scale factor on the rise per watt, W
   */
  StationPass(PlateField field, double y, double peakTime, double scale) {
    this.field = field;
    this.potential = field.material().potential();
    this.y = y;
    this.peakTime = peakTime;
    this.scale = scale;
  }

  double peakTime() {
    return peakTime;
  }

  double peakTemperature() {
    return temperature(peakTime);
  }

  double temperatureAhead(double xi) {
    return temperatureOver(field.startTemperature(), xi);
  }

  /** Temperature at a time after the arc passed (negative before), K. */
  double temperature(double time) {
    return temperatureOver(body(time), -field.speed() * time);
  }

  private double temperatureOver(double body, double xi) {
    return potential.temperature(potential.at(body) + scale * field.unitRise(xi, y));
  }

  private double body(double time) {
    double ambient = field.loss().ambient();
    double left = Math.exp(-field.bodyCooling() * Math.max(0, time - peakTime));
    return ambient + (field.startTemperature() - ambient) * left;
  }

  /** When the temperature has begun to rise (by 0.5 K), s; the peak if it never does. */
  double startTime() {
    double noticed = field.startTemperature() + NOTICED;
    return before(noticed).orElse(peakTime);
  }

  private OptionalDouble before(double temperature) {
    if (peakTemperature() <= temperature) {
      return OptionalDouble.empty();
    }
    double reach = timeScale();
    while (temperature(peakTime - reach) > temperature) {
      reach *= 2;
    }
    return OptionalDouble.of(crossing(temperature, peakTime - reach, peakTime));
  }

  private double timeScale() {
    return (Math.abs(y) + 1e-3) / field.speed();
  }

  private double crossing(double temperature, double from, double to) {
    DoubleUnaryOperator excess = time -> temperature(time) - temperature;
    return Root.between(excess, from, to, 1e-7);
  }

  /** When it has cooled to a temperature after the peak, s; empty if not within the search. */
  OptionalDouble after(double temperature, double longest) {
    if (peakTemperature() <= temperature) {
      return OptionalDouble.empty();
    }
    double inside = peakTime;
    double outside = peakTime + timeScale();
    while (temperature(outside) > temperature) {
      if (outside > longest) {
        return OptionalDouble.empty();
      }
      inside = outside;
      outside = peakTime + 2 * (outside - peakTime);
    }
    return OptionalDouble.of(crossing(temperature, inside, outside));
  }

  OptionalDouble coolingTime(double from, double to) {
    OptionalDouble start = after(from, LONGEST_SEARCH);
    OptionalDouble end = after(to, LONGEST_SEARCH);
    return start.isPresent() && end.isPresent()
        ? OptionalDouble.of(end.getAsDouble() - start.getAsDouble())
        : OptionalDouble.empty();
  }

  OptionalDouble timeAbove(double temperature) {
    OptionalDouble start = before(temperature);
    if (start.isEmpty()) {
      return OptionalDouble.of(0);
    }
    OptionalDouble end = after(temperature, LONGEST_SEARCH);
    return end.isPresent()
        ? OptionalDouble.of(end.getAsDouble() - start.getAsDouble())
        : OptionalDouble.empty();
  }

  /** The cycle in straight pieces until it has cooled to a temperature or a time has passed. */
  TemperatureHistory cycle(double until, double longest) {
    double latest = Math.max(longest, peakTime);
    double end = Math.min(after(until, latest).orElse(cold(until) ? peakTime : latest), latest);
    return cycleTo(end);
  }

  private boolean cold(double until) {
    return peakTemperature() <= until;
  }

  /** The cycle in straight pieces until a time after the arc passed. */
  TemperatureHistory cycleTo(double end) {
    double scale = PEAK_SHARPNESS * timeScale();
    double liquidus = field.material().liquidus();
    return ChordCut.of(this::temperature, startTime(), peakTime, end, scale, liquidus);
  }
}
