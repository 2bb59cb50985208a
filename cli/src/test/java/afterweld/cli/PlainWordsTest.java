package afterweld.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import afterweld.cli.files.FolderMark;
import afterweld.cli.terminal.ExitStatus;
import afterweld.cli.terminal.Streams;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a welder reads holds no word of a statistician and none of a programmer. */
class PlainWordsTest {
  private static final List<String> FORBIDDEN =
      List.of(
          "Latin hypercube",
          "hypercube",
          "triangular",
          "normal distribution",
          "standard deviation",
          "standard error",
          "deviations?",
          "variance",
          "confidence",
          "quantiles?",
          "percentiles?",
          "interaction",
          "noise",
          "rule of three",
          "random",
          "weightings?",
          "bootstrap",
          "Levenberg",
          "Huber",
          "condition number",
          "correlation",
          "residuals",
          "residual(?! stress)",
          "root mean",
          "interval",
          "Péclet",
          "never saw",
          "0\\.7000",
          "seed",
          "null",
          "NaN",
          "boolean",
          "by default",
          "exception",
          "parameters?",
          "overlay",
          "FEATURE",
          "REDACTED");
  private static final Pattern WORDS =
      Pattern.compile(
          "(?<![\\p{L}\\p{N}-])(" + String.join("|", FORBIDDEN) + ")(?![\\p{L}\\p{N}-])",
          Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);

  @TempDir Path folder;

  private static void plain(String where, String text) {
    List<String> found =
        WORDS.matcher(text).results().map(hit -> around(text, hit.start(), hit.end())).toList();
    assertEquals(List.of(), found, where);
  }

  private static String around(String text, int from, int to) {
    return text.substring(Math.max(0, from - 60), Math.min(text.length(), to + 30))
        .replaceAll("\\s+", " ");
  }

  /** What stands on a page, without its pictures, styles, scripts and marks. */
  private static String onThePage(String html) {
    return html.replaceAll("(?is)<(svg|style|script)\\b.*?</\\1>", " ")
        .replaceAll("<[^>]*>", " ")
        .replaceAll("\\s+", " ");
  }

  @ParameterizedTest
  @CsvSource({
    "profile examples/fork-arm.yaml",
    "profile examples/cover-strip.json --units us",
    "profile examples/hub-casting.yaml",
    "routes examples/fork-arm.yaml",
    "fillers examples/fork-arm.yaml",
    "bend examples/cover-strip.json",
    "ageing examples/arm-t4-age.yaml --units us",
    "sheet examples/fork-arm.yaml",
    "spread examples/arm-t4-age.yaml --runs 20",
    "spread examples/cover-strip.json --runs 20 --units us",
    "spread examples/fork-arm.yaml --grid travel_speed=4..8mm/s",
    "fit examples/fork-arm.yaml examples/fork-arm-traverse.csv",
    "materials",
    "materials 6061",
    "starter"
  })
  void aWelderCanReadItAloud(String line) throws IOException {
    String[] command = line.split(" ");
    boolean files = !List.of("materials", "starter").contains(command[0]);
    String[] arguments =
        files
            ? Stream.concat(Stream.of(command), Stream.of("--out", folder.toString()))
                .toArray(String[]::new)
            : command;
    Fixtures.Memory memory = new Fixtures.Memory();
    Streams streams = memory.streams(false);
    int status = Welded.program(streams).run(arguments);
    assertTrue(status <= ExitStatus.REQUIREMENT_OPEN, memory.err());
    plain(line, memory.out());
    try (Stream<Path> written = Files.list(folder)) {
      for (Path file : written.toList()) {
        String name = file.getFileName().toString().toLowerCase(Locale.ROOT);
        if (name.endsWith(".html")) {
          plain(line + ": " + name, onThePage(Files.readString(file)));
        } else if (name.endsWith(".txt") && !name.equals(FolderMark.NAME)) {
          plain(line + ": " + name, Files.readString(file));
        }
      }
    }
  }

  @Test
  void theClassroomPageAndItsLessonsCanBeReadAloud() throws IOException {
    for (String name : List.of("index.html", "lessons.json")) {
      try (var in = Wiring.class.getResourceAsStream("classroom/" + name)) {
        String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
        plain(name, onThePage(text).replace(": null", ""));
      }
    }
  }
}
