package afterweld.strength;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.OptionalDouble;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HardnessScaleTest {
  /** ASTM E140 table for wrought aluminium, from memory; tolerance 2 HV. */
  @ParameterizedTest
  @CsvSource({"160,189", "120,141", "95,111", "70,80"})
  void brinellPairs(double brinell, double vickers) {
    HardnessScale.Reading reading = HardnessScale.vickersFromBrinell(brinell);
    assertEquals(vickers, reading.value(), 2);
    assertFalse(reading.extrapolated());
    assertEquals(brinell, HardnessScale.brinell(vickers).value(), 2);
  }

  /** Same table, RockwellB column; between two rows by hand: 60 + 2/6 of 5. */
  @Test
  void rockwell() {
    assertEquals(60, HardnessScale.rockwellB(117).orElseThrow(), 1e-12);
    assertEquals(60 + 5.0 / 3, HardnessScale.rockwellB(119).orElseThrow(), 1e-12);
    assertEquals(117, HardnessScale.vickersFromRockwellB(60).orElseThrow(), 1e-12);
  }

  @Test
  void rockwellEndsAt28And91() {
    assertEquals(28, HardnessScale.rockwellB(80).orElseThrow(), 1e-12);
    assertEquals(OptionalDouble.empty(), HardnessScale.rockwellB(79.9));
    assertEquals(91, HardnessScale.rockwellB(189).orElseThrow(), 1e-12);
    assertEquals(OptionalDouble.empty(), HardnessScale.rockwellB(189.1));
    assertEquals(OptionalDouble.empty(), HardnessScale.vickersFromRockwellB(27.9));
    assertEquals(OptionalDouble.empty(), HardnessScale.vickersFromRockwellB(91.1));
    assertEquals(OptionalDouble.empty(), HardnessScale.rockwellB(Double.NaN));
  }

  /** Soft metal, such as 6061-O with 30 HB, lies below the table: 1.208 · 30 - 4.3. */
  @Test
  void softMetalIsExtrapolatedAndSaysSo() {
    HardnessScale.Reading annealed = HardnessScale.vickersFromBrinell(30);
    assertEquals(31.94, annealed.value(), 1e-9);
    assertTrue(annealed.extrapolated());
    assertTrue(HardnessScale.brinell(43.9).extrapolated());
    assertFalse(HardnessScale.brinell(44).extrapolated());
  }

  @Property
  void thereAndBackAgain(@ForAll @DoubleRange(min = 10, max = 250) double vickers) {
    double brinell = HardnessScale.brinell(vickers).value();
    assertEquals(vickers, HardnessScale.vickersFromBrinell(brinell).value(), 1e-9);
  }

  @Property
  void harderInOneScaleIsHarderInTheOther(
      @ForAll @DoubleRange(min = 10, max = 250) double one,
      @ForAll @DoubleRange(min = 10, max = 250) double other) {
    double softer = HardnessScale.brinell(Math.min(one, other)).value();
    assertTrue(softer <= HardnessScale.brinell(Math.max(one, other)).value());
  }

  @Test
  void everyPairOfTheTableHasASource() {
    for (HardnessPair pair : HardnessPair.table()) {
      assertTrue(pair.source().text().contains("E140"));
    }
  }

  /** What the line claims: every pair of the table to one point. */
  @Test
  void theLineBeyondTheTableReproducesIt() {
    for (HardnessPair pair : HardnessPair.table()) {
      assertEquals(pair.vickers(), 1.208 * pair.brinell() - 4.3, 1);
    }
  }
}
