package afterweld.cli;

import afterweld.casefile.CaseFile;
import afterweld.choice.Judgement;
import afterweld.choice.Requirement;
import afterweld.choice.RequirementCheck;
import afterweld.joint.JointReport;
import afterweld.joint.JointStrength;
import afterweld.section.SectionProfile;
import afterweld.section.UnitSystem;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * How the case as written stands against what it requires: the same in every command that judges.
 *
 * @param judgement its reasons in the units shown
 * @param metric the same with its reasons in metric units, for programs
 */
record Standing(Judgement judgement, Judgement metric) {

  /** The standing of a case whose section is computed. */
  static Standing of(CaseFile asked, SectionProfile profile, UnitSystem units) {
    JointStrength joint = JointReport.finished(profile, asked.joint().gauge());
    return new Standing(
        judgement(profile, joint, asked.requirement(), units),
        judgement(profile, joint, asked.requirement(), UnitSystem.METRIC));
  }

  /**
   * The judgement on a computed section.
   *
   * @param finished its joint, dressed flush, in the last state
   */
  static Judgement judgement(
      SectionProfile profile, JointStrength finished, Requirement requirement, UnitSystem units) {
    return RequirementCheck.of(profile, finished, requirement).judgement(units);
  }

  /** The {@link ExitStatus} of the case. */
  int exitStatus() {
    return ExitStatus.of(judgement);
  }

  /** For programs. */
  Map<String, Object> json() {
    return json(metric);
  }

  /** A judgement for programs: verdict and chance are null where nothing is required. */
  static Map<String, Object> json(Judgement judgement) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("met", judgement.met().orElse(null));
    json.put("verdict", judgement.asked() ? judgement.verdict().label() : null);
    json.put("chance", new JsonNumber(judgement.chance().orElse(Double.NaN), 4));
    json.put("reasons", judgement.reasons());
    return json;
  }

  /** Its word; "none" where nothing is required. */
  static String word(Judgement judgement) {
    return judgement.asked() ? judgement.verdict().label() : "none";
  }

  /** One line for a person in a hurry. */
  String brief() {
    return "requirement: " + word(judgement) + "\n";
  }

  /** What was judged where a treatment is shown that the case does not order. */
  String asWelded() {
    return judgement.asked()
        ? Paragraph.of("Judged as welded: the case as written orders no heat treatment.")
        : "";
  }

  /** What a person reads of it, the word first; empty where nothing is required. */
  String text() {
    return judgement.asked()
        ? "\n"
            + Paragraph.of("Requirement: " + word(judgement))
            + judgement.reasons().stream()
                .map(reason -> Paragraph.hanging("- ", reason))
                .collect(Collectors.joining())
        : "";
  }
}
