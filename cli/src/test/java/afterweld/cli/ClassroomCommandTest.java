package afterweld.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import afterweld.cli.classroom.ClassroomServer;
import afterweld.cli.classroom.Visitor;
import afterweld.cli.terminal.Streams;
import afterweld.document.JsonNumber;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.BufferedReader;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The command round the classroom, and the commands beside it. */
class ClassroomCommandTest {
  @TempDir Path folder;
  private final Fixtures.Memory memory = new Fixtures.Memory();

  private int run(String... arguments) {
    Streams streams = memory.streams(false);
    return Welded.program(streams).run(arguments);
  }

  @Test
  void theProfileOfASavedCaseIsThePageSNumbersToTheLastDigit() throws Exception {
    ClassroomServer server = ClassroomServer.start(0);
    try {
      Visitor visitor = new Visitor(server.address());
      ObjectNode tree = visitor.startCase();
      ObjectNode request = Visitor.tree("{}");
      request.set("case", tree);
      Path saved = folder.resolve("saved.yaml");
      Files.writeString(saved, visitor.asked("/api/save", request).get("text").asText());
      JsonNode served = visitor.asked("/api/section", Visitor.question("page", 1, "settled", tree));
      String out = folder.resolve("out").toString();
      assertEquals(0, run("profile", saved.toString(), "--json", "--out", out), memory.err());
      assertSame(Visitor.tree(memory.out()), served);
    } finally {
      server.stop();
    }
  }

  private static void assertSame(JsonNode printed, JsonNode served) {
    JsonNode stations = printed.get("stations");
    assertEquals(stations.size(), served.get("distance_mm").size());
    for (int i = 0; i < stations.size(); i++) {
      for (String key : List.of("hardness_HV", "yield_MPa", "tensile_MPa")) {
        for (int state = 0; state < printed.get("states").size(); state++) {
          double value = served.get(key).get("middle").get(state).get(i).asDouble();
          assertEquals(
              new JsonNumber(value, 1).toString(), stations.get(i).get(key).get(state).asText());
        }
      }
    }
  }

  @Test
  void aPortThatCannotBeIsToldInOneSentence() {
    assertEquals(2, run("classroom", "--port", "70000"));
    assertTrue(memory.err().contains("from 0 to 65535"), memory.err());
  }

  @Test
  void aPortThatIsTakenIsToldInOneSentence() throws Exception {
    ClassroomServer other = ClassroomServer.start(0);
    try {
      int port = URI.create(other.address()).getPort();
      assertEquals(2, run("classroom", "--port", String.valueOf(port)));
      assertTrue(memory.err().contains("cannot listen on port " + port), memory.err());
    } finally {
      other.stop();
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"-INT", "-TERM"})
  @Timeout(value = 5, unit = TimeUnit.MINUTES)
  @DisabledOnOs(OS.WINDOWS)
  void itPrintsItsAddressFirstAndEndsCleanlyWhenItIsTold(String signal) throws Exception {
    Process process =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-cp",
                System.getProperty("java.class.path"),
                "afterweld.cli.Main",
                "classroom")
            .redirectError(folder.resolve("err").toFile())
            .start();
    try (BufferedReader out = process.inputReader(StandardCharsets.UTF_8)) {
      String address = out.readLine();
      assertTrue(address.matches("http://127\\.0\\.0\\.1:\\d+/"), address);
      assertTrue(out.readLine().contains("Ctrl-C ends it"));
      assertEquals(200, new Visitor(address).get("/").statusCode());
      new ProcessBuilder("kill", signal, Long.toString(process.pid())).start().waitFor();
      process.waitFor();
      assertEquals("The classroom is closed.", out.readLine());
    } finally {
      process.destroyForcibly();
    }
    assertEquals(0, process.exitValue());
    assertEquals("", Files.readString(folder.resolve("err")));
  }
}
