package afterweld.cli;

import afterweld.cli.terminal.Streams;
import afterweld.section.WeldSession;

/** Where the process starts. */
public final class Main {
  private Main() {}

  /** Runs the command line and ends the process with its exit status. */
  public static void main(String[] arguments) {
    System.setProperty("java.awt.headless", "true");
    Streams streams = Streams.ofProcess();
    System.exit(new Program(streams, Wiring.commands(streams, new WeldSession())).run(arguments));
  }
}
