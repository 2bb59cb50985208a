package afterweld.study;

import afterweld.choice.LowestHardness;
import afterweld.choice.RequirementCheck;
import afterweld.choice.answer.Requirement;
import afterweld.choice.answer.StrengthFinding;
import afterweld.choice.answer.Verdict;
import afterweld.choice.schedule.ScheduleCheck;
import afterweld.joint.CrossWeldTension;
import afterweld.joint.JointReport;
import afterweld.joint.JointStrength;
import afterweld.quantity.UnitSystem;
import afterweld.section.Estimate;
import afterweld.section.SectionProfile;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What one simulated joint came to, dressed flush in the last state, and whether it meets what is
 * asked by the rule that every command judges with ({@link RequirementCheck}). The section's bands
 * must be closed: a simulated joint is what it is, so it meets a value or it does not; what is not
 * predicted or cannot be told is not met.
 *
 * @param tensile of the joint, Pa; NaN if not predicted
 * @param proof over the gauge, Pa; NaN if the joint reaches its maximum first or is not predicted
 * @param decidingYield the yield that is judged, Pa: the proof, or the lowest local yield where the
 *     gauge misses the softest metal
 * @param lowestHardness of the softest place, HV
 * @param failsIn weakest zone; empty if not predicted
 * @param undecided whether the next zone is within 2 %
 * @param met whether all that is asked is met
 * @param lacks why it is no joint; empty if it is one. One that is not meets nothing and has no
 *     strength
 * @param strengthsMet whether all of the strength and hardness asked is met
 * @param beyondStrength what keeps it from being met whatever its strength
 */
record JointRun(
    double tensile,
    double proof,
    double decidingYield,
    double lowestHardness,
    String failsIn,
    boolean undecided,
    boolean met,
    String lacks,
    boolean strengthsMet,
    List<String> beyondStrength) {

  private static final String QUENCHED_LATE = "quenched later than practice allows";

  /** Copies the list. */
  JointRun {
    beyondStrength = List.copyOf(beyondStrength);
  }

  /** Whether it is a joint at all. */
  boolean sound() {
    return lacks.isEmpty();
  }

  /**
   * A joint's values.
   *
   * @param against what stands against the case as written; empty if nothing does
   * @param throat what the throat of its fillet carries, where that is judged
   */
  static JointRun of(
      SectionReading reading,
      double gauge,
      Requirement asked,
      String against,
      Optional<StrengthFinding> throat) {
    SectionProfile profile = reading.profile();
    JointStrength joint = JointReport.finished(profile, gauge);
    Optional<CrossWeldTension> pulled = joint.middle();
    RequirementCheck check = RequirementCheck.of(profile, joint, asked, against, throat);
    boolean late = ScheduleCheck.quenchesLate(profile.weldCase());
    List<String> beyond = new ArrayList<>(check.beyondStrength());
    if (late) {
      beyond.add(QUENCHED_LATE);
    }
    return new JointRun(
        joint.tensile().orElse(Double.NaN),
        joint.proof().orElse(Double.NaN),
        joint.decidingYield().orElse(Double.NaN),
        LowestHardness.of(profile, Estimate::middle),
        pulled.map(pull -> pull.failure().zone()).orElse(""),
        pulled.filter(pull -> pull.failure().undecided()).isPresent(),
        !late && check.judgement(UnitSystem.METRIC).verdict() == Verdict.MET,
        profile.soundness().note(),
        check.meetsStrengths(),
        beyond);
  }
}
