package afterweld.joint;

import static afterweld.joint.Profiles.metal;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * One free parameter against published joints: the soft width is fitted so that the joint's proof
 * stress is the published one, then the elongation is predicted. Published: typical groove-weld
 * properties, reduced section, 2 in gauge, in ksi and per cent (table of the welding handbooks,
 * second-hand). Strengths of the soft metal: handbook O temper, for 6061 the usual 115 MPa with the
 * published tensile strength; base tempers from handbooks (all from memory). A consistency check
 * rather than a proof, since a width is fitted.
 */
class PublishedElongationTest {
  private static final double KSI = 6.894757;

  /**
   * Within 3.5 points for 6061, 5083, 5052. The columns after the measured elongation are the
   * fitted width and elongation that the model's definition states.
   */
  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "6061-T6/4043, 115, 186, 276, 310, 18, 8, 25, 9.2",
    "6061-T6/5356, 115, 207, 276, 310, 19, 11, 19, 8.2",
    "5083-H116/5183, 145, 290, 228, 317, 22, 16, 36, 19.2",
    "5052-H32/5356, 90, 195, 193, 228, 14, 19, 33, 17.2"
  })
  void elongationWithinThreeAndAHalfPoints(
      String joint,
      double proof,
      double tensile,
      double baseProof,
      double baseTensile,
      double publishedProof,
      double measured,
      double statedWidth,
      double statedElongation) {
    SliceMetal soft = metal(proof, tensile);
    SliceMetal base = metal(baseProof, baseTensile);
    double width = fittedWidth(soft, base, publishedProof * KSI);
    double percent = elongation(width, soft, base);
    assertEquals(measured, percent, 3.5, joint);
    assertEquals(statedWidth, width, 1);
    assertEquals(statedElongation, percent, 0.5);
  }

  /** What doesn't fit: 3003 reads 3 to 8 points low, 1100 11 to 16, without and with the neck. */
  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "3003-H34/1100, 42, 110, 145, 152, 7, 24, 3, 8",
    "1100-H16/1100, 34, 90, 138, 145, 6, 29, 11, 16.1"
  })
  void softPureMetalsReadLow(
      String joint,
      double proof,
      double tensile,
      double baseProof,
      double baseTensile,
      double publishedProof,
      double measured,
      double missingWithNeck,
      double missing) {
    SliceMetal soft = metal(proof, tensile);
    SliceMetal base = metal(baseProof, baseTensile);
    double width = fittedWidth(soft, base, publishedProof * KSI);
    double percent = elongation(width, soft, base);
    double neck = 100 * pull(width, soft, base).elongation().orElseThrow().width();
    assertTrue(measured - percent <= missing, joint);
    assertTrue(measured - percent - neck >= missingWithNeck, joint);
  }

  /** 5454-H32/5554 was published with a lower proof stress than the O temper's 117 MPa. */
  @Test
  void noWidthFitsAProofStressBelowTheSoftMetals() {
    CrossWeldTension allSoft = pull(50, metal(117, 248), metal(207, 276));
    assertTrue(allSoft.proof().orElseThrow() / 1e6 > 16 * KSI);
  }

  private static double fittedWidth(SliceMetal soft, SliceMetal base, double proof) {
    return SecondWay.root(h -> pull(h, soft, base).proof().orElseThrow() / 1e6 - proof, 2, 49.9);
  }

  private static double elongation(double width, SliceMetal soft, SliceMetal base) {
    return 100 * pull(width, soft, base).strainAtMaximum();
  }

  private static CrossWeldTension pull(double width, SliceMetal soft, SliceMetal base) {
    return CrossWeldTension.pull(Profiles.twoZones(width, soft, base), TensionCoupon.over(0.050));
  }
}
