package afterweld.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class StarterCommandTest {
  @TempDir Path folder;
  private final Fixtures.Memory memory = new Fixtures.Memory();

  static List<String> names() {
    return Starter.ALL.stream().map(Starter::name).toList();
  }

  private int run(String... arguments) {
    Streams streams = memory.streams(false);
    return new Program(streams, Wiring.commands(streams)).run(arguments);
  }

  private Path written(String name) {
    Path file = folder.resolve(name + ".yaml");
    assertEquals(ExitStatus.DONE, run("starter", name, file.toString()), memory.err());
    return file;
  }

  private void computes(Path file) {
    int status =
        run("profile", file.toString(), "--quiet", "--out", folder.resolve("out").toString());
    assertTrue(status <= ExitStatus.REQUIREMENT_OPEN, memory.err());
    assertEquals("", memory.err());
  }

  @Test
  void withoutANameAllAreListed() {
    assertEquals(ExitStatus.DONE, run("starter"));
    assertEquals(List.of("butt-plate", "tube-on-flange", "casting-repair", "strip"), names());
    names().forEach(name -> assertTrue(memory.out().contains("\n" + name + " "), memory.out()));
    memory.out().lines().forEach(line -> assertTrue(line.length() <= 80, line));
  }

  @ParameterizedTest
  @MethodSource("names")
  void everyStarterIsComputed(String name) {
    computes(written(name));
  }

  /** The keys shown but left at their usual value are right too. */
  @ParameterizedTest
  @MethodSource("names")
  void everyStarterIsComputedWithAllItsKeys(String name) throws IOException {
    Path file = written(name);
    String text = Files.readString(file);
    String used = text.replaceAll("(?m)^( *)#(?=\\S)", "$1");
    assertFalse(text.equals(used), "no key to take up");
    computes(Files.writeString(file, used));
  }

  @ParameterizedTest
  @MethodSource("names")
  void everyTopKeyIsExplained(String name) throws IOException {
    List<String> lines = Files.readAllLines(written(name));
    for (int i = 0; i < lines.size(); i++) {
      assertTrue(lines.get(i).length() <= 120, lines.get(i));
      if (lines.get(i).matches("#?[a-z_]+:.*")) {
        assertTrue(lines.get(i - 1).startsWith("# "), lines.get(i));
      }
    }
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

  @Test
  void theTextIsTheSameEverywhere() throws IOException {
    byte[] content = Files.readAllBytes(written("strip"));
    assertArrayEquals(Starter.named("STRIP").content(), content);
    assertFalse(new String(content, StandardCharsets.UTF_8).contains("\r"));
  }
}
