package afterweld.joint;

import static afterweld.joint.Profiles.MM;
import static afterweld.joint.Profiles.MPA;
import static afterweld.joint.Profiles.metal;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import afterweld.weld.Warning;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Tables are the model definition's worked examples, checked at the precision they are printed. */
class CrossWeldTensionTest {

  /** Soft 115/180 over a width h in a base 276/310, 50 mm gauge. */
  @ParameterizedTest
  @CsvSource({
    "1, 177.0, 0.60, 0.005",
    "2, 167.1, 0.95, 0.005",
    "3, 159.9, 1.29, 0.005",
    "5, 150.3, 1.97, 0.005",
    "10, 137.7, 3.68, 0.005",
    "20, 126.6, 7.10, 0.005",
    "30, 121.0, 10.5, 0.05",
    "50, 115.0, 17.4, 0.06"
  })
  void readingsDependOnTheSoftWidth(double h, double proof, double percent, double half) {
    CrossWeldTension result = pull(soft(h), 50);
    assertEquals(proof, result.proof().orElseThrow() / MPA, 0.05);
    assertEquals(percent, 100 * result.strainAtMaximum(), half);
    assertEquals("", result.proofNote());
  }

  @Test
  void aVeryNarrowBandBreaksBeforeTheJointHasAProofStress() {
    CrossWeldTension result = pull(soft(0.5), 50);
    assertTrue(result.proof().isEmpty());
    assertTrue(result.proofEfficiency().isEmpty());
    assertEquals(CrossWeldTension.NO_PROOF, result.proofNote());
  }

  @ParameterizedTest
  @CsvSource({"25, 118.6, 12.51", "50, 126.7, 6.69", "100, 136.9, 3.47"})
  void workedProfile(double gauge, double proof, double percent) {
    SliceLine fine = SliceLine.through(Profiles.workedStations(), 0.1 * MM);
    CrossWeldTension result = pull(fine, gauge);
    assertEquals(proof, result.proof().orElseThrow() / MPA, 0.05);
    assertEquals(percent, 100 * result.strainAtMaximum(), 0.005);
    assertEquals(180, result.tensile() / MPA, 1e-6);
    assertEquals(0.581, result.tensileEfficiency().left(), 0.0005);
    assertEquals("softened", result.failure().zone());
    assertEquals(17.3, 100 * result.weakestStrain(), 0.05);
    assertEquals(10.0 / 180, result.failure().runnerUp().orElseThrow().margin(), 1e-9);
  }

  @Test
  void elongationIsABand() {
    SliceLine.Band band = pull(Profiles.worked(), 50).elongation().orElseThrow();
    assertEquals(6.4, 100 * band.low(), 0.05);
    assertEquals(11, 100 * band.high(), 0.1);
  }

  /** Other slices move the proof stress by less than 0.1 %, the elongation by 0.05 points. */
  @ParameterizedTest
  @CsvSource({"1", "0.2", "0.1"})
  void proofDoesNotHangOnTheSlices(double longest) {
    SliceLine other = SliceLine.through(Profiles.workedStations(), longest * MM);
    CrossWeldTension standard = pull(Profiles.worked(), 50);
    CrossWeldTension result = pull(other, 50);
    double proof = standard.proof().orElseThrow();
    assertEquals(proof, result.proof().orElseThrow(), 1e-3 * proof);
    assertEquals(standard.strainAtMaximum(), result.strainAtMaximum(), 5e-4);
    assertEquals(180, result.tensile() / MPA, 1e-6);
  }

  /** A V of slope g averages over one thickness to its tip plus g t / 4. */
  @Test
  void aPointedMinimumCountsOverOneThickness() {
    List<StrengthStation> right = new ArrayList<>();
    right.add(Profiles.station(0, metal(115, 180), "softened"));
    right.add(Profiles.station(10, metal(215, 280), "softened"));
    right.add(Profiles.station(30, metal(215, 280), "base"));
    SliceLine line = SliceLine.through(Profiles.mirrored(right), 0.05 * MM);
    CrossWeldTension result = pull(line, 50);
    assertEquals(180 + 10 * 6 / 4.0, result.tensile() / MPA, 0.3);
    assertEquals(180, result.tensileOfWeakestSlice() / MPA, 0.3);
  }

  @Test
  void aNarrowPlateauIsNotRaised() {
    CrossWeldTension result = pull(soft(1), 50);
    assertEquals(180, result.tensile() / MPA, 1e-9);
  }

