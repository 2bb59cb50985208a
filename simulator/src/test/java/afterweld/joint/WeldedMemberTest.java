package afterweld.joint;

import static afterweld.joint.Profiles.MM;
import static afterweld.joint.Profiles.metal;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WeldedMemberTest {
  private static final double E = StressStrainLaw.DEFAULT_MODULUS;
  private static final CodeStrength CODE = new CodeStrength(240e6, 260e6, 115e6, 175e6);

  /** Worked example: plate 150 x 6 mm, 240/260 MPa, zone 115/175 MPa over 20 mm each side. */
  @Test
  void workedPlate() {
    SliceLine line = Profiles.plateauAndRamp(12, 22, 6, metal(115, 175), metal(240, 260));
    WeldedMember member = WeldedMember.of(line, 0.150, CODE, 20 * MM, E);
    assertEquals(186.0, member.codeAlong() / 1e3, 0.05);
    assertEquals(169.1, member.codeAlongDesign() / 1e3, 0.05);
    assertEquals(206.7, member.codeAlong() / (0.150 * 6 * MM) / 1e6, 0.05);
    assertEquals(197.7, member.codeWeightedProof() / 1e6, 0.05);
    assertEquals(157.5, member.codeAcross() / 1e3, 0.05);
    assertEquals(126.0, member.codeAcrossDesign() / 1e3, 0.05);
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

  /** Reach of the zone by thickness, EN 1999-1-1 6.1.6.3 (from memory). */
  @ParameterizedTest
  @CsvSource({"3, 20", "6, 20", "6.1, 30", "12, 30", "20, 35", "25, 35", "30, 40"})
  void metalArcReach(double thickness, double reach) {
    assertEquals(reach * MM, CodeZone.metalArcReach(thickness * MM), 1e-12);
  }

  @Test
  void tungstenArcAndWarmInterpass() {
    assertEquals(30 * MM, CodeZone.tungstenArcReach(6 * MM).orElseThrow(), 1e-12);
    assertTrue(CodeZone.tungstenArcReach(8 * MM).isEmpty());
    assertEquals(0.8, CodeZone.tungstenArcFactor(CodeZone.Series.MAGNESIUM_SILICON, 6 * MM));
    assertEquals(0.64, CodeZone.tungstenArcFactor(CodeZone.Series.ZINC, 8 * MM));
    assertEquals(1, CodeZone.tungstenArcFactor(CodeZone.Series.WORK_HARDENED, 6 * MM));
    assertEquals(0.9, CodeZone.tungstenArcFactor(CodeZone.Series.WORK_HARDENED, 8 * MM));
    double ninety = 273.15 + 90;
    assertEquals(1.25, CodeZone.interpassFactor(CodeZone.Series.MAGNESIUM_SILICON, ninety), 1e-12);
    assertEquals(1.375, CodeZone.interpassFactor(CodeZone.Series.ZINC, ninety), 1e-12);
    assertEquals(1, CodeZone.interpassFactor(CodeZone.Series.ZINC, 300));
    assertThrows(
        IllegalArgumentException.class,
        () -> CodeZone.interpassFactor(CodeZone.Series.ZINC, 273.15 + 130));
    assertEquals(92e6, CODE.withZoneTimes(0.8).hazProof(), 1);
  }

  @Test
  void refusesAZoneStrongerThanItsBase() {
    assertThrows(
        IllegalArgumentException.class, () -> new CodeStrength(240e6, 260e6, 250e6, 255e6));
    assertThrows(
        IllegalArgumentException.class, () -> new CodeStrength(240e6, 230e6, 115e6, 175e6));
  }
}
