package afterweld.study;

import afterweld.choice.CaseObjections;
import afterweld.choice.LowestHardness;
import afterweld.choice.RequirementCheck;
import afterweld.choice.answer.Judgement;
import afterweld.choice.answer.Objection;
import afterweld.choice.answer.Requirement;
import afterweld.choice.answer.Verdict;
import afterweld.joint.CrossWeldTension;
import afterweld.joint.JointReport;
import afterweld.joint.JointStrength;
import afterweld.quantity.UnitSystem;
import afterweld.section.Estimate;
import afterweld.section.OverageingLimit;
import afterweld.section.SectionProfile;
import afterweld.weld.Warning;
import afterweld.weldmetal.CrackWarnings;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * A joint made with other inputs, as every command sees it: its strengths, how it stands against
 * what the case requires, and what keeps it from being called best.
 *
 * @param value what it is ranked by: Pa, HV or a share of what is asked; NaN where it is blank
 * @param valueLow the same at the low end of the model's error
 * @param figures its strengths
 * @param judgement on what the case requires
 * @param blank why nothing is claimed of it; empty if something is
 * @param objections what speaks against making it; it is never best with one
 */
public record JointPlace(
    double value,
    double valueLow,
    JointFigures figures,
    Judgement judgement,
    String blank,
    List<String> objections) {
  /** What stands where a strength is missing for another reason than an unsound weld. */
  static final String NOT_PREDICTED = "The strength is not predicted.";

  /** Copies the list. */
  public JointPlace {
    objections = List.copyOf(objections);
    if (blank.isEmpty() == Double.isNaN(value)) {
      throw new IllegalArgumentException("a value " + value + " with the reason '" + blank + "'");
    }
  }

  /** Why nothing is claimed of it, or what speaks against it; empty if neither. */
  public String against() {
    return blank.isEmpty() ? String.join(" ", objections) : blank;
  }

  /** A place where there is no weld. */
  public static JointPlace none(String why) {
    return blank(why, new Judgement(Verdict.NOT_MET, OptionalDouble.empty(), List.of(why)));
  }

  private static JointPlace blank(String why, Judgement judgement) {
    String sentence = why.substring(0, 1).toUpperCase(Locale.ROOT) + why.substring(1);
    return new JointPlace(
        Double.NaN, Double.NaN, JointFigures.NONE, judgement, sentence, List.of());
  }

  /** The finished joint of a profile. */
  public static JointPlace of(SectionProfile profile, double gauge, Requirement asked) {
    return of(profile, JointReport.finished(profile, gauge), asked);
  }

  /** The same where the finished joint has been pulled already. */
  static JointPlace of(SectionProfile profile, JointStrength joint, Requirement asked) {
    Judgement judgement = RequirementCheck.of(profile, joint, asked).judgement(UnitSystem.METRIC);
    if (!profile.soundness().sound()) {
      return blank(profile.soundness().note(), judgement);
    }
    JointFigures middle =
        new JointFigures(
            joint.decidingYield().orElse(Double.NaN),
            tensile(joint.middle()),
            LowestHardness.of(profile, Estimate::middle));
    JointFigures low =
        new JointFigures(
            joint.decidingYieldLow().orElse(Double.NaN),
            tensile(joint.low()),
            LowestHardness.of(profile, Estimate::low));
    Aim aim = Aim.of(asked);
    double value = aim.of(middle);
    return new JointPlace(
        value,
        aim.of(low),
        middle,
        judgement,
        Double.isNaN(value) ? why(profile, joint) : "",
        objections(profile, asked));
  }

  private static String why(SectionProfile profile, JointStrength joint) {
    if (joint.middle().isPresent()) {
      return "No proof stress: " + joint.proofNote() + ".";
    }
    return profile.warnings().stream()
        .filter(warning -> warning.code().equals(OverageingLimit.CODE))
        .map(Warning::text)
        .findFirst()
        .orElse(NOT_PREDICTED);
  }

  private static double tensile(Optional<CrossWeldTension> pull) {
    return pull.map(CrossWeldTension::tensile).orElse(Double.NaN);
  }

  /** What the other commands say against it: its cracking, its filler and its heat treatment. */
  private static List<String> objections(SectionProfile profile, Requirement asked) {
    Stream<String> cracking =
        profile.warnings().stream()
            .filter(warning -> warning.code().equals(CrackWarnings.PRONE))
            .map(Warning::text);
    Stream<String> ordered =
        CaseObjections.serious(profile.weldCase(), asked).stream().map(Objection::text);
    return Stream.concat(cracking, ordered).toList();
  }

  /** The same with something more that speaks against it. */
  JointPlace against(List<String> more) {
    List<String> all = Stream.concat(objections.stream(), more.stream()).toList();
    return new JointPlace(value, valueLow, figures, judgement, blank, all);
  }

  /** Whether it may be ranked. */
  public boolean ranked() {
    return blank.isEmpty() && objections.isEmpty();
  }
}
