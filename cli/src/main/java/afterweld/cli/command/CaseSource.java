package afterweld.cli.command;

import afterweld.cli.terminal.InputFault;

/** Reads the text of a case. */
@FunctionalInterface
public interface CaseSource {
  /**
   * The case as read.
   *
   * @param fileName name of the file as the user gave it, for messages
   * @throws InputFault with a line per fault
   */
  ReadCase read(String fileName, byte[] content);
}