  @Test
  void lostAreaWeakensInProportion() {
    SliceLine line =
        new SliceLine(
            Profiles.twoZones(10, metal(115, 180), metal(276, 310)).slices().stream()
                .map(
                    s ->
                        new Slice(
                            s.from(),
                            s.to(),
                            s.thickness(),
                            s.zone(),
                            s.metal(),
                            s.zone().equals("soft") ? 0.1 : 0))
                .toList());
    assertEquals(162, pull(line, 50).tensile() / MPA, 1e-9);
  }

  @Test
  void aNearTieNamesBothZones() {
    CrossWeldTension result = pull(Profiles.twoZones(20, metal(115, 180), metal(120, 183)), 50);
    assertTrue(result.failure().undecided());
    assertEquals(List.of("soft", "base"), result.failure().zones());
    assertTrue(codes(result).contains("failure-undecided"));
    assertFalse(pull(Profiles.worked(), 50).failure().undecided());
  }

  @Test
  void anUnweldedBarReadsItsOwnStrengths() {
    SliceLine bar = SliceLine.uniform(0.1, 6 * MM, "base", metal(276, 310));
    CrossWeldTension result = pull(bar, 50);
    assertEquals(276, result.proof().orElseThrow() / MPA, 1e-6);
    assertEquals(310, result.tensile() / MPA, 1e-9);
    assertEquals(1, result.tensileEfficiency().right(), 1e-12);
    assertTrue(result.failure().runnerUp().isEmpty());
    assertEquals(List.of(), result.warnings());
  }

  @Test
  void warnsOfAShortGauge() {
    assertTrue(codes(pull(Profiles.worked(), 50)).contains("short-gauge"));
    assertFalse(codes(pull(Profiles.worked(), 60)).contains("short-gauge"));
  }

  @Test
  void warnsOfDoubtfulPairsOfStrengths() {
    assertTrue(codes(pull(bar(40, 170), 50)).contains("strength-ratio"));
    assertTrue(codes(pull(bar(40, 170), 50)).contains("hardening-exponent"));
    assertTrue(codes(pull(bar(200, 201), 50)).contains("no-hardening"));
  }

  @Test
  void warnsOfUnequalThickness() {
    SliceLine stepped =
        new SliceLine(
            List.of(
                Slice.sound(-0.05, 0, 8 * MM, "base", metal(276, 310)),
                Slice.sound(0, 0.05, 6 * MM, "base", metal(276, 310))));
    CrossWeldTension result = pull(stepped, 50);
    assertTrue(codes(result).contains("eccentric-pull"));
    assertEquals(310, result.tensile() / MPA, 1e-9);
    assertEquals(0.75, result.tensileEfficiency().left(), 1e-12);
  }

  @Test
  void refusesAProfileShorterThanTheGauge() {
    assertThrows(
        IllegalArgumentException.class,
        () -> pull(SliceLine.uniform(0.04, MM, "base", metal(276, 310)), 50));
    assertThrows(IllegalArgumentException.class, () -> TensionCoupon.over(0));
    assertThrows(IllegalArgumentException.class, () -> new TensionCoupon(0.05, 0.038, 69e9, 0.4));
    assertThrows(IllegalArgumentException.class, () -> new TensionCoupon(0.05, 0.038, 69e6, 0.15));
  }

  private static SliceLine bar(double proof, double tensile) {
    return SliceLine.uniform(0.1, 6 * MM, "base", metal(proof, tensile));
  }

  private static SliceLine soft(double width) {
    return Profiles.twoZones(width, metal(115, 180), metal(276, 310));
  }

  private static CrossWeldTension pull(SliceLine line, double gauge) {
    return CrossWeldTension.pull(line, TensionCoupon.over(gauge * MM));
  }

  private static List<String> codes(CrossWeldTension result) {
    return result.warnings().stream().map(Warning::code).toList();
  }

  /** Recrystallized metal is level: the last digits of a thickness in inches move no break. */
  @Test
  void aLevelZoneBreaksAtOnePlace() {
    for (double last : new double[] {-1e-9, 0, 1e-9}) {
      SliceLine line =
          new SliceLine(
              List.of(
                  Slice.sound(-40 * MM, -20 * MM, 6 * MM, "base", metal(228, 317)),
                  Slice.sound(-20 * MM, -10 * MM, 6 * MM, "recrystallized", metal(117, 262)),
                  Slice.sound(
                      -10 * MM, -5 * MM, 6 * MM, "recrystallized", metal(117, 262 * (1 + last))),
                  Slice.sound(-5 * MM, 40 * MM, 6 * MM, "base", metal(228, 317))));
      assertEquals(-15, pull(line, 50).failure().distance() / MM, 1e-9);
    }
  }
}
