package afterweld.thermal;

import afterweld.quantity.Check;
import java.util.OptionalDouble;

/**
 * The heat of one pass as computed: which share of the arc's power enters the metal and how wide it
 * melts.
 *
 * @param pass the pass
 * @param efficiency arc efficiency used
 * @param efficiencyLow low end of its band; equal to {@code efficiency} when calibrated or given
 * @param efficiencyHigh high end of its band
 * @param calibrated true if the efficiency comes from a bead width
 * @param netPower heat that enters the metal, W
 * @param fusionHalfWidth distance of the fusion line from the bead's centre on the arc side, m
 * @param calibratedBy bead width the efficiency was taken from, m
 */
public record PassHeat(
    Pass pass,
    double efficiency,
    double efficiencyLow,
    double efficiencyHigh,
    boolean calibrated,
    double netPower,
    double fusionHalfWidth,
    OptionalDouble calibratedBy) {
  /** Refuses what it cannot be. */
  public PassHeat {
    Check.rising("arc efficiency", 0, efficiencyLow, efficiency, efficiencyHigh);
    Check.positive("power that enters the metal", netPower, "W");
    Check.notNegative("half-width of the bead", fusionHalfWidth, "m");
    Check.positive("bead width", calibratedBy, "m");
  }

  /**
   * How deep the pass melts or brings its heat, m: as given, else by rule.
   *
   * @param thickness of the part, m
   */
  public double depth(double thickness) {
    return SourceDepth.of(pass, thickness, fusionHalfWidth);
  }

  /**
   * The same heat with the bead it melts.
   *
   * @param halfWidth m
   * @throws HeatInputException if that is no bead
   */
  public PassHeat melting(double halfWidth) {
    if (halfWidth < HeatInput.NARROWEST_FUSION) {
      throw new HeatInputException("current", HeatInput.NO_BEAD);
    }
    return new PassHeat(
        pass,
        efficiency,
        efficiencyLow,
        efficiencyHigh,
        calibrated,
        netPower,
        halfWidth,
        calibratedBy);
  }

  /** The pass at another current, as many times the power entering the metal. */
  public PassHeat times(double factor) {
    return new PassHeat(
        pass.withCurrent(factor * pass.current()),
        efficiency,
        efficiencyLow,
        efficiencyHigh,
        calibrated,
        factor * netPower,
        fusionHalfWidth,
        calibratedBy);
  }

  /** The pass with its efficiency stated, so that the bead follows when something else changes. */
  public Pass passAtThisEfficiency() {
    return efficiencyLow < efficiencyHigh
        ? pass
        : new Pass(
            pass.process(),
            pass.current(),
            pass.voltage(),
            pass.travelSpeed(),
            pass.startTemperature(),
            OptionalDouble.empty(),
            pass.penetration(),
            OptionalDouble.of(efficiency),
            pass.offset(),
            pass.pause());
  }
}
