package afterweld.cli;

import afterweld.section.UnitSystem;
import java.nio.file.Path;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** What a command takes that shows a case in units: the case, its output, the units. */
final class CaseOptions {
  @Mixin private OutputOptions output;
  @Mixin private UnitsOption unitsOption;

  @Parameters(index = "0", paramLabel = "CASE", description = "Case file, YAML or JSON.")
  private Path caseFile;

  Path caseFile() {
    return caseFile;
  }

  OutputOptions output() {
    return output;
  }

  UnitSystem units() {
    return unitsOption.units();
  }
}
