package afterweld.choice;

import afterweld.choice.answer.Remark;
import afterweld.choice.answer.Requirement;
import afterweld.choice.answer.Verdict;
import afterweld.joint.JointChecks;
import afterweld.joint.ThinCylinder;
import afterweld.quantity.BothUnits;
import afterweld.section.SectionProfile;
import java.util.Optional;

/**
 * Whether a tube stands the pressure that its case states: not if its weakest metal begins to yield
 * below it, by the thin-wall formula of {@link ThinCylinder}. That holds for a weld along the tube
 * as for one around it: no help of the metal beside a soft band is counted. That it stands a lower
 * pressure is not said: the pressure code decides, with its own strengths and factors.
 */
final class PressureRule {
  private PressureRule() {}

  /** What it does to the verdict; empty where it leaves it be. */
  static Optional<Remark> of(SectionProfile profile, Requirement requirement) {
    return requirement
        .tube()
        .flatMap(tube -> JointChecks.tube(profile, tube))
        .filter(cylinder -> cylinder.pressure() > cylinder.bandYieldPressure())
        .map(PressureRule::yields);
  }

  private static Remark yields(ThinCylinder tube) {
    return new Remark(
        "Pressure",
        Verdict.NOT_MET,
        "the tube begins to yield near "
            + BothUnits.pressure(tube.bandYieldPressure())
            + ", and "
            + BothUnits.pressure(tube.pressure())
            + " is stated.");
  }
}
