package afterweld.cli;

import afterweld.cli.classroom.ClassroomServer;
import afterweld.cli.terminal.ExitStatus;
import afterweld.cli.terminal.InputFault;
import afterweld.cli.terminal.Streams;
import afterweld.cli.terminal.Version;
import java.io.IOException;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** The page on which a class moves a weld and its heat treatment. */
@Command(
    name = "classroom",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    description =
        "A page on this machine: move a weld and its heat treatment, watch the section change,"
            + " play the weld, bend the strip, compare, take six short lessons. Prints its address;"
            + " Ctrl-C ends it.",
    footerHeading = "%nExamples:%n",
    footer = {"  afterweld classroom", "  afterweld classroom --port 8600"})
final class ClassroomCommand implements Callable<Integer> {
  private static final int HIGHEST_PORT = 65_535;

  private final Streams streams;

  @Option(
      names = "--port",
      paramLabel = "NUMBER",
      defaultValue = "0",
      description = "Port on 127.0.0.1; a free one if not given.")
  private int port;

  ClassroomCommand(Streams streams) {
    this.streams = streams;
  }

  @Override
  public Integer call() throws InterruptedException {
    ClassroomServer server = started();
    Thread atTheEnd = new Thread(() -> stop(server), "classroom stops");
    Runtime.getRuntime().addShutdownHook(atTheEnd);
    say(server.address());
    say("Open this address in a browser on this machine. Ctrl-C ends it.");
    server.await();
    return ExitStatus.DONE;
  }

  /** Ctrl-C is how a class ends, so it is no failure: without this, the status would say so. */
  private void stop(ClassroomServer server) {
    server.stop();
    say("The classroom is closed.");
    Runtime.getRuntime().halt(ExitStatus.DONE);
  }

  private void say(String line) {
    streams.out().println(line);
    streams.flush();
  }

  private ClassroomServer started() {
    if (port < 0 || port > HIGHEST_PORT) {
      throw new InputFault("--port " + port + ": expected a whole number from 0 to 65535");
    }
    try {
      return ClassroomServer.start(port);
    } catch (IOException taken) {
      throw new InputFault(
          "cannot listen on port "
              + port
              + ": "
              + taken.getMessage()
              + "; without --port a free one is taken");
    }
  }
}
