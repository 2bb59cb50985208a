package afterweld.cli.command;

import afterweld.CaseSession;
import afterweld.casefile.CaseFile;
import afterweld.cli.terminal.InputFault;
import java.util.function.BinaryOperator;

/**
 * A case without faults, and a way to say where in its file something that shows up later stands.
 *
 * @param session whose questions the commands ask
 * @param placed from a key's pointer, such as {@code /passes/0/bead_width}, and a message to that
 *     message with file, line and column before it
 */
public record ReadCase(CaseSession session, BinaryOperator<String> placed) {
  /** The case. */
  public CaseFile caseFile() {
    return session.caseFile();
  }

  /** A fault of a pass, counted from 0, at its place in the file. */
  public InputFault fault(int pass, String field, String message) {
    return new InputFault(placed.apply("/passes/" + pass + "/" + field, message));
  }
}
