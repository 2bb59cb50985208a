package afterweld.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import afterweld.casefile.CaseReader;
import afterweld.casefile.CaseReading;
import afterweld.cli.library.Starter;
import afterweld.cli.terminal.ExitStatus;
import afterweld.cli.terminal.Streams;
import afterweld.material.MaterialLibrary;
import afterweld.quantity.UnitSystem;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
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
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

class StarterCommandTest {
  /** What every starter says of units, in both systems. */
  private static final String MIXED = "mm and in, °C and °F, MPa and ksi may be mixed";

  private static final String NUMBER = "\\d[\\d./]*";

  /** A number or two with a unit behind, or a unit by itself after a comma. */
  private static final Pattern MEASURE =
      Pattern.compile(
          "%1$s(?: to %1$s)? (?:mm/s|in/min|mm|m|in|ft|°C|°F|MPa|ksi|bar|psi)(?![\\w/])"
                  .formatted(NUMBER)
              + "|(?<=, )(?:mm|inches)(?![\\w/])");

  private static final Pattern METRIC =
      Pattern.compile("(?<![a-z])(?:[cm]?m|[cm]m/s|m/min|MPa|bar|N/mm²|K)(?![a-z_])|°C");

  @TempDir Path folder;
  private final Fixtures.Memory memory = new Fixtures.Memory();

  static List<String> names() {
    return Starter.ALL.stream().map(Starter::name).toList();
  }

  static Stream<Arguments> namesAndUnits() {
    return names().stream()
        .flatMap(name -> Stream.of(UnitSystem.values()).map(units -> Arguments.of(name, units)));
  }

  private static String word(UnitSystem units) {
    return units.name().toLowerCase(Locale.ROOT);
  }

  private int run(String... arguments) {
    Streams streams = memory.streams(false);
    return Welded.program(streams).run(arguments);
  }

  private Path written(String name) {
    return written(name, UnitSystem.METRIC);
  }

  private Path written(String name, UnitSystem units) {
    Path file = folder.resolve(name + "-" + word(units) + ".yaml");
    int status = run("starter", name, file.toString(), "--units", word(units));
    assertEquals(ExitStatus.DONE, status, memory.err());
    return file;
  }

  private JsonNode computed(Path file) throws IOException {
    Path out = folder.resolve("out-" + file.getFileName());
    int status = run("profile", file.toString(), "--quiet", "--out", out.toString());
    assertTrue(status <= ExitStatus.REQUIREMENT_OPEN, memory.err());
    assertEquals("", memory.err());
    return new ObjectMapper().readTree(out.resolve("result.json").toFile());
  }

  @Test
  void withoutANameAllAreListed() {
    assertEquals(ExitStatus.DONE, run("starter"));
    assertEquals(List.of("butt-plate", "tube-on-flange", "casting-repair", "strip"), names());
    names().forEach(name -> assertTrue(memory.out().contains("\n" + name + " "), memory.out()));
    memory.out().lines().forEach(line -> assertTrue(line.length() <= 80, line));
    assertTrue(memory.out().contains("--units us"), memory.out());
  }

  /** Sizes differ a little, so numbers do; what is said of the joint must not. */
  @ParameterizedTest
  @MethodSource("names")
  void everyStarterIsComputedAndJudgedAlikeInBothSystems(String name) throws IOException {
    JsonNode metric = computed(written(name, UnitSystem.METRIC));
    JsonNode american = computed(written(name, UnitSystem.US));
    for (JsonNode result : List.of(metric, american)) {
      assertTrue(result.at("/soundness/sound").asBoolean(), result.get("soundness").toString());
      assertTrue(result.get("objections").isEmpty(), result.get("objections").toString());
    }
    assertEquals(metric.at("/requirement/verdict"), american.at("/requirement/verdict"));
    assertFalse(metric.at("/requirement/verdict").asText().isEmpty());
    assertEquals(warnings(metric), warnings(american));
  }

  private static List<String> warnings(JsonNode result) {
    return result.get("warnings").findValuesAsText("code");
  }

  /** The keys shown but left at their usual value are right too. */
  @ParameterizedTest
  @MethodSource("names")
  void everyStarterIsComputedWithAllItsKeys(String name) throws IOException {
    Path file = written(name);
    computed(Files.writeString(file, withAllKeys(file)));
  }

  /** Read only: what is computed of it is as in its metric twin. */
  @ParameterizedTest
  @MethodSource("names")
  void everyUsStarterIsReadWithAllItsKeys(String name) throws IOException {
    String text = withAllKeys(written(name, UnitSystem.US));
    MaterialLibrary library = MaterialLibrary.standard();
    CaseReading reading =
        new CaseReader(library.bases(), library.fillers())
            .read("case.yaml", text.getBytes(StandardCharsets.UTF_8));
    assertEquals(List.of(), reading.faults());
  }

  private static String withAllKeys(Path file) throws IOException {
    String text = Files.readString(file);
    String used = text.replaceAll("(?m)^( *)#(?=\\S)", "$1");
    assertFalse(text.equals(used), "no key to take up");
    return used;
  }

