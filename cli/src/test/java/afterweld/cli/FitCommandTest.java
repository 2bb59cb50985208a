package afterweld.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import afterweld.cli.terminal.ExitStatus;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the fit writes into the case, with the real simulator behind it. */
class FitCommandTest {
  @TempDir Path folder;
  private final Fixtures.Memory memory = new Fixtures.Memory();

  /** The example's points as if each were good to 1 HV: they lie three times as far off. */
  @Test
  void aRangeThatTheFitDistrustsIsNotWrittenIntoTheCase() throws IOException {
    Path traverse = folder.resolve("sharp.csv");
    Files.writeString(
        traverse,
        Files.readAllLines(Path.of("examples/fork-arm-traverse.csv")).stream()
            .filter(line -> !line.startsWith("#") && !line.isBlank())
            .map(line -> line + (line.startsWith("distance") ? ",sd" : ",1"))
            .collect(Collectors.joining("\n")));
    Path out = folder.resolve("fit");
    int status =
        Welded.program(memory.streams(false))
            .run("fit", "examples/fork-arm.yaml", traverse.toString(), "--out", out.toString());
    assertEquals(ExitStatus.DONE, status, memory.err());
    assertTrue(
        memory.out().replaceAll("\\s+", " ").contains("do not trust the ranges"), memory.out());
    String fitted = Files.readString(out.resolve("fork-arm-fitted.yaml"));
    assertFalse(fitted.contains("arc_efficiency"), fitted);
    assertTrue(fitted.lines().anyMatch(line -> line.matches("# The points lie .* no spread.*")));
  }
}
