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
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code profile} of a case with the key {@code member}. */
class MemberCommandTest {
  @TempDir Path folder;
  private final Fixtures.Memory memory = new Fixtures.Memory();

  private String profile(String more, String... units) throws IOException {
    String text = Files.readString(Path.of("examples", "fork-arm.yaml")) + more;
    Path file = Files.writeString(folder.resolve("arm.yaml"), text);
    Streams streams = memory.streams(false);
    String unit = units.length == 0 ? "metric" : units[0];
    int status =
        Welded.program(streams)
            .run("profile", file.toString(), "--out", out().toString(), "--units", unit);
    assertEquals(ExitStatus.REQUIREMENT_OPEN, status, memory.err());
    return memory.out();
  }

  private Path out() {
    return folder.resolve("out");
  }

  @Test
  void predictedForcesStandBesideTheCodesInEveryOutput() throws IOException {
    String words = profile("member: {width: 150 mm}\n").replaceAll("\\s+", " ");
    assertTrue(words.contains("* Predicted forces are means and not code."), words);
    assertTrue(words.contains("proof* greatest* b_eq mm EN EN/1.10 US weighted"), words);
    JsonNode member = new ObjectMapper().readTree(out().resolve("result.json").toFile());
    JsonNode welded = member.get("member").get("states").get(1);
    // 900 x 240 - 148 x 360 N by hand, EN 1999-1-1 (from memory) with 92 MPa over 30 mm each side.
    assertEquals(162.7, welded.get("en_kN").asDouble());
    assertEquals(147.9, welded.get("en_design_kN").asDouble());
    assertTrue(welded.get("predicted_proof_kN").asDouble() > 150);
    assertTrue(welded.get("equivalent_reach_mm").asDouble() > 10);
    String page = Files.readString(out().resolve("report.html"));
    assertTrue(page.contains("Member with the weld along it"));
    assertTrue(page.contains("proof, predicted, not code"));
    assertFalse(page.contains("{{"));
  }

  @Test
  void usUnitsAreKips() throws IOException {
    assertTrue(profile("member: {width: 6 in}\n", "us").contains("in kip"), memory.out());
  }

  @Test
  void withoutTheKeyNothingIsSaid() throws IOException {
    assertFalse(profile("").contains("along the weld"), memory.out());
    assertFalse(Files.readString(out().resolve("report.html")).contains("Member with the weld"));
  }
}
