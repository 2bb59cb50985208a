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
import java.util.regex.Pattern;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** One fact asked of every writer: the same number. */
class OneNumberTest {
  private static final String AGED_PLATE =
      """
      left: {alloy: "6061", temper: T6, thickness: 6 mm}
      joint: butt
      preparation: single-v
      filler: {alloy: "4043"}
      passes:
        - {process: GMAW, current: 200 A, voltage: 23 V, travel_speed: 9 mm/s}
      natural_age: 1 day
      after_weld:
        - age: {temperature: 177 °C, time: 8 h}
      require: {tensile: 200 MPa}
      """;

  private static final String AGED_T4 =
      """
      left: {alloy: "6061", temper: T4, thickness: 6 mm}
      joint: butt
      filler: {alloy: "4043"}
      passes:
        - {process: GTAW-AC, current: 180 A, voltage: 15 V, travel_speed: 2.5 mm/s, bead_width: 11 mm}
      natural_age: 1 day
      after_weld:
        - age: {temperature: 175 °C, time: 8 h}
      require: {tensile: 200 MPa}
      """;

  private static final String LEFT_ALONE =
      """
      left: {alloy: "6061", temper: T4, thickness: 6 mm}
      joint: butt
      preparation: single-v
      filler: {alloy: "4043", dilution: 40 %}
      passes:
        - {process: GMAW, current: 200 A, voltage: 23 V, travel_speed: 9 mm/s}
      require: {yield: 120 MPa}
      """;

  private static final String FULL =
      """
      left: {alloy: "6061", temper: T6, thickness: 6 mm}
      joint: butt
      filler: {alloy: "4643", dilution: 30 %}
      passes:
        - {process: GTAW-AC, current: 180 A, voltage: 15 V, travel_speed: 5 in/min, bead_width: 11 mm}
      natural_age: 1 day
      after_weld:
        - solution_treat: {temperature: 985 °F, soak: 60 min}
        - quench: {medium: water, temperature: 25 °C, delay: 8 s}
        - natural_age: 2 h
        - age: {temperature: 350 °F, time: 8 h}
      require: {yield: 28 ksi, tensile: 36 ksi, hardness: 70 HB}
      """;

  /** The prediction is asked of the spread, not the draws. */
  private static final String HELD =
      """
      spread:
        {dilution: 0 %, bead_width: 0 mm, arc_efficiency: 0 %, travel_speed: 0 %,
         furnace_temperature: 0 K, soak: 0 %, quench_delay: 0 s, ageing_time: 0 %, composition: 0 %}
      """;

  @TempDir Path folder;
  private Path file;

  private JsonNode json(String command, String... more) throws IOException {
    Fixtures.Memory memory = new Fixtures.Memory();
    Streams streams = memory.streams(false);
    Path out = folder.resolve(command);
    String[] arguments = {command, file.toString(), "--json", "--out", out.toString()};
    String[] all = new String[arguments.length + more.length];
    System.arraycopy(arguments, 0, all, 0, arguments.length);
    System.arraycopy(more, 0, all, arguments.length, more.length);
    int status = Welded.program(streams).run(all);
    assertTrue(status <= ExitStatus.REQUIREMENT_OPEN, memory.err());
    return new ObjectMapper().readTree(memory.out());
  }

  private static JsonNode find(JsonNode list, String key, String value) {
    return StreamSupport.stream(list.spliterator(), false)
        .filter(node -> node.get(key).asText().equals(value))
        .findFirst()
        .orElseThrow(() -> new AssertionError("no " + value));
  }

  private static JsonNode flush(JsonNode profile, String state) {
    return StreamSupport.stream(profile.get("joint").spliterator(), false)
        .filter(node -> node.get("bead").asText().equals("flush"))
        .filter(node -> node.get("state").asText().equals(state))
        .findFirst()
        .orElseThrow();
  }

  @ParameterizedTest
  @ValueSource(strings = {AGED_PLATE, AGED_T4, LEFT_ALONE, FULL})
  void everyCommandAndWriterHasTheProfilesNumbers(String text) throws IOException {
    file = folder.resolve("case.yaml");
    Files.writeString(file, text + HELD);
    JsonNode profile = json("profile");
    int last = profile.get("states").size() - 1;
    JsonNode welded = flush(profile, "as welded");
    JsonNode finished = flush(profile, profile.get("states").get(last).asText());
    routes(profile, welded, finished, last);
    spread(profile, finished);
    fillers(profile, last);
    if (last > 1) {
      sheet(profile, last);
    }
    csv(profile, last);
    report(finished);
  }

  private void routes(JsonNode profile, JsonNode welded, JsonNode finished, int last)
      throws IOException {
    JsonNode routes = json("routes").get("routes");
    JsonNode left = find(routes, "route", "weld as delivered and leave");
    assertEquals(welded.get("tensile_MPa"), left.get("tensile_MPa"));
    assertEquals(welded.get("proof_MPa"), left.get("proof_MPa"));
    assertEquals(profile.get("waiting_days"), left.get("waiting_days"));
    if (last > 1) {
      JsonNode own = find(routes, "route", "the case's own schedule");
      assertEquals(finished.get("tensile_MPa"), own.get("tensile_MPa"));
      assertEquals(finished.get("proof_MPa"), own.get("proof_MPa"));
    }
  }

