package afterweld.cli;

import java.util.List;

/** Where the process starts. */
public final class Main {
  private Main() {}

  /** Runs the command line and ends the process with its exit status. */
  public static void main(String[] arguments) {
    System.exit(new Program(Streams.ofProcess(), List.of()).run(arguments));
  }
}
