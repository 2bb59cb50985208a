package afterweld.casefile;

import static afterweld.casefile.Reading.PLAIN;
import static afterweld.casefile.Reading.caseOf;
import static afterweld.casefile.Reading.lines;
import static afterweld.casefile.Reading.yaml;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import afterweld.material.Alloy;
import afterweld.material.MaterialLibrary;
import afterweld.weld.WeldCase;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Tempers that the trade has beside those of the library (ASTM B26, B108, B918, from memory). */
class KnownTempersTest {
  @ParameterizedTest
  @CsvSource({"6061, T42, T4", "6061, T62, T6", "A356, T61, T6"})
  void someAreComputedAsAnotherAndThatIsSaid(String alloy, String written, String computed) {
    WeldCase weld = caseOf(side(alloy, written)).weld();
    assertEquals(computed, weld.left().temper().name());
    assertTrue(
        weld.notes().stream()
            .anyMatch(
                note ->
                    note.code().equals("temper-alias")
                        && note.text().startsWith(written + " is")
                        && note.text().endsWith("computed as " + computed + ".")),
        weld.notes().toString());
  }

  @ParameterizedTest
  @ValueSource(strings = {"F", "T4", "T5", "T51", "T7", "T71"})
  void castingsWithoutAModelAreKnownByName(String written) {
    List<String> faults = lines(yaml(side("A356", written)));
    assertEquals(1, faults.size(), faults.toString());
    assertTrue(faults.get(0).contains("not computed for A356-" + written + ", because"));
    assertTrue(faults.get(0).contains("computed is A356-T6"), faults.get(0));
  }

  @ParameterizedTest
  @ValueSource(strings = {"T64", "T66", "T7"})
  void extrusionsWithoutAModelAreKnownByName(String written) {
    List<String> faults = lines(yaml(side("6063", written)));
    assertEquals(1, faults.size(), faults.toString());
    assertTrue(faults.get(0).contains("not computed for 6063-" + written + ", because"));
    assertTrue(faults.get(0).contains("computed is 6063-T6"), faults.get(0));
  }

  /** EN 515 (from memory): H111 and H112 are little harder than O, H116 is 90 MPa stronger. */
  @ParameterizedTest
  @CsvSource({"5083, H111", "5083, h112", "3003, H111", "3003, H112"})
  void metalWorkedALittleIsKnownByNameAndIsNearestToO(String alloy, String written) {
    List<String> faults = lines(yaml(side(alloy, written)));
    assertEquals(1, faults.size(), faults.toString());
    String fault = faults.get(0);
    String named = alloy + "-" + written.toUpperCase(Locale.ROOT);
    assertTrue(fault.contains("not computed for " + named + ", because"), fault);
    assertTrue(fault.contains("nearest in strength is O: state O"), fault);
    assertFalse(fault.contains("did you mean"), fault);
  }

  @ParameterizedTest
  @ValueSource(strings = {"H111", "H112"})
  void everyAlloyThatHardensByWorkHasItOrSaysSo(String temper) {
    List<Alloy> bases = MaterialLibrary.standard().bases();
    for (Alloy alloy : bases) {
      boolean known = alloy.temper(temper).isPresent();
      boolean told = TemperWords.notComputed(alloy, temper).isPresent();
      assertTrue(alloy.heatTreatable() ? !told : known || told, alloy.name());
      assertTrue(alloy.heatTreatable() || alloy.temper("O").isPresent(), alloy.name());
    }
  }

  /** What can be bought is read by the same names as what a side is made of. */
  @Test
  void whatCanBeBoughtIsAnsweredAlike() {
    List<String> faults =
        lines(yaml(side("5083", "O") + "routes: {tempers_available: [O, H111]}\n"));
    assertEquals(1, faults.size(), faults.toString());
    assertTrue(
        faults.get(0).contains("tempers_available: found 'H111', not computed for 5083-H111"));
    assertFalse(faults.get(0).contains("did you mean"), faults.get(0));
  }

  @Test
  void aQuenchAtTheEndIsFollowedByThirtyDays() {
    String text =
        PLAIN
            + "after_weld: [{solution_treat: {temperature: 530 °C, soak: 1 h}}, {quench: {}}, {natural_age: 2 h}]\n";
    assertEquals(3, caseOf(text).weld().afterWeld().size());
    assertEquals(3, caseOf(text.replace(", {natural_age: 2 h}", "")).weld().afterWeld().size());
  }

  private static String side(String alloy, String temper) {
    return PLAIN.replace("\"6061\", temper: T6", "\"" + alloy + "\", temper: " + temper);
  }
}
