package afterweld.casefile;

import static afterweld.casefile.Reading.PLAIN;
import static afterweld.casefile.Reading.caseOf;
import static afterweld.casefile.Reading.lines;
import static afterweld.casefile.Reading.yaml;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import afterweld.weld.WeldCase;
import java.util.List;
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
