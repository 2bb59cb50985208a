package afterweld.cli;

import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Option;

/** {@code --out}, {@code --json} and {@code --quiet}: what every command on a case takes. */
final class OutputOptions {
  @Option(
      names = "--out",
      paramLabel = "DIR",
      description = "Folder for the files; by default afterweld-out/<case name>.")
  private Path folder;

  @Option(names = "--json", description = "Print the result as JSON and nothing else.")
  private boolean json;

  @Option(names = "--quiet", description = "Print the answer only.")
  private boolean quiet;

  /** The folder for the files of a case. */
  Path folderFor(CaseInput input) {
    return Optional.ofNullable(folder).orElse(Path.of("afterweld-out", input.name()));
  }

  boolean json() {
    return json;
  }

  boolean quiet() {
    return quiet;
  }
}
