package afterweld.cli.terminal;

import java.util.List;

/**
 * Something the user can put right: a faulty case, a folder that is taken, a file that is not
 * there. Its lines are shown as they are and the run ends with {@link ExitStatus#INPUT_FAULT}.
 */
public final class InputFault extends RuntimeException {
  private final List<String> lines;

  public InputFault(List<String> lines) {
    super(String.join("\n", lines));
    this.lines = List.copyOf(lines);
  }

  public InputFault(String line) {
    this(List.of(line));
  }

  /** What is wrong and what to do, a line each. */
  public List<String> lines() {
    return lines;
  }
}
