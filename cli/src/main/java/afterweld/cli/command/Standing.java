package afterweld.cli.command;

import afterweld.CaseSession;
import afterweld.choice.answer.Judgement;
import afterweld.cli.terminal.ExitStatus;
import afterweld.cli.terminal.Paragraph;
import afterweld.quantity.UnitSystem;
import java.util.stream.Collectors;

/**
 * How the case as written stands against what it requires: the same in every command that judges.
 *
 * @param judgement its reasons in the units shown
 * @param metric the same with its reasons in metric units, for programs
 */
public record Standing(Judgement judgement, Judgement metric) {

  /** The standing of a case as written. */
  public static Standing of(CaseSession session, UnitSystem units) {
    return new Standing(session.judgement(units), session.judgement(UnitSystem.METRIC));
  }

  /** The {@link ExitStatus} of the case. */
  public int exitStatus() {
    return ExitStatus.of(judgement);
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
