package afterweld.choice;

import afterweld.joint.CrossWeldTension;
import afterweld.joint.JointStrength;
import afterweld.section.ErrorBand;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import org.apache.commons.math3.distribution.NormalDistribution;

/**
 * How far a joint lies above what is asked of it, as a normal distribution of which the error band
 * holds nine values of ten (assumed until a spread is run): a chance of 95 % and a low end that is
 * not below what is asked are one and the same.
 */
final class StrengthMargin {
  private final JointStrength joint;
  private final Requirement requirement;
  private final double lowestHardness;
  private final double lowestHardnessLow;

  StrengthMargin(
      JointStrength joint, Requirement requirement, double hardness, double hardnessLow) {
    this.joint = joint;
    this.requirement = requirement;
    this.lowestHardness = hardness;
    this.lowestHardnessLow = hardnessLow;
  }

  /** Whether a strength or a hardness is asked at all. */
  boolean asked() {
    return requirement.yield().isPresent()
        || requirement.tensile().isPresent()
        || requirement.hardness().isPresent();
  }

  /** Chance that all of it is met, 0 to 1: the lowest of the single ones. */
  double chance() {
    return each(
        (mean, low, asked) ->
            new NormalDistribution(mean, Math.max(1e-9, (mean - low) / ErrorBand.DEVIATIONS))
                .probability(asked, Double.POSITIVE_INFINITY));
  }

  /** Smallest relative margin at a number of standard deviations from the mean. */
  double margin(double deviations) {
    return each(
        (mean, low, asked) ->
            (mean + deviations * (mean - low) / ErrorBand.DEVIATIONS) / asked - 1);
  }

  private double each(Reading reading) {
    return DoubleStream.of(
            one(
                requirement.yield(),
                joint.decidingYield().orElse(Double.NaN),
                joint.decidingYieldLow().orElse(Double.NaN),
                reading),
            one(requirement.tensile(), tensile(joint.middle()), tensile(joint.low()), reading),
            one(requirement.hardness(), lowestHardness, lowestHardnessLow, reading))
        .min()
        .orElseThrow();
  }

  private static double one(OptionalDouble asked, double mean, double low, Reading reading) {
    if (asked.isEmpty()) {
      return 1;
    }
    return Double.isNaN(mean) || Double.isNaN(low)
        ? Double.NaN
        : reading.of(mean, low, asked.getAsDouble());
  }

  private static double tensile(Optional<CrossWeldTension> pull) {
    return pull.map(CrossWeldTension::tensile).orElse(Double.NaN);
  }

  private interface Reading {
    double of(double mean, double low, double asked);
  }
}
