package afterweld.joint.bend;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class GuidedBendTest {
  /** Former diameters in thicknesses and strains, AWS D1.2:2014 bend-test table (second-hand). */
  @ParameterizedTest
  @CsvSource({"4, 20", "16.5, 5.7", "6.6667, 13.0", "8, 11.1"})
  void qualificationBends(double thicknesses, double percent) {
    double t = 3.2e-3;
    assertEquals(percent, 100 * GuidedBend.outerStrain(t, thicknesses * t), 0.05);
    assertEquals(thicknesses * t, GuidedBend.smallestFormer(t, percent / 100), 0.02 * t * 8);
  }

  @Test
  void refusesWhatIsNoBend() {
    assertThrows(IllegalArgumentException.class, () -> GuidedBend.outerStrain(0, 1));
    assertThrows(IllegalArgumentException.class, () -> GuidedBend.outerStrain(1, -1));
    assertThrows(IllegalArgumentException.class, () -> GuidedBend.smallestFormer(1, 0));
  }
}
