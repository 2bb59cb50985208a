package afterweld.cli.command;

import afterweld.casefile.CaseFile;
import afterweld.choice.RequirementCheck;
import afterweld.choice.answer.Judgement;
import afterweld.choice.answer.Requirement;
import afterweld.cli.terminal.ExitStatus;
import afterweld.cli.terminal.JsonNumber;
import afterweld.cli.terminal.Paragraph;
import afterweld.joint.JointReport;
import afterweld.joint.JointStrength;
import afterweld.quantity.UnitSystem;
import afterweld.section.SectionProfile;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * How the case as written stands against what it requires: the same in every command that judges.
 *
 * @param judgement its reasons in the units shown
 * @param metric the same with its reasons in metric units, for programs
 */
public record Standing(Judgement judgement, Judgement metric) {

  /** The standing of a case whose section is computed. */
  public static Standing of(CaseFile asked, SectionProfile profile, UnitSystem units) {
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
  public static Judgement judgement(
      SectionProfile profile, JointStrength finished, Requirement requirement, UnitSystem units) {
    return RequirementCheck.of(profile, finished, requirement).judgement(units);
  }

  /** The {@link ExitStatus} of the case. */
  public int exitStatus() {
    return ExitStatus.of(judgement);
  }

  /** For programs. */
  public Map<String, Object> json() {
    return json(metric);
  }

  /** A judgement for programs: verdict and chance are null where nothing is required. */
  public static Map<String, Object> json(Judgement judgement) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("met", judgement.met().orElse(null));
    json.put("verdict", judgement.asked() ? judgement.verdict().label() : null);
    json.put("chance", new JsonNumber(judgement.chance().orElse(Double.NaN), 4));
    json.put("reasons", judgement.reasons());
    return json;
  }

  /** Its word; "none" where nothing is required. */
  public static String word(Judgement judgement) {
    return judgement.asked() ? judgement.verdict().label() : "none";
  }

  /** One line for a person in a hurry. */
  public String brief() {
    return "requirement: " + word(judgement) + "\n";
  }

  /** What was judged where a treatment is shown that the case does not order. */
  public String asWelded() {
    return judgement.asked()
        ? Paragraph.of("Judged as welded: the case as written orders no heat treatment.")
        : "";
  }

  /** What a person reads of it, the word first; empty where nothing is required. */
  public String text() {
    return judgement.asked()
        ? "\n"
            + Paragraph.of("Requirement: " + word(judgement))
            + judgement.reasons().stream()
                .map(reason -> Paragraph.hanging("- ", reason))
                .collect(Collectors.joining())
        : "";
  }
}
