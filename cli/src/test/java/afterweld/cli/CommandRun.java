package afterweld.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import afterweld.cli.terminal.ExitStatus;
import afterweld.cli.terminal.Streams;

/** Runs a command as the program does, for tests beside this package. */
public final class CommandRun {
  private CommandRun() {}

  /** What a command that succeeds prints. */
  public static String printed(String... arguments) {
    Fixtures.Memory memory = new Fixtures.Memory();
    Streams streams = memory.streams(false);
    int status = Welded.program(streams).run(arguments);
    assertEquals(ExitStatus.DONE, status, memory.err());
    return memory.out();
  }
}
