package afterweld.cli.terminal;

import afterweld.choice.answer.Judgement;
import afterweld.choice.answer.Verdict;

/** What the process tells its caller when it ends. */
public final class ExitStatus {
  /** All done, and what the case requires is met or nothing is required. */
  public static final int DONE = 0;

  /** All done, but a requirement is not surely met, or nothing could be fitted. */
  public static final int REQUIREMENT_OPEN = 1;

  /** Nothing done: the command line, the case or the output folder is at fault. */
  public static final int INPUT_FAULT = 2;

  /** Nothing done: the program is at fault. */
  public static final int INTERNAL_ERROR = 3;

  private ExitStatus() {}

  /** The one rule by which every command that judges a case as written ends. */
  public static int of(Judgement judgement) {
    return judgement.verdict() == Verdict.MET ? DONE : REQUIREMENT_OPEN;
  }
}
