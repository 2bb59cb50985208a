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
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** {@code bend} on the examples, with the real simulator behind it. */
class BendCommandTest {
  private static final String COVER_STRIP = "examples/cover-strip.json";

  @TempDir Path folder;
  private final Fixtures.Memory memory = new Fixtures.Memory();

  static List<Path> examples() throws IOException {
    return DocumentationTest.examples();
  }

  private int run(String... arguments) {
    Streams streams = memory.streams(false);
    return Welded.program(streams).run(arguments);
  }

  private String text(String example, String... more) {
    String[] always = {"bend", example, "--out", out().toString()};
    String[] arguments = Stream.concat(Stream.of(always), Stream.of(more)).toArray(String[]::new);
    int status = run(arguments);
    assertTrue(status == ExitStatus.DONE || status == ExitStatus.REQUIREMENT_OPEN, memory.err());
    return memory.out();
  }

  private Path out() {
    return folder.resolve("bend");
  }

  @ParameterizedTest
  @MethodSource("examples")
  void everyExampleIsBent(Path example) {
    text(example.toString(), "--quiet");
    assertEquals("", memory.err());
    for (String name : List.of("bend-couples", "bend-edge")) {
      assertTrue(Files.exists(out().resolve(name + ".png")), name);
      assertTrue(Files.exists(out().resolve(name + ".svg")), name);
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"examples/fork-arm.yaml", COVER_STRIP})
  void theTableFitsTheTerminalAndSaysWhatTheEdgeDoes(String example) {
    String text = text(example);
    text.lines()
        .filter(line -> !line.contains(folder.toString()))
        .forEach(line -> assertTrue(line.codePointCount(0, line.length()) <= 80, line));
    String words = text.replaceAll("\\s+", " ");
    assertTrue(words.contains("even an unwelded strip folds there"), words);
    String asks =
        example.equals(COVER_STRIP)
            ? "a former of 4 thicknesses, 8 mm"
            : "a former of 16.5 thicknesses of a specimen cut to 3.2 mm";
    assertTrue(words.contains(asks) && words.contains("AWS D1.2:2014"), words);
    String bent = example.equals(COVER_STRIP) ? "2.0 mm" : "3.2 mm";
    assertTrue(words.contains("A wrapped bend of " + bent + " thickness asks"), words);
    assertTrue(words.contains("the test asks"), words);
    assertTrue(words.contains("not a design value"), words);
    assertTrue(words.indexOf("by end couples") < words.indexOf("over an edge"), words);
  }

  @Test
  void theWideStripIsWarnedOf() {
    assertTrue(text(COVER_STRIP).contains("12.5 times as wide as thick"), memory.out());
  }

  @Test
  void jsonKeepsItsKeys() throws IOException {
    JsonNode root = new ObjectMapper().readTree(text(COVER_STRIP, "--json"));
    assertEquals(memory.out(), Files.readString(out().resolve("result.json")));
    assertEquals(90, root.get("angle_deg").asDouble());
    for (String strip : List.of("welded", "unwelded")) {
      for (String key :
          List.of(
              "moment_Nm",
              "peak_curvature_per_mm",
              "kink_factor",
              "outer_strain",
              "springback_deg")) {
        assertTrue(root.get(strip).get(key).isNumber(), strip + " " + key);
      }
    }
    assertEquals(1, root.get("unwelded").get("kink_factor").asDouble());
    assertTrue(root.get("welded").get("kink_factor").asDouble() > 2);
    assertEquals(2, root.get("states").size());
    assertTrue(root.get("states").get(1).get("edge").get("moment_Nm").isNumber());
    assertEquals(1, root.get("guided_bends").size(), "the test of this metal alone");
    assertEquals(4, root.get("guided_bends").get(0).get("former_thicknesses").asDouble());
    assertEquals(1, root.get("outlooks").size());
  }

  /** The fork arm is welded with 4643: nothing is claimed of how far its weld metal stretches. */
  @Test
  void weldMetalOfMuchSiliconHasNoStretchAnywhere() throws IOException {
    String arm = "examples/fork-arm.yaml";
    String words = text(arm).replaceAll("\\s+", " ");
    String why = "how far weld metal with more than 2 % silicon stretches is not predicted";
    assertEquals(1, words.split("A wrapped bend of", -1).length - 1, "before welding alone");
    assertTrue(words.contains("as welded (after 24 h): " + why), words);
    assertTrue(words.contains("open in a wrap-around jig and under a plunger"), words);
    assertFalse(words.contains("likely to pass"), words);
    String json = Files.readString(out().resolve("result.json"));
    JsonNode states = new ObjectMapper().readTree(json).get("states");
    assertTrue(states.get(0).get("even_stretch_least").isObject());
    assertEquals("", states.get(0).get("even_stretch_note").asText());
    for (JsonNode state : List.of(states.get(1), states.get(2))) {
      assertTrue(state.get("even_stretch_least").isNull());
      assertTrue(state.get("even_stretch_sharpest").isNull());
      assertTrue(state.get("even_stretch_note").asText().startsWith(why));
    }
  }

  /** It ends as profile does: nothing is required of the cover strip. */
  @Test
  void itEndsByWhatTheCaseRequires() {
    assertEquals(ExitStatus.DONE, run("bend", COVER_STRIP, "--out", out().toString()));
  }

  @Test
  void theCurvatureAlongTheStripAddsUpToTheAngle() throws IOException {
    text(COVER_STRIP, "--quiet");
    List<String> lines = Files.readAllLines(out().resolve("bend.csv"));
    assertEquals(
        "distance_mm,curvature_per_mm (before welding couples),curvature_per_mm (as welded couples),"
            + "curvature_per_mm (before welding edge),curvature_per_mm (as welded edge)",
        lines.get(0));
    double[] place = column(lines, 0);
    double[] curvature = column(lines, 2);
    double angle = 0;
    double face = -75;
    for (int i = 0; i < place.length; i++) {
      double next = 2 * place[i] - face;
      angle += curvature[i] * (next - face);
      face = next;
    }
    assertEquals(75, face, 0.1);
    assertEquals(90, Math.toDegrees(angle), 0.1);
  }

  private static double[] column(List<String> lines, int column) {
    return lines.stream()
        .skip(1)
        .mapToDouble(line -> Double.parseDouble(line.split(",", -1)[column]))
        .toArray();
  }

  @Test
  void usUnitsReachTableAndCsv() throws IOException {
    assertTrue(text(COVER_STRIP, "--units", "us").contains("in lbf"), memory.out());
    String head = Files.readAllLines(out().resolve("bend.csv")).get(0);
    assertTrue(head.startsWith("distance_in,curvature_per_in "), head);
  }

  @Test
  void aStripTooShortForItsSoftenedBandIsToldAndLeftOut() throws IOException {
    String text = Files.readString(Path.of(COVER_STRIP));
    String shortStrip = text.replaceFirst("\\{", "{\"bend\": {\"length\": \"12 mm\"},");
    Path file = Files.writeString(folder.resolve("short.json"), shortStrip);
    String words = text(file.toString()).replaceAll("\\s+", " ");
    assertTrue(words.contains("As welded: "), words);
    assertTrue(words.contains("take a longer strip."), words);
    JsonNode root = new ObjectMapper().readTree(out().resolve("result.json").toFile());
    assertTrue(root.get("welded").isNull());
    assertTrue(root.get("unwelded").get("moment_Nm").isNumber());
  }
}
