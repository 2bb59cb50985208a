package afterweld.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What README tells a reader to run runs, and prints what README shows. */
class DocumentationTest {
  private static final Pattern COMMAND_BLOCK = Pattern.compile("```sh\n(.*?)```", Pattern.DOTALL);
  private static final Pattern SHOWN_OUTPUT =
      Pattern.compile("```sh\n(cli/afterweld [^\n]*)\n```\n\n```text\n(.*?)```", Pattern.DOTALL);

  @TempDir Path folder;
  private final Fixtures.Memory memory = new Fixtures.Memory();

  private static String readme() throws IOException {
    return Files.readString(Path.of("..", "README.md"));
  }

  static List<Path> examples() throws IOException {
    try (Stream<Path> files = Files.list(Path.of("examples"))) {
      return files.filter(file -> file.toString().matches(".*\\.(yaml|json)")).sorted().toList();
    }
  }

  private int run(String... arguments) {
    Streams streams = memory.streams(false);
    return new Program(streams, Wiring.commands(streams)).run(arguments);
  }

  /** Runs a line of README from inside its module, its files in a folder of the test. */
  private int run(String line) {
    List<String> arguments =
        new ArrayList<>(List.of(line.strip().replace("cli/examples/", "examples/").split(" +")));
    arguments.remove(0);
    if (arguments.contains("profile") && !arguments.contains("--out")) {
      arguments.addAll(List.of("--out", folder.resolve("out").toString()));
    }
    return run(arguments.toArray(String[]::new));
  }

  private static List<String> commandLines() throws IOException {
    return COMMAND_BLOCK
        .matcher(readme())
        .results()
        .flatMap(block -> block.group(1).lines())
        .filter(line -> line.startsWith("cli/afterweld "))
        .distinct()
        .toList();
  }

  @ParameterizedTest
  @MethodSource("examples")
  void everyExampleIsComputed(Path example) {
    int status = run("profile", example.toString(), "--out", folder.resolve("out").toString());
    assertTrue(status <= ExitStatus.REQUIREMENT_OPEN, memory.err());
    assertEquals("", memory.err());
    assertTrue(Files.exists(folder.resolve("out").resolve("result.json")));
  }

  @ParameterizedTest
  @MethodSource("commandLines")
  void everyCommandLineRuns(String line) {
    assertTrue(run(line) <= ExitStatus.REQUIREMENT_OPEN, memory.err());
    assertFalse(memory.out().isEmpty());
  }

  @Test
  void theOutputShownIsTheOnePrinted() throws IOException {
    List<MatchResult> shown = SHOWN_OUTPUT.matcher(readme()).results().toList();
    assertFalse(shown.isEmpty(), "README shows no output");
    for (MatchResult example : shown) {
      run(example.group(1));
      assertEquals(withoutFolder(example.group(2)), withoutFolder(memory.out()));
    }
  }

  private static String withoutFolder(String text) {
    return text.replaceFirst("(?s)\nWritten to .*", "").strip();
  }

  @Test
  void theCaseShownIsTheExampleWithoutItsComments() throws IOException {
    String bare =
        Files.readString(Path.of("examples", "fork-arm.yaml"))
            .lines()
            .filter(line -> !line.isBlank() && !line.startsWith("#"))
            .reduce("", (text, line) -> text + line + "\n");
    assertTrue(readme().contains("```yaml\n" + bare + "```"), bare);
  }
}
