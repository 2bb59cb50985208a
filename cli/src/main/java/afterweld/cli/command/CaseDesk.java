package afterweld.cli.command;

import afterweld.CaseSession;
import afterweld.cli.files.CaseInput;
import afterweld.cli.files.OutputFolder;
import afterweld.cli.terminal.Interrupted;
import afterweld.cli.terminal.Paragraph;
import afterweld.cli.terminal.Progress;
import afterweld.cli.terminal.Streams;
import afterweld.thermal.HeatInputException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.function.Function;
import java.util.function.Supplier;

/** How every command on a case runs: read it, claim its folder, compute, write, print. */
public final class CaseDesk {
  private final Streams streams;
  private final CaseSource cases;

  public CaseDesk(Streams streams, CaseSource cases) {
    this.streams = streams;
    this.cases = cases;
  }

  /**
   * Runs a command on a case.
   *
   * @param name of the command, which its default folder carries
   * @param what it is doing, for the progress line
   * @return its exit status
   */
  public int run(
      Path caseFile,
      OutputOptions output,
      String name,
      String what,
      Function<ReadCase, Answer> work) {
    return run(caseFile, output, name, () -> what, work);
  }

  /** The same with a progress line that changes. */
  public int run(
      Path caseFile,
      OutputOptions output,
      String name,
      Supplier<String> what,
      Function<ReadCase, Answer> work) {
    return runHeaded(
        caseFile,
        output,
        name,
        what,
        read -> {
          CaseSession session = read.session();
          return work.apply(read).against(session.objections()).on(session.soundness());
        });
  }

  /** The same for a command that puts what stands against its case first by itself. */
  public int runHeaded(
      Path caseFile,
      OutputOptions output,
      String name,
      Supplier<String> what,
      Function<ReadCase, Answer> work) {
    CaseInput input = new CaseInput(caseFile);
    ReadCase read = cases.read(caseFile.toString(), input.content());
    Path target = output.folderFor(input, name);
    OutputFolder folder = OutputFolder.claim(target, caseFile);
    Answer answer =
        Interrupted.during(
            () ->
                Progress.during(
                    streams, what, output.quiet(), () -> placed(read, () -> work.apply(read))),
            this::tellOfTheEnd);
    folder.write(answer.files());
    print(answer, output, target);
    return answer.exitStatus();
  }

  private void tellOfTheEnd() {
    streams.err().println(System.lineSeparator() + "afterweld: stopped; nothing was written");
    streams.err().flush();
  }

  /** Runs work whose heat faults are reported at their place in the case file. */
  static <T> T placed(ReadCase read, Supplier<T> work) {
    try {
      return work.get();
    } catch (HeatInputException fault) {
      throw read.fault(fault.pass(), fault.field(), fault.getMessage());
    }
  }

  private void print(Answer answer, OutputOptions output, Path target) {
    PrintWriter out = streams.out();
    if (output.json()) {
      out.print(answer.json());
    } else if (output.quiet()) {
      out.print(answer.brief());
    } else {
      out.print(answer.text());
      out.println();
      String names = String.join(", ", answer.files().keySet());
      out.print(Paragraph.of("Written to " + target + ": " + names));
    }
  }
}
