package afterweld.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import afterweld.cli.terminal.Streams;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What stands on a furnace sheet and on a comparison of fillers beside their own subject. */
class SheetAnswerTest {
  private static final String BEAD =
      """
      title: bracket
      left: {alloy: "6061", temper: T6, thickness: 12 mm}
      joint: bead
      filler: {alloy: "4043"}
      passes: [{process: GTAW-AC, current: 180 A, voltage: 15 V, travel_speed: 3 mm/s}]
      require: {tensile: 24 ksi}
      """;
  private static final String PLATE =
      """
      title: plate
      left: {alloy: "6061", temper: T6, thickness: 6 mm}
      preparation: single-v
      filler: {alloy: "4043"}
      passes: [{process: GMAW, current: 200 A, voltage: 23 V, travel_speed: 9 mm/s}]
      require: {tensile: 24 ksi}
      """;

  @TempDir Path folder;
  private final Fixtures.Memory memory = new Fixtures.Memory();

  private String printed(String command, String text, String... more) throws IOException {
    Path file = Files.writeString(folder.resolve("case.yaml"), text);
    String[] arguments = new String[4 + more.length];
    arguments[0] = command;
    arguments[1] = file.toString();
    arguments[2] = "--out";
    arguments[3] = folder.resolve(command).toString();
    System.arraycopy(more, 0, arguments, 4, more.length);
    Streams streams = memory.streams(false);
    Welded.program(streams).run(arguments);
    String out = memory.out();
    assertFalse(out.isEmpty(), memory.err());
    return out;
  }

  private JsonNode json(String command) throws IOException {
    return new ObjectMapper().readTree(folder.resolve(command).resolve("result.json").toFile());
  }

  @Test
  void theSheetOfABeadSaysFirstThatItsStrengthIsNotComputed() throws IOException {
    String shown = printed("sheet", BEAD);
    assertTrue(shown.startsWith("Not computed"), shown);
    assertTrue(json("sheet").get("expected").isEmpty());
    assertTrue(json("sheet").get("soundness").get("sound").isNull());
    String page = Files.readString(folder.resolve("sheet").resolve("sheet.html"));
    assertTrue(page.contains("Not computed"), page);
    String file = Files.readString(folder.resolve("sheet").resolve("sheet.txt"));
    assertTrue(file.startsWith("Not computed"), file);
  }

  @Test
  void aBeadOnPlateHasNoPreparation() throws IOException {
    String shown = printed("profile", BEAD);
    assertTrue(shown.contains("bead on plate"), shown);
    assertFalse(shown.contains("single-v"), shown);
  }

  @ParameterizedTest
  @ValueSource(strings = {"sheet", "fillers"})
  void theVerdictIsThatOfProfile(String command) throws IOException {
    printed("profile", PLATE);
    JsonNode profile = json("profile").get("requirement");
    String shown = printed(command, PLATE);
    assertEquals(profile, json(command).get("requirement"));
    String word = profile.get("verdict").asText();
    assertTrue(shown.contains("Requirement: " + word), shown);
  }

  @Test
  void aSheetOfAStandardScheduleSaysThatTheVerdictIsAsWelded() throws IOException {
    assertTrue(printed("sheet", PLATE).contains("Judged as welded"));
  }
}
