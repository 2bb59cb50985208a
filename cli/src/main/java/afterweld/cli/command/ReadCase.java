package afterweld.cli.command;

import afterweld.casefile.CaseFile;
import afterweld.choice.CaseObjections;
import afterweld.choice.answer.Objection;
import afterweld.section.Cautions;
import afterweld.section.WeldSession;
import afterweld.section.soundness.Soundness;
import java.util.List;
import java.util.function.BinaryOperator;

/**
 * A case without faults, and a way to say where in its file something that shows up later stands.
 *
 * @param session where what is computed of its weld is kept
 * @param caseFile the case
 * @param placed from a key's pointer, such as {@code /passes/0/bead_width}, and a message to that
 *     message with file, line and column before it
 */
public record ReadCase(WeldSession session, CaseFile caseFile, BinaryOperator<String> placed) {
  /** Whether it is about a ring or a tube. */
  public boolean underPressure() {
    return caseFile.weld().ring().isPresent() || caseFile.joint().tube().isPresent();
  }

  /** What stands against its filler and its heat treatment. */
  public List<Objection> objections() {
    return CaseObjections.of(caseFile.weld(), caseFile.requirement());
  }

  /**
   * Whether its weld is a joint.
   *
   * @throws afterweld.thermal.HeatInputException if the passes cannot make this weld
   */
  public Soundness soundness() {
    return session.soundness(caseFile.weld());
  }

  /** What stands beside the numbers of a command: warnings of the section, cautions. */
  public Notices notices(String own) {
    return new Notices(
        soundness(), objections(), Notices.of(session.thinProfile(caseFile.weld())), cautions(own));
  }

  /** The cautions of a command: its own, and the one on pressure where it matters. */
  public List<String> cautions(String own) {
    return underPressure() ? List.of(own, Cautions.PRESSURE) : List.of(own);
  }
}
