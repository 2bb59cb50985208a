package afterweld.thermal;

import afterweld.quantity.Check;
import java.util.OptionalDouble;

/**
 * One run of the arc along the joint, as a welding procedure states it. SI units and kelvin.
 *
 * @param process welding process
 * @param current A
 * @param voltage V
 * @param travelSpeed m/s
 * @param startTemperature preheat of the first pass or interpass temperature of a later one, K
 * @param beadWidth surface width from fusion line to fusion line, m; calibrates the efficiency
 * @param penetration depth to which the heat enters, m
 * @param efficiency arc efficiency given by the user
 * @param offset distance of the bead's centre from the weld centre, m
 * @param pause time before the pass, s; empty means the part cools to the interpass temperature
 */
public record Pass(
    WeldingProcess process,
    double current,
    double voltage,
    double travelSpeed,
    double startTemperature,
    OptionalDouble beadWidth,
    OptionalDouble penetration,
    OptionalDouble efficiency,
    double offset,
    OptionalDouble pause) {

  /** Checks that the numbers can be a weld. */
  public Pass {
    Check.positive("bead width", beadWidth, "m");
    Check.notNegative("penetration", penetration, "m");
    efficiency.ifPresent(share -> Check.share("arc efficiency", share));
    Check.finite("offset", offset, "m");
    Check.notNegative("pause", pause, "s");
    Check.positive("current", current, "A");
    Check.positive("voltage", voltage, "V");
    Check.positive("travel speed", travelSpeed, "m/s");
    Check.positive("start temperature", startTemperature, "K");
    if (beadWidth.isPresent() && efficiency.isPresent()) {
      throw new IllegalArgumentException("a bead width and an efficiency in one pass");
    }
  }

  /** The same pass at another travel speed, m/s. */
  public Pass withTravelSpeed(double other) {
    return new Pass(
        process,
        current,
        voltage,
        other,
        startTemperature,
        beadWidth,
        penetration,
        efficiency,
        offset,
        pause);
  }

  /** The same pass on metal of another temperature, K. */
  public Pass withStartTemperature(double other) {
    return new Pass(
        process,
        current,
        voltage,
        travelSpeed,
        other,
        beadWidth,
        penetration,
        efficiency,
        offset,
        pause);
  }

  /** The same pass at another current, A. */
  public Pass withCurrent(double other) {
    return new Pass(
        process,
        other,
        voltage,
        travelSpeed,
        startTemperature,
        beadWidth,
        penetration,
        efficiency,
        offset,
        pause);
  }

  /** The same pass with a bead width that tells its heat, m. */
  public Pass ofWidth(double width) {
    return new Pass(
        process,
        current,
        voltage,
        travelSpeed,
        startTemperature,
        OptionalDouble.of(width),
        penetration,
        OptionalDouble.empty(),
        offset,
        pause);
  }

  /** Electrical power of the arc, W. */
  public double arcPower() {
    return current * voltage;
  }
}