  @ParameterizedTest
  @MethodSource("namesAndUnits")
  void everyTopKeyIsExplained(String name, UnitSystem units) throws IOException {
    List<String> lines = Files.readAllLines(written(name, units));
    for (int i = 0; i < lines.size(); i++) {
      assertTrue(lines.get(i).length() <= 120, lines.get(i));
      if (lines.get(i).matches("#?[a-z_]+:.*")) {
        assertTrue(lines.get(i - 1).startsWith("# "), lines.get(i));
      }
    }
  }

  @ParameterizedTest
  @MethodSource("names")
  void bothSystemsSayTheSame(String name) throws IOException {
    String metric = Files.readString(written(name, UnitSystem.METRIC));
    String american = Files.readString(written(name, UnitSystem.US));
    assertEquals(withoutMeasures(metric), withoutMeasures(american));
    assertFalse(metric.equals(american));
  }

  private static String withoutMeasures(String text) {
    return MEASURE.matcher(text).replaceAll("…");
  }

  @ParameterizedTest
  @MethodSource("names")
  void nothingIsMetricInTheUsText(String name) throws IOException {
    assertEquals(List.of(), metricIn(written(name, UnitSystem.US)));
    assertFalse(metricIn(written(name, UnitSystem.METRIC)).isEmpty());
  }

  private static List<String> metricIn(Path file) throws IOException {
    String text = Files.readString(file);
    assertTrue(text.contains(MIXED), text);
    return METRIC.matcher(text.replace(MIXED, "")).results().map(found -> found.group()).toList();
  }

  /** A shop buys and sets round sizes: no more than three digits, or a fraction of an inch. */
  @ParameterizedTest
  @MethodSource("names")
  void theUsValuesAreRound(String name) throws IOException {
    List<String> lines = Files.readAllLines(written(name, UnitSystem.US));
    Pattern value = Pattern.compile(": (" + NUMBER + ") (?:in|in/min|°F|ksi|psi)\\b");
    for (String line : lines) {
      value
          .matcher(line.startsWith("# ") ? "" : line)
          .results()
          .map(found -> found.group(1))
          .forEach(number -> assertTrue(round(number), line));
    }
  }

  /** 6 in pipe is 6.625 in across, its wall in schedule 10 is 0.134 in (ASME B36, from memory). */
  private static boolean round(String number) {
    return number.matches("\\d+/(?:2|4|8|16|32)|\\d{1,3}|1000|\\d{1,2}\\.\\d|0\\.\\d{1,2}")
        || List.of("0.625", "6.625", "0.134").contains(number);
  }

  @Test
  void theStripBends() {
    Path file = written("strip");
    assertEquals(
        ExitStatus.DONE, run("bend", file.toString(), "--out", folder.resolve("b").toString()));
    assertTrue(memory.out().contains("bent to"), memory.out());
  }

  @Test
  void aBentTubeCarriesTheWordsOnPressure() {
    Path file = written("tube-on-flange");
    assertEquals(
        ExitStatus.DONE, run("bend", file.toString(), "--out", folder.resolve("b").toString()));
    String words = memory.out().replaceAll("\\s+", " ");
    assertTrue(words.contains("Pressure parts follow the pressure code"), words);
    assertTrue(words.contains("a socket joint or a curved wall bends otherwise"), words);
  }

  @Test
  void aFileThatIsThereIsLeftAlone() throws IOException {
    Path file = Files.writeString(folder.resolve("mine.yaml"), "mine");
    assertEquals(ExitStatus.INPUT_FAULT, run("starter", "strip", file.toString()));
    assertEquals("mine", Files.readString(file));
    assertTrue(memory.err().contains("exists and is left as it is"), memory.err());
    assertEquals(ExitStatus.INPUT_FAULT, run("starter", "strip", folder.toString()));
  }

  @Test
  void aMissingFolderIsTold() {
    Path file = folder.resolve("none").resolve("strip.yaml");
    assertEquals(ExitStatus.INPUT_FAULT, run("starter", "strip", file.toString()));
    assertTrue(memory.err().contains("a folder on the way"), memory.err());
  }

  @Test
  void anUnknownNameIsMetWithTheNearest() {
    assertEquals(ExitStatus.INPUT_FAULT, run("starter", "strp"));
    assertTrue(memory.err().contains("did you mean 'strip'?"), memory.err());
  }

  @ParameterizedTest
  @EnumSource(UnitSystem.class)
  void theNextCommandShowsTheSameUnits(UnitSystem units) {
    Path file = written("strip", units);
    String words = memory.out().replaceAll("\\s+", " ").strip();
    String shown = units == UnitSystem.US ? " --units us" : "";
    assertTrue(words.endsWith("Next: afterweld profile " + file + shown), words);
  }

  @ParameterizedTest
  @EnumSource(UnitSystem.class)
  void theTextIsTheSameEverywhere(UnitSystem units) throws IOException {
    byte[] content = Files.readAllBytes(written("strip", units));
    assertArrayEquals(Starter.named("STRIP").content(units), content);
    assertFalse(new String(content, StandardCharsets.UTF_8).contains("\r"));
  }
}
