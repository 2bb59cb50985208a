package afterweld.study;

import afterweld.choice.Requirement;
import afterweld.joint.CrossWeldTension;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What one simulated joint came to, dressed flush in the last state.
 *
 * @param tensile of the joint, Pa; NaN if not predicted
 * @param proof over the gauge, Pa; NaN if the joint reaches its maximum first or is not predicted
 * @param lowestHardness averaged over one thickness, HV
 * @param failsIn weakest zone; empty if not predicted
 * @param undecided whether the next zone is within 2 %
 */
record JointRun(
    double tensile, double proof, double lowestHardness, String failsIn, boolean undecided) {

  static JointRun of(SectionReading reading, double gauge) {
    Optional<CrossWeldTension> pulled = reading.pulled(gauge);
    return new JointRun(
        pulled.map(CrossWeldTension::tensile).orElse(Double.NaN),
        pulled.map(CrossWeldTension::proof).orElse(OptionalDouble.empty()).orElse(Double.NaN),
        reading.lowestHardness(),
        pulled.map(pull -> pull.failure().zone()).orElse(""),
        pulled.filter(pull -> pull.failure().undecided()).isPresent());
  }

  /** Whether it has all the strength that is asked; a proof stress it does not reach is not met. */
  boolean meets(Requirement asked) {
    return reaches(proof, asked.yield())
        && reaches(tensile, asked.tensile())
        && reaches(lowestHardness, asked.hardness());
  }

  private static boolean reaches(double value, OptionalDouble asked) {
    return asked.isEmpty() || value >= asked.getAsDouble();
  }
}
