package afterweld.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import afterweld.choice.filler.FillerUse;
import afterweld.cli.library.MaterialsCommand;
import afterweld.cli.terminal.Streams;
import afterweld.material.Alloy;
import afterweld.material.MaterialLibrary;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The library as people read it. */
class MaterialsCommandTest {
  private final Fixtures.Memory memory = new Fixtures.Memory();

  private int run(String... arguments) {
    List<Alloy> alloys = List.of(Fixtures.alloy6061(), Fixtures.alloy4643());
    Streams streams = memory.streams(false);
    Object command = new MaterialsCommand(streams, () -> alloys);
    return new Program(streams, List.of(command)).run(arguments);
  }

  private String out() {
    return memory.out();
  }

  @Test
  void allAlloysAndFillersAreListed() {
    assertEquals(0, run("materials"));
    assertEquals(
        "alloy  sold as  Si wt%  Mg wt%  melts (°C)  tempers",
        out().lines().findFirst().orElseThrow());
    assertTrue(out().contains("6061   base       0.60    1.00  582 to 652  T6\n"), out());
    assertTrue(out().contains("4643   filler     4.10    0.20  573 to 635\n"), out());
  }

  @Test
  void oneAlloyIsShownWithEveryValueItsStatusAndSource() {
    assertEquals(0, run("materials", "6061"));
    assertTrue(out().contains("melting range 582 to 652 °C"), out());
    assertTrue(out().contains("solution 530 °C 1 h, quench, age 177 °C 8 h"), out());
    assertTrue(out().contains("Mg       0.80  1.20        1   1.00"), out());
    assertTrue(out().contains("Fe             0.70            0.00"), out());
    assertTrue(out().contains("conductivity  T6  167 W/(m K)          memory  [1]"), out());
    assertTrue(out().contains("yield         T6  276 MPa              read    [2]"), out());
    assertTrue(out().contains("[2] Another table"), out());
    out().lines().forEach(line -> assertTrue(line.length() <= 80, line));
  }

  /** Filler guides of the trade, from memory. */
  @Test
  void aFillerIsShownWithWhatItIsTakenFor() {
    assertEquals(0, run("materials", "4643"));
    String said = out().replaceAll("\\s+", " ");
    assertTrue(said.contains("Full heat treatment after welding: first choice for"), said);
    assertTrue(said.contains("Colour after anodizing: more than 2 % silicon"), said);
  }

  @Test
  void aFillerRichInMagnesiumIsKeptFromFurnacesAndWarmth() {
    List<String> use =
        FillerUse.of(MaterialLibrary.standard().filler("5356").orElseThrow()).lines();
    String said = String.join(" ", use);
    assertTrue(said.contains("Full heat treatment after welding: none"), said);
    assertTrue(said.contains("not above 65 °C"), said);
    assertTrue(said.contains("Not for: "), said);
  }

  @Test
  void whatIsSoldAsPlateAloneHasNoUseAsAFiller() {
    assertEquals(0, run("materials", "6061"));
    assertFalse(out().contains("Use as a filler"), out());
  }

  @Test
  void usUnitsAreFahrenheit() {
    assertEquals(0, run("materials", "6061", "--units", "us"));
    assertTrue(out().contains("melting range 1080 to 1206 °F"), out());
    assertFalse(out().contains("°C") || out().contains("MPa"), out());
    assertTrue(out().contains("40.0 ksi"), out());
    assertTrue(out().contains("986 °F; hold 1 h;"), out());
  }

  @Test
  void aProgramReadsTheLibraryAsJson() throws IOException {
    assertEquals(0, run("materials", "6061", "--json"));
    JsonNode alloy = new ObjectMapper().readTree(out());
    assertEquals(582, alloy.get("solidus_C").asDouble(), 1e-9);
    assertEquals("276", alloy.get("facts").get(4).get("value").asText());
    assertEquals("read", alloy.get("facts").get(4).get("status").asText());
  }

  @ParameterizedTest
  @MethodSource("library")
  void everyPageOfTheLibraryFitsEightyColumns(String page) {
    Streams streams = memory.streams(false);
    assertEquals(0, Welded.program(streams).run(page.split(" ")));
    out().lines().forEach(line -> assertTrue(line.length() <= 80, line));
  }

  static Stream<String> library() {
    MaterialLibrary library = MaterialLibrary.standard();
    Stream<String> pages =
        Stream.concat(library.bases().stream(), library.fillers().stream())
            .map(alloy -> "materials " + alloy.name());
    return Stream.concat(Stream.of("materials"), pages)
        .flatMap(page -> Stream.of(page + " --units metric", page + " --units us"));
  }

  @ParameterizedTest
  @CsvSource({"6601, 6061", "4634, 4643"})
  void anUnknownNameIsMetWithTheNearest(String wanted, String nearest) {
    assertEquals(2, run("materials", wanted));
    String err = memory.err();
    assertTrue(err.contains("did you mean '" + nearest + "'?"), err);
    assertEquals(1, err.lines().count(), err);
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "9999"})
  void aNameThatResemblesNothingIsNotGuessedAt(String wanted) {
    assertEquals(2, run("materials", wanted));
    assertFalse(memory.err().contains("did you mean"), memory.err());
  }

  @ParameterizedTest
  @ValueSource(strings = {"AA6061", "6061.0", "EN AW-6061", " 6061 "})
  void spellingsOfOneAlloyAreTheSameAsInACase(String written) {
    assertEquals(0, run("materials", written));
  }
}
