package afterweld.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import afterweld.cli.terminal.ExitStatus;
import afterweld.cli.terminal.Streams;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What README tells a reader to run runs, and prints what README shows. */
class DocumentationTest {
  private static final Pattern COMMAND_BLOCK = Pattern.compile("```sh\n(.*?)```", Pattern.DOTALL);
  private static final Pattern SHOWN_OUTPUT =
      Pattern.compile("```sh\n(cli/afterweld [^\n]*)\n```\n\n```text\n(.*?)```", Pattern.DOTALL);

  /** What a line of README did. */
  private record Done(int status, String out, String err) {}

  /** No line is run twice: the same line prints the same. */
  private static final Map<String, Done> DONE = new HashMap<>();

  @TempDir Path folder;

  private static String readme() throws IOException {
    return Files.readString(Path.of("..", "README.md"));
  }

  static List<Path> examples() throws IOException {
    try (Stream<Path> files = Files.list(Path.of("examples"))) {
      return files.filter(file -> file.toString().matches(".*\\.(yaml|json)")).sorted().toList();
    }
  }

  private static Done run(String... arguments) {
    Fixtures.Memory memory = new Fixtures.Memory();
    Streams streams = memory.streams(false);
    int status = Welded.program(streams).run(arguments);
    return new Done(status, memory.out(), memory.err());
  }

  /** Runs a line of README from inside its module, its files in a folder of the test. */
  private Done done(String line) {
    return DONE.computeIfAbsent(line.strip(), this::ran);
  }

  private Done ran(String line) {
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
    String out = folder.resolve("out").toString();
    Done done = run("profile", example.toString(), "--out", out);
    assertTrue(done.status() <= ExitStatus.REQUIREMENT_OPEN, done.err());
    assertEquals("", done.err());
    assertTrue(Files.exists(folder.resolve("out").resolve("result.json")));
  }

  @ParameterizedTest
  @MethodSource("commandLines")
  void everyCommandLineRuns(String line) {
    Done done = done(line);
    assertTrue(done.status() <= ExitStatus.REQUIREMENT_OPEN, done.err());
    assertFalse(done.out().isEmpty());
  }

  @Test
  void theOutputShownIsTheOnePrinted() throws IOException {
    List<MatchResult> shown = SHOWN_OUTPUT.matcher(readme()).results().toList();
    assertFalse(shown.isEmpty(), "README shows no output");
    for (MatchResult example : shown) {
      assertEquals(withoutFolder(example.group(2)), withoutFolder(done(example.group(1)).out()));
    }
  }

  private static String withoutFolder(String text) {
    return text.replaceFirst("(?s)\nWritten to .*", "").strip();
  }

  /** A program may rely on the keys that README names: so none of these profiles is left out. */
  @ParameterizedTest
  @ValueSource(strings = {"fork-arm.yaml", "pier-tube.yaml", "hub-casting.yaml"})
  void everyKeyOfTheProfileIsNamed(String example) throws IOException {
    String out = folder.resolve("keys").toString();
    Done done = run("profile", "examples/" + example, "--json", "--out", out);
    String named = readme().split("## The result as JSON", -1)[1].split("\n## ", -1)[0];
    Set<String> missing = new TreeSet<>();
    keys(new ObjectMapper().readTree(done.out()))
        .map(key -> key.replaceFirst("_(low|high)$", ""))
        .filter(key -> !named.contains("`" + key + "`"))
        .forEach(missing::add);
    assertEquals(Set.of(), missing);
  }

  /** All of them but the chemical elements. */
  private static Stream<String> keys(JsonNode node) {
    if (node.isArray()) {
      return StreamSupport.stream(node.spliterator(), false).flatMap(DocumentationTest::keys);
    }
    return node.properties().stream()
        .flatMap(
            field ->
                field.getKey().equals("composition_wt")
                    ? Stream.of(field.getKey())
                    : Stream.concat(Stream.of(field.getKey()), keys(field.getValue())));
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
