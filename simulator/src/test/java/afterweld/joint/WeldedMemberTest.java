package afterweld.joint;

import static afterweld.joint.Profiles.MM;
import static afterweld.joint.Profiles.metal;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class WeldedMemberTest {
  private static final double E = PowerLaw.DEFAULT_MODULUS;
  private static final CodeStrength CODE = new CodeStrength(240e6, 260e6, 115e6, 175e6);

  /** Worked example: plate 150 x 6 mm, 240/260 MPa, zone 115/175 MPa over 20 mm each side. */
  @Test
  void workedPlate() {
    SliceLine line = Profiles.plateauAndRamp(12, 22, 6, metal(115, 175), metal(240, 260));
    WeldedMember member = WeldedMember.of(line, 0.150, CODE, 20 * MM, E);
    assertEquals(186.0, member.codeAlong() / 1e3, 0.05);
    assertEquals(206.7, member.codeAlong() / (0.150 * 6 * MM) / 1e6, 0.05);
    assertEquals(197.7, member.codeWeightedProof() / 1e6, 0.05);
    assertEquals(157.5, member.codeAcross() / 1e3, 0.05);
    assertEquals(190.5, member.predictedProofForce() / 1e3, 0.05);
    assertEquals(215.3, member.predictedGreatestForce() / 1e3, 0.05);
    assertEquals(17.0, member.equivalentReach() / MM, 0.05);
    assertEquals("code-and-model", member.warnings().get(0).code());
  }

  /** Fibres in parallel share a strain: their force is below the sum of tensile strengths. */
  @Test
  void greatestForceIsBelowTheSumOfTensileStrengths() {
    SliceLine plate =
        Profiles.plateauAndRamp(12, 22, 6, metal(115, 175), metal(240, 260)).over(0.150);
    double sum =
        plate.slices().stream()
            .mapToDouble(s -> s.metal().tensile() * s.section() * s.length())
            .sum();
    assertEquals(216.7, sum / 1e3, 0.05);
    assertTrue(WeldedMember.greatestForce(plate, E) < sum);
  }

  /** The proof sum against the parallel pull's own 0.2 % offset: 190.96 kN, within 0.3 %. */
  @Test
  void proofSumAgainstTheParallelPull() {
    SliceLine plate =
        Profiles.plateauAndRamp(12, 22, 6, metal(115, 175), metal(240, 260)).over(0.150);
    double area = 0.150 * 6 * MM;
    double strain =
        SecondWay.root(
            e -> Math.expm1(e) - parallelForce(plate, e) / (area * E) - 0.002, 1e-4, 0.02);
    assertEquals(190.96, parallelForce(plate, strain) / 1e3, 0.05);
    assertEquals(
        parallelForce(plate, strain),
        WeldedMember.proofForce(plate),
        0.003 * parallelForce(plate, strain));
  }

  private static double parallelForce(SliceLine plate, double strain) {
    return plate.slices().stream()
        .mapToDouble(s -> s.metal().law(E).nominalStress(strain) * s.section() * s.length())
        .sum();
  }

  @Test
  void anUnweldedPlateCarriesItsOwnStrength() {
    SliceLine plate = SliceLine.uniform(0.150, 6 * MM, "base", metal(240, 260));
    WeldedMember member = WeldedMember.of(plate, 0.150, CODE, 20 * MM, E);
    assertEquals(240e6 * 0.150 * 6 * MM, member.predictedProofForce(), 1e-3);
    assertEquals(260e6 * 0.150 * 6 * MM, member.predictedGreatestForce(), 1e-3);
    assertEquals(0, member.equivalentReach());
  }

  @Test
  void aNarrowPlateIsAllZone() {
    assertEquals(115e6 * 0.030 * 6 * MM, MemberCode.alongWeld(0.030, 6 * MM, CODE, 20 * MM), 1e-6);
    assertEquals(115e6, MemberCode.weighted(0.030, 240e6, 115e6), 1e-6);
  }

  @Test
  void refusesAZoneStrongerThanItsBase() {
    assertThrows(
        IllegalArgumentException.class, () -> new CodeStrength(240e6, 260e6, 250e6, 255e6));
    assertThrows(
        IllegalArgumentException.class, () -> new CodeStrength(240e6, 230e6, 115e6, 175e6));
  }
}
