package afterweld.strength;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class VoceLawTest {
  /** The highest engineering stress along the curve, searched strain by strain. */
  @ParameterizedTest
  @CsvSource({"50,70,1500", "277,60,1500", "145,160,1500", "10,330,1500", "900,50,1500"})
  void isTheHighestLoadOfTheCurve(double yield, double capacity, double rate) {
    double highest = 0;
    for (int i = 0; i < 500_000; i++) {
      double strain = i * 1e-6;
      double stress = yield + capacity * (1 - Math.exp(-rate * strain / capacity));
      highest = Math.max(highest, stress * Math.exp(-strain));
    }
    assertEquals(highest, VoceLaw.tensile(yield, capacity, rate), 1e-6 * highest);
  }

  @ParameterizedTest
  @CsvSource({"1500,50,1500", "1600,50,1500"})
  void metalThatCannotHardenNecksAtOnce(double yield, double capacity, double rate) {
    assertEquals(yield, VoceLaw.tensile(yield, capacity, rate));
  }
}
