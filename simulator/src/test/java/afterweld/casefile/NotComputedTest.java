package afterweld.casefile;

import static afterweld.casefile.Reading.PLAIN;
import static afterweld.casefile.Reading.plainWith;
import static afterweld.casefile.Reading.plainWithPass;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import afterweld.material.ClassPathTable;
import afterweld.material.MaterialLibrary;
import afterweld.material.UncomputedAlloys;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What the trade has and the program does not compute: said, with what to do instead. */
class NotComputedTest {
  /** Fillers and ageing: practice of the trade, from memory. */
  @ParameterizedTest
  @CsvSource({
    "7005, 5356, 30 days",
    "EN AW-7020, 5356, 30 days",
    "7039, 5356, 30 days",
    "2219, 2319, 535 °C",
    "AA7075, not arc welded, bolt"
  })
  void anAlloyOfTheTradeIsAnsweredWithWhatToDo(String alloy, String filler, String practice) {
    String fault = onlyFault(plainWith("6061", alloy));
    assertTrue(fault.contains("not computed here"), fault);
    assertTrue(fault.contains(filler) && fault.contains(practice), fault);
    assertTrue(fault.contains("test coupon") && fault.contains("6061"), fault);
    assertFalse(fault.contains("did you mean"), fault);
  }

  @Test
  void aMistypedNameStillGetsTheNearest() {
    assertTrue(onlyFault(plainWith("6061", "6016")).contains("did you mean '6061'"));
  }

  @Test
  void noneOfThemIsInTheLibraryAndEveryFactHasItsSource() {
    MaterialLibrary.standard().bases().stream()
        .map(alloy -> alloy.name())
        .forEach(name -> assertFalse(UncomputedAlloys.names().contains(name), name));
    for (Map<String, String> row :
        ClassPathTable.rows(UncomputedAlloys.class, "/afterweld/material/not_computed.csv")) {
      assertTrue(List.of("why", "instead").contains(row.get("about")), row.toString());
      assertTrue(
          List.of("read", "memory", "common practice").contains(row.get("status")), row.toString());
      assertFalse(row.get("source").isBlank(), row.toString());
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"groove: {type: single-v, angle: 60 deg}", "fill: complete"})
  void aKeyOfTheGrooveSaysWhatToStateInstead(String key) {
    String fault = onlyFault(PLAIN + key + "\n");
    assertTrue(fault.contains("not read yet"), fault);
    assertTrue(fault.contains("preparation") || fault.contains("passes"), fault);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "wire_feed: 8 m/min",
        "wire_diameter: 1.2 mm",
        "deposit_area: 20 mm2",
        "side: back"
      })
  void aKeyOfTheWireSaysWhatToStateInstead(String key) {
    String fault = onlyFault(plainWithPass(key));
    assertTrue(fault.contains("not read yet"), fault);
    assertTrue(fault.contains("dilution") || fault.contains("penetration"), fault);
  }

  private static String onlyFault(String yaml) {
    List<String> faults = Reading.lines(Reading.yaml(yaml));
    assertEquals(1, faults.size(), faults.toString());
    return faults.get(0);
  }
}
