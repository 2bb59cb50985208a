package afterweld.joint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PowerLawTest {
  private static final double E = PowerLaw.DEFAULT_MODULUS;

  /** Worked values of the model's definition, printed to three figures. */
  @ParameterizedTest
  @CsvSource({
    "276, 310, 0.0732, 7.6",
    "115, 175, 0.1525, 16.5",
    "145, 241, 0.181, 19.8",
    "55, 124, 0.236, 26.6",
    "145, 152, 0.0364, 3.7",
    "42, 110, 0.265, 30.4",
    "145, 290, 0.228, 25.6"
  })
  void exponentAndUniformElongation(double proof, double tensile, double n, double percent) {
    PowerLaw law = PowerLaw.through(proof * 1e6, tensile * 1e6, E);
    assertEquals(n, law.exponent(), 0.0005);
    assertEquals(percent, 100 * Math.expm1(law.exponent()), 0.06);
  }

  @Property
  void theWayBackUndoesThePowerLaw(
      @ForAll @DoubleRange(min = 30e6, max = 400e6) double proof,
      @ForAll @DoubleRange(min = 1.01, max = 3) double ratio,
      @ForAll @DoubleRange(min = 0.001, max = 0.999) @Scale(3) double share) {
    undone(PowerLaw.through(proof, ratio * proof, E), share);
  }

  private static void undone(PowerLaw law, double share) {
    double strain = share * law.uniformStrain();
    double stress = law.nominalStress(strain);
    assertTrue(stress <= law.tensile() * (1 + 1e-12));
    assertEquals(stress, law.nominalStress(law.strainAt(stress)), 1e-9 * stress);
    assertEquals(strain, law.strainAt(stress), 1e-6 * law.uniformStrain());
  }

  @Property
  void strengthsAreReadBackFromThePowerLaw(
      @ForAll @DoubleRange(min = 30e6, max = 400e6) double proof,
      @ForAll @DoubleRange(min = 1, max = 4) double ratio) {
    PowerLaw law = PowerLaw.through(proof, ratio * proof, E);
    assertEquals(ratio * proof, law.tensile(), 1e-9 * ratio * proof);
    double strain = Math.log1p(0.002 + proof / E);
    assertEquals(proof, law.nominalStress(strain), 1e-9 * proof);
    assertEquals(law.exponent(), law.strainAt(2 * law.tensile()), 0);
  }

  @Test
  void refusesStrengthsThatMeanNothing() {
    refused(0, 100e6, E);
    refused(-1, 100e6, E);
    refused(100e6, 99e6, E);
    refused(Double.NaN, 100e6, E);
    refused(100e6, Double.NaN, E);
    refused(100e6, Double.POSITIVE_INFINITY, E);
    refused(1e6, 500e6, E);
    refused(100e6, 200e6, 59e9);
    refused(100e6, 200e6, 81e9);
  }

  private static void refused(double proof, double tensile, double modulus) {
    assertThrows(IllegalArgumentException.class, () -> PowerLaw.through(proof, tensile, modulus));
  }
}