  private void spread(JsonNode profile, JsonNode finished) throws IOException {
    JsonNode spread = json("spread", "--runs", "10");
    assertEquals(finished.get("tensile_MPa"), spread.get("predicted_tensile_MPa"));
    assertEquals(profile.get("requirement"), spread.get("requirement"));
    List<String> told = chances("spread", "spread.txt");
    List<String> known = chances("profile", "report.html");
    assertFalse(told.isEmpty());
    assertTrue(known.containsAll(told), told + " in the spread, " + known + " in the report");
  }

  /** Every chance a command writes in words, such as {@code 90 %}. */
  private List<String> chances(String command, String name) throws IOException {
    String words = Files.readString(folder.resolve(command).resolve(name)).replaceAll("\\s+", " ");
    return Pattern.compile("\\(chance ([^;)]*)")
        .matcher(words)
        .results()
        .map(at -> at.group(1))
        .toList();
  }

  /** The weld metal at the centre, as welded and after the treatment of the case. */
  private void fillers(JsonNode profile, int last) throws IOException {
    JsonNode metal = profile.get("weld_metal");
    JsonNode own = find(json("fillers").get("fillers"), "filler", metal.get("filler").asText());
    JsonNode centre = find(profile.get("stations"), "distance_mm", "0.0");
    for (String key : List.of("yield_MPa", "tensile_MPa")) {
      assertEquals(centre.get(key).get(1), own.get(key).get(0), key);
      if (last > 1) {
        assertEquals(centre.get(key).get(last), own.get(key).get(1), key);
      }
    }
  }

  private void sheet(JsonNode profile, int last) throws IOException {
    JsonNode expected = find(json("sheet").get("expected"), "place", "weld metal");
    double softest =
        StreamSupport.stream(profile.get("stations").spliterator(), false)
            .filter(station -> station.get("zone").asText().equals("fusion"))
            .mapToDouble(station -> station.get("hardness_HV").get(last).asDouble())
            .min()
            .orElseThrow();
    assertEquals(softest, expected.get("hardness_HV").asDouble(), 1e-9);
  }

  private void csv(JsonNode profile, int last) throws IOException {
    List<String> lines = Files.readAllLines(folder.resolve("profile").resolve("profile.csv"));
    for (int i = 1; i < lines.size(); i++) {
      String line = lines.get(i);
      double written = Double.parseDouble(line.substring(line.lastIndexOf(',') + 1));
      JsonNode station = profile.get("stations").get(i - 1);
      assertEquals(station.get("tensile_MPa").get(last).asDouble(), written, 0.06);
    }
  }

  private void report(JsonNode finished) throws IOException {
    String page = Files.readString(folder.resolve("profile").resolve("report.html"));
    String carries = "carries " + Math.round(finished.get("tensile_MPa").asDouble()) + " MPa";
    assertTrue(page.contains(carries), carries);
  }

  /** Plate too thick to be computed: no command takes that for a choice, and all end alike. */
  @Test
  void whatIsNotComputedIsNoChoice() {
    String thick =
        """
        left: {alloy: "6082", temper: T4, thickness: 25 mm}
        joint: lap
        filler: {alloy: "5183", dilution: 30 %}
        passes:
          - {process: GTAW-AC, current: 304 A, voltage: 15 V, travel_speed: 3 mm/s}
        """;
    AnsweredCase asked = new AnsweredCase(CaseEdit.of(thick), folder);
    assertTrue(asked.run("profile").json().at("/soundness/sound").isNull());
    assertTrue(asked.run("routes").json().get("choice").isNull());
    int status = asked.run("profile").status();
    assertEquals(status, asked.run("spread", "--runs", "10").status());
    assertEquals(status, asked.run("bend").status());
  }

  /** A joint is no stronger than the throat that holds it, whatever command is asked. */
  @Test
  void aFilletThatIsTooSmallIsNowhereMet() {
    String lap =
        """
        left: {alloy: "6082", temper: T6, thickness: 10 mm}
        joint: lap
        filler: {alloy: "5356"}
        passes:
          - {process: GMAW, current: 260 A, voltage: 26 V, travel_speed: 8 mm/s}
        fillet: {leg: 2 mm, length: 80 mm, load: across}
        require: {tensile: 185 MPa}
        """;
    AnsweredCase asked = new AnsweredCase(CaseEdit.of(lap), folder);
    for (String command : List.of("profile", "bend", "ageing", "spread")) {
      String[] few = command.equals("spread") ? new String[] {"--runs", "10"} : new String[0];
      assertEquals(ExitStatus.REQUIREMENT_OPEN, asked.run(command, few).status(), command);
    }
    for (AnsweredCase.Run run :
        List.of(asked.run("profile"), asked.run("spread", "--runs", "10"))) {
      assertEquals("not met", run.json().at("/requirement/verdict").asText());
    }
    assertTrue(asked.run("routes").json().get("choice").isNull(), asked.run("routes").out());
    for (JsonNode option : asked.run("fillers").json().get("fillers")) {
      assertFalse(option.at("/requirement/met").asBoolean(false), option.toString());
    }
    String ofMetalAlone = "Metal across the weld, pulled in line";
    assertTrue(asked.run("profile").files().get("report.html").contains(ofMetalAlone));
    assertTrue(asked.run("profile").out().contains(ofMetalAlone));
  }
}
