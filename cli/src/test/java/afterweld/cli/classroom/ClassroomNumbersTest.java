package afterweld.cli.classroom;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import afterweld.casefile.CaseFile;
import afterweld.casefile.CaseReader;
import afterweld.casefile.CaseReading;
import afterweld.cli.Welded;
import afterweld.material.MaterialLibrary;
import afterweld.quantity.UnitSystem;
import afterweld.section.Estimate;
import afterweld.section.SectionProfile;
import afterweld.section.Station;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What the page shows is what the simulator computes of the case that the page saves. */
class ClassroomNumbersTest {
  private static ClassroomServer server;
  private static Visitor visitor;
  private static int asked;

  @BeforeAll
  static void start() throws IOException {
    server = ClassroomServer.start(0);
    visitor = new Visitor(server.address());
  }

  @AfterAll
  static void stop() {
    server.stop();
  }

  static JsonNode section(String want, JsonNode tree) throws Exception {
    asked++;
    return visitor.asked("/api/section", Visitor.question("numbers" + asked, 1, want, tree));
  }

  /** The text of the case file that the page would save. */
  static String saved(JsonNode tree) throws Exception {
    ObjectNode question = Visitor.tree("{}");
    question.set("case", tree);
    return visitor.asked("/api/save", question).get("text").asText();
  }

  static CaseFile read(String text) {
    MaterialLibrary library = MaterialLibrary.standard();
    CaseReading reading =
        new CaseReader(library.bases(), library.fillers())
            .read("saved.yaml", text.getBytes(StandardCharsets.UTF_8));
    assertEquals(List.of(), reading.faults());
    return reading.caseFile().orElseThrow();
  }

  private static void assertSame(SectionProfile profile, JsonNode served) {
    List<Station> stations = profile.stations();
    assertEquals(stations.size(), served.get("distance_mm").size());
    for (int i = 0; i < stations.size(); i++) {
      Station station = stations.get(i);
      assertEquals(station.distance() * 1e3, served.get("distance_mm").get(i).asDouble());
      assertEquals(station.zone().label(), served.get("zone").get(i).asText());
      assertEquals(
          UnitSystem.METRIC.temperature(station.peakTemperature()),
          served.get("peak_temperature_C").get(i).asDouble());
      for (int state = 0; state < profile.states().size(); state++) {
        Estimate estimate = station.estimates().get(state);
        assertValue(estimate, served.get("hardness_HV"), state, i, e -> e.hardness());
        assertValue(estimate, served.get("yield_MPa"), state, i, e -> e.yield() * 1e-6);
        assertValue(estimate, served.get("tensile_MPa"), state, i, e -> e.tensile() * 1e-6);
      }
    }
  }

  private static void assertValue(
      Estimate estimate,
      JsonNode bands,
      int state,
      int station,
      ToDoubleFunction<afterweld.strength.Strength> value) {
    List<Function<Estimate, afterweld.strength.Strength>> ends =
        List.of(Estimate::middle, Estimate::low, Estimate::high);
    for (int end = 0; end < ends.size(); end++) {
      JsonNode shown = bands.get(List.of("middle", "low", "high").get(end)).get(state).get(station);
      double computed = value.applyAsDouble(ends.get(end).apply(estimate));
      assertEquals(computed, shown.isNull() ? Double.NaN : shown.asDouble());
    }
  }

  private static ObjectNode opened(Path file) throws Exception {
    ObjectNode question = Visitor.tree("{}");
    question.put("name", file.getFileName().toString()).put("text", Files.readString(file));
    return (ObjectNode) visitor.asked("/api/open", question).get("case");
  }

  static List<Path> examples() throws IOException {
    try (Stream<Path> files = Files.list(Path.of("examples"))) {
      return files.filter(file -> file.toString().matches(".*\\.(yaml|json)")).sorted().toList();
    }
  }

  @Test
  void theSavedCaseGivesTheServedNumbersToTheLastDigit() throws Exception {
    ObjectNode tree = visitor.startCase();
    section("preview", tree);
    JsonNode served = section("settled", tree);
    assertSame(Welded.SESSION.profile(read(saved(tree)).weld()), served);
  }

  @Test
  void soDoesACaseThatWasMovedAboutInUsUnits() throws Exception {
    ObjectNode tree = visitor.startCase();
    ((ObjectNode) tree.get("left")).put("thickness", "0.24 in").put("alloy", "6082");
    ((ObjectNode) tree.get("passes").get(0))
        .put("travel_speed", "7.5 in/min")
        .put("preheat", "120 °F");
    ((ObjectNode) tree.get("after_weld").get(2).get("age")).put("time", "3.5 h");
    section("settled", visitor.startCase());
    section("preview", tree);
    assertSame(Welded.SESSION.profile(read(saved(tree)).weld()), section("settled", tree));
  }

  @ParameterizedTest
  @MethodSource("examples")
  void everyExampleOpensAndGivesItsOwnNumbers(Path example) throws Exception {
    ObjectNode tree = opened(example);
    CaseFile original = read(Files.readString(example));
    assertEquals(original.weld().passes(), read(saved(tree)).weld().passes());
    assertSame(Welded.SESSION.profile(original.weld()), section("settled", tree));
    JsonNode replay = section("replay", tree);
    assertTrue(replay.get("phases").size() > original.weld().afterWeld().size());
  }

  @Test
  void aFaultyFileIsToldWithLineAndColumn() throws Exception {
    ObjectNode question = Visitor.tree("{}");
    question.put("name", "arm.yaml").put("text", "left: {alloy: 6061, temper: T6, thickness: 6}\n");
    HttpResponse<String> answer = visitor.post("/api/open", question.toString());
    assertTrue(answer.body().contains("arm.yaml:1:"), answer.body());
    assertTrue(answer.body().contains("a number without a unit"), answer.body());
  }

  @Test
  void theCautionsGoWithEveryResultAndNothingIsCalledSafe() throws Exception {
    JsonNode served = section("settled", visitor.startCase());
    assertTrue(served.get("cautions").get(0).asText().contains("not a design value"));
    assertTrue(visitor.get("/").body().contains("not a design value"));
    for (String path : List.of("/", "/lessons.json", "/app.js", "/lessons.js", "/bend.js")) {
      assertFalse(
          visitor.get(path).body().toLowerCase(java.util.Locale.ROOT).contains("safe"), path);
    }
  }

  @Test
  void aStripThatIsTooShortIsToldInWords() throws Exception {
    ObjectNode tree = visitor.startCase();
    ((ObjectNode) tree.get("bend")).put("length", "60 mm");
    JsonNode welded = section("settled", tree).get("bend").get("states").get(1);
    assertTrue(welded.get("problem").asText().contains("beyond the strip of 60 mm"));
    assertFalse(welded.has("shape_mm"));
  }

  @Test
  void aReplayShowsEveryStationInEveryMoment() throws Exception {
    JsonNode replay = section("replay", visitor.startCase());
    int stations = replay.get("distance_mm").size();
    assertTrue(stations >= 32, stations + " stations");
    for (JsonNode phase : replay.get("phases")) {
      int moments = phase.get("time_s").size();
      assertEquals(moments, phase.get("temperature_C").size());
      for (JsonNode moment : phase.get("hardness_HV")) {
        assertEquals(stations, moment.size());
      }
    }
  }
}
