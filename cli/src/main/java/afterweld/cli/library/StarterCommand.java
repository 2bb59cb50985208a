package afterweld.cli.library;

import afterweld.cli.command.UnitsOption;
import afterweld.cli.terminal.DiskFault;
import afterweld.cli.terminal.ExitStatus;
import afterweld.cli.terminal.InputFault;
import afterweld.cli.terminal.Paragraph;
import afterweld.cli.terminal.Streams;
import afterweld.cli.terminal.TextTable;
import afterweld.cli.terminal.Version;
import afterweld.quantity.UnitSystem;
import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Writes a commented case to begin from, and never over a file that is there. */
@Command(
    name = "starter",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    description =
        "Writes a commented case file to begin from; without a name, lists what there is.",
    footerHeading = "%nExamples:%n",
    footer = {
      "  afterweld starter",
      "  afterweld starter butt-plate",
      "  afterweld starter strip jobs/cover.yaml",
      "  afterweld starter casting-repair --units us"
    })
public final class StarterCommand implements Callable<Integer> {
  private final Streams streams;

  @Parameters(
      index = "0",
      paramLabel = "NAME",
      arity = "0..1",
      description = "Which starter: butt-plate, tube-on-flange, casting-repair or strip.")
  private Optional<String> name = Optional.empty();

  @Parameters(
      index = "1",
      paramLabel = "FILE",
      arity = "0..1",
      description = "File to write; by default NAME.yaml here. A file that exists is left alone.")
  private Optional<Path> file = Optional.empty();

  @Mixin private UnitsOption unitsOption;

  public StarterCommand(Streams streams) {
    this.streams = streams;
  }

  @Override
  public Integer call() {
    if (name.isEmpty()) {
      list();
      return ExitStatus.DONE;
    }
    Starter starter = Starter.named(name.get());
    Path target = file.orElse(Path.of(starter.name() + ".yaml"));
    UnitSystem units = unitsOption.units();
    write(target, starter.content(units));
    String next = "afterweld profile " + target + (units == UnitSystem.US ? " --units us" : "");
    streams.out().print(Paragraph.of("Written to " + target + ". Next: " + next));
    return ExitStatus.DONE;
  }

  private void list() {
    TextTable table = new TextTable("starter", "what it is");
    Starter.ALL.forEach(starter -> table.row(starter.name(), starter.purpose()));
    streams.out().print(table.text());
    streams
        .out()
        .print(
            "\n"
                + Paragraph.of(
                    "'afterweld starter NAME' writes NAME.yaml to begin from; with '--units us' in"
                        + " inches, °F and ksi."));
  }

  private static void write(Path target, byte[] content) {
    if (Files.exists(target, LinkOption.NOFOLLOW_LINKS)) {
      throw inTheWay(target);
    }
    try {
      Files.write(target, content, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
    } catch (FileAlreadyExistsException appeared) {
      throw inTheWay(target);
    } catch (IOException cause) {
      discard(target);
      throw new InputFault("cannot write " + target + ": " + DiskFault.reason(cause));
    }
  }

  /** Half a file is worse than none. */
  private static void discard(Path target) {
    try {
      Files.deleteIfExists(target);
    } catch (IOException unused) {
      // The reason why it could not be written is the one to tell.
    }
  }

  private static InputFault inTheWay(Path target) {
    return new InputFault(
        target + " exists and is left as it is; name another file: afterweld starter NAME FILE");
  }
}
