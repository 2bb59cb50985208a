package afterweld.casefile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Quantities a hair outside their range, or of a size that no procedure has. */
class OddQuantitiesTest {
  private static CaseReading filler(String dilution) {
    return Reading.yaml(Reading.replaced(Reading.PLAIN, "dilution: 30 %", "dilution: " + dilution));
  }

  @Test
  void aShareBelowNothingIsRefusedHoweverLittle() {
    List<String> faults = Reading.lines(filler("-1e-9 %"));
    assertEquals(1, faults.size(), faults::toString);
    assertTrue(faults.get(0).contains("expected a share from 0 to 100 %"), faults::toString);
  }

  /** What rounding may have made of a whole is a whole, and nothing beyond it is computed with. */
  @Test
  void aShareAboveAWholeByRoundingIsAWhole() {
    assertEquals(1, filler("100.00000001 %").caseFile().orElseThrow().weld().filler().dilution());
  }

  @ParameterizedTest
  @CsvSource({
    "natural_age: -0.3 s, from 0 to 3650 days",
    "reinforcement: -1e-9 mm, from 0 to 20 mm",
    "reinforcement: 1.7e308 in, infinite"
  })
  void aKeyOutsideItsRangeIsRefusedWithTheRange(String key, String range) {
    List<String> faults = Reading.lines(Reading.yaml(Reading.PLAIN + key + "\n"));
    assertEquals(1, faults.size(), faults::toString);
    assertTrue(faults.get(0).contains(range), faults::toString);
  }

  /** Times and rates that no furnace has would be followed step by step for ever. */
  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "anneal: {temperature: 415 °C, time: 2 h, cooling: 1e-300 K/h}; from 1 to 360000 K/h",
        "anneal: {temperature: 415 °C, time: 1e-300 h}; from 0.001 to 1000 h",
        "age: {temperature: 175 °C, time: 8 h, ramp: 1e-300 K/s}; from 0.02 to 6000 K/min",
        "age: {temperature: 175 °C, time: 8 h, ramp: 1e-300 s}; from 0.001 to 1000 h"
      })
  void aRateOrTimeOfNoFurnaceIsRefusedWithTheRange(String step, String range) {
    List<String> faults = Reading.lines(Reading.yaml(Reading.treatment("  - " + step + "\n")));
    assertEquals(1, faults.size(), faults::toString);
    assertTrue(faults.get(0).contains(range), faults::toString);
  }

  @Test
  void aQuenchSlowerThanAFurnaceIsRefused() {
    List<String> faults =
        Reading.lines(
            Reading.yaml(
                Reading.treatment(
                    """
                      - solution_treat: {temperature: 530 °C, soak: 1 h}
                      - quench: {rate: 1e-300 K/s}
                    """)));
    assertEquals(1, faults.size(), faults::toString);
    assertTrue(faults.get(0).contains("from 0.005 to 5000 K/s"), faults::toString);
  }
}
