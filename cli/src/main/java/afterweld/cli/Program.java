package afterweld.cli;

import afterweld.cli.terminal.ExitStatus;
import afterweld.cli.terminal.InputFault;
import afterweld.cli.terminal.Streams;
import afterweld.quantity.Check;
import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/** One run: arguments in, exit status out. No failure leaves it as a stack trace. */
final class Program {
  private static final int WIDTH = 80;

  private final Streams streams;
  private final CommandLine line;

  /**
   * A program of the given commands.
   *
   * @param commands objects that picocli can run
   */
  Program(Streams streams, List<Object> commands) {
    this.streams = streams;
    this.line = new CommandLine(new RootCommand());
    commands.forEach(line::addSubcommand);
    line.setOut(streams.out())
        .setErr(streams.err())
        .setColorScheme(CommandLine.Help.defaultColorScheme(Ansi.OFF))
        .setExpandAtFiles(false)
        .setUsageHelpWidth(WIDTH)
        .setParameterExceptionHandler((fault, args) -> misused(fault))
        .setExecutionExceptionHandler((fault, command, parsed) -> failed(fault));
  }

  /** Runs one command line and returns its {@link ExitStatus}. */
  int run(String... arguments) {
    int status = execute(arguments);
    Optional<String> fault = streams.flush();
    fault.ifPresent(reason -> say("cannot write the output: " + reason));
    return fault.isPresent() ? Math.max(status, ExitStatus.INPUT_FAULT) : status;
  }

  private int execute(String... arguments) {
    try {
      return line.execute(arguments);
    } catch (StackOverflowError | OutOfMemoryError | LinkageError | AssertionError error) {
      return failed(error);
    }
  }

  private int misused(ParameterException fault) {
    PrintWriter err = streams.err();
    say(fault.getMessage());
    UnmatchedArgumentException.printSuggestions(fault, err);
    err.println("Try '" + fault.getCommandLine().getCommandSpec().qualifiedName() + " --help'.");
    return ExitStatus.INPUT_FAULT;
  }

  private int failed(Throwable fault) {
    if (fault instanceof InputFault input) {
      input.lines().forEach(this::say);
      return ExitStatus.INPUT_FAULT;
    }
    say(
        "an internal error ("
            + fault.getClass().getSimpleName()
            + place(fault)
            + ") ended this run and nothing was written; please report this line to the maintainers"
            + " together with the case file and the output of 'afterweld --version'");
    return ExitStatus.INTERNAL_ERROR;
  }

  /** Where it happened: who made the value, and not where values are checked. */
  private static String place(Throwable fault) {
    StackTraceElement[] frames = fault.getStackTrace();
    for (StackTraceElement frame : frames) {
      String name = frame.getClassName();
      if (name.startsWith("afterweld.") && !name.equals(Check.class.getName())) {
        return " at " + frame.getFileName() + ":" + frame.getLineNumber();
      }
    }
    return "";
  }

  private void say(String sentence) {
    streams.err().println("afterweld: " + sentence);
    streams.err().flush();
  }
}
