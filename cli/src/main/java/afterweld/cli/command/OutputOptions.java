package afterweld.cli.command;

import afterweld.cli.files.CaseInput;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Option;

/** {@code --out}, {@code --json} and {@code --quiet}: what every command on a case takes. */
public final class OutputOptions {
  @Option(
      names = "--out",
      paramLabel = "DIR",
      description =
          "Folder for the files; by default afterweld-out/<case name>, with the command's"
              + " name behind it for all but profile.")
  private Path folder;

  @Option(names = "--json", description = "Print the result as JSON and nothing else.")
  private boolean json;

  @Option(names = "--quiet", description = "Print the answer only.")
  private boolean quiet;

  /**
   * The folder for the files of a case.
   *
   * @param command name that its default folder carries; empty for the main command
   */
  public Path folderFor(CaseInput input, String command) {
    String suffix = command.isEmpty() ? "" : "-" + command;
    return Optional.ofNullable(folder).orElse(Path.of("afterweld-out", input.name() + suffix));
  }

  boolean json() {
    return json;
  }

  boolean quiet() {
    return quiet;
  }
}
