package afterweld.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import afterweld.Afterweld;
import afterweld.CaseSession;
import afterweld.casefile.CaseFile;
import afterweld.material.MaterialLibrary;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The program that README shows compiles, and is told what the command tells. */
class LibraryExampleTest {
  private static final Pattern EXAMPLE = Pattern.compile("```java\n(.*?)```", Pattern.DOTALL);

  @TempDir Path folder;

  @Test
  void theProgramShownIsToldWhatTheCommandTells() throws Exception {
    Path example = Path.of("examples", "fork-arm.yaml");
    Path json = folder.resolve("profile.json");
    String printed = run(example.toString(), json.toString());
    JsonNode profile = new ObjectMapper().readTree(json.toFile());
    JsonNode finished = last(profile.get("joint"));
    String tensile =
        String.format(Locale.ROOT, "tensile: %.0f MPa", finished.get("tensile_MPa").asDouble());
    assertTrue(printed.contains(tensile), printed + tensile);
    String verdict = profile.get("requirement").get("verdict").asText();
    assertTrue(printed.contains("verdict: " + verdict), printed);
    assertEquals(printed("profile", example), Files.readString(json));
  }

  @Test
  void theSessionGivesTheJsonOfItsCommands() throws Exception {
    String text =
        """
        title: Skid plate
        left: {alloy: "6063", temper: T6, thickness: 4 mm}
        joint: butt
        filler: {alloy: "5356"}
        passes:
          - {process: GTAW-AC, current: 150 A, voltage: 14 V, travel_speed: 3 mm/s}
        require: {tensile: 110 MPa}
        spread: {runs: 10}
        """;
    Path file = Files.writeString(folder.resolve("case.yaml"), text);
    CaseFile asked =
        Afterweld.of(MaterialLibrary.standard())
            .read("case.yaml", text.getBytes(StandardCharsets.UTF_8))
            .caseFile()
            .orElseThrow();
    CaseSession session = CaseSession.of(Welded.SESSION, asked);
    assertEquals(session.routesJson(), printed("routes", file));
    assertEquals(session.fillersJson(), printed("fillers", file));
    assertEquals(session.bendJson(), printed("bend", file));
    assertEquals(session.ageingJson(), printed("ageing", file));
    assertEquals(session.spreadJson(), printed("spread", file));
  }

  private String printed(String command, Path file) {
    Fixtures.Memory memory = new Fixtures.Memory();
    String out = folder.resolve(command).toString();
    Welded.program(memory.streams(false)).run(command, file.toString(), "--json", "--out", out);
    return memory.out();
  }

  /** The last joint that is dressed flush. */
  private static JsonNode last(JsonNode joints) {
    JsonNode found = null;
    for (JsonNode joint : joints) {
      found = joint.get("bead").asText().equals("flush") ? joint : found;
    }
    return found;
  }

  private String run(String... arguments) throws Exception {
    Matcher matcher = EXAMPLE.matcher(Files.readString(Path.of("..", "README.md")));
    assertTrue(matcher.find(), "README shows no program");
    Path source = Files.writeString(folder.resolve("Bracket.java"), matcher.group(1));
    List<String> options = List.of("-d", folder.toString(), "-cp", classPath(), "" + source);
    ByteArrayOutputStream faults = new ByteArrayOutputStream();
    int status =
        ToolProvider.getSystemJavaCompiler()
            .run(null, null, faults, options.toArray(String[]::new));
    assertEquals(0, status, faults.toString(StandardCharsets.UTF_8));
    return printedBy(arguments);
  }

  private static String classPath() {
    return System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"));
  }

  private String printedBy(String... arguments) throws Exception {
    PrintStream before = System.out;
    ByteArrayOutputStream printed = new ByteArrayOutputStream();
    URL[] classes = {folder.toUri().toURL()};
    try (URLClassLoader loader = new URLClassLoader(classes, getClass().getClassLoader())) {
      System.setOut(new PrintStream(printed, true, StandardCharsets.UTF_8));
      loader
          .loadClass("Bracket")
          .getMethod("main", String[].class)
          .invoke(null, (Object) arguments);
    } finally {
      System.setOut(before);
    }
    return printed.toString(StandardCharsets.UTF_8);
  }
}
