package afterweld.cli.command;

import afterweld.quantity.UnitSystem;
import java.nio.file.Path;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** What a command takes that shows a case in units: the case, its output, the units. */
public final class CaseOptions {
  @Mixin private OutputOptions output;
  @Mixin private UnitsOption unitsOption;

  @Parameters(index = "0", paramLabel = "CASE", description = "Case file, YAML or JSON.")
  private Path caseFile;

  public Path caseFile() {
    return caseFile;
  }

  public OutputOptions output() {
    return output;
  }

  public UnitSystem units() {
    return unitsOption.units();
  }
}
