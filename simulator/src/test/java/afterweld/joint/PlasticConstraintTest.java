package afterweld.joint;

import static afterweld.joint.Profiles.MM;
import static afterweld.joint.Profiles.MPA;
import static afterweld.joint.Profiles.metal;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PlasticConstraintTest {
  private static final double E = StressStrainLaw.DEFAULT_MODULUS;

  /**
   * Formula as worked out in the model's definition, and the rigid-plastic finite-element upper
   * bound made for it: within 2.1 %, and above the bound at 2 and 3, which is why the result is
   * labelled an upper estimate.
   */
  @ParameterizedTest
  @CsvSource({
    "0.5, 1, 1.002",
    "1.43, 1, 1.008",
    "2, 1.044, 1.030",
    "3, 1.081, 1.068",
    "5, 1.110, 1.104",
    "10, 1.133, 1.130"
  })
  void sheet(double widthOverBand, double formula, double upperBound) {
    double m = PlasticConstraint.sheet(widthOverBand);
    assertEquals(formula, m, 0.0006);
    assertEquals(upperBound, m, 0.021 * upperBound);
  }

  @ParameterizedTest
  @CsvSource({"1, 1.018", "2, 1.243", "4, 1.787"})
  void plate(double thicknessOverBand, double upperBound) {
    double m = PlasticConstraint.plate(thicknessOverBand) * Math.sqrt(3) / 2;
    assertEquals(upperBound, m, 0.021 * upperBound);
  }

  /** Worked example: 38 mm wide, band 15 mm, m 1.067, 180 MPa become 194; 12.5 mm wide, m 1. */
  @Test
  void couponWidthMovesTheSoftBand() {
    PlasticConstraint wide = PlasticConstraint.upperEstimate(Profiles.worked(), 38 * MM, E);
    double n = metal(115, 180).law(E).uniformStrain();
    assertEquals(15, wide.band() / MM, 0.05);
    assertEquals(1.067, wide.factor(), 0.0005);
    assertEquals(194, 180 * PlasticConstraint.tensileFactor(wide.factor(), n), 0.5);
    PlasticConstraint narrow = PlasticConstraint.upperEstimate(Profiles.worked(), 12.5 * MM, E);
    assertEquals(1, narrow.factor());
    assertEquals("upper-estimate", narrow.warnings().get(0).code());
  }

  /** The weld metal beside the band, 190 MPa, is not raised and limits the joint. */
  @Test
  void nothingIsRaisedAboveItsNeighbour() {
    PlasticConstraint wide = PlasticConstraint.upperEstimate(Profiles.worked(), 38 * MM, E);
    CrossWeldTension upper = CrossWeldTension.pull(wide.line(), TensionCoupon.DEFAULT);
    CrossWeldTension lower = CrossWeldTension.pull(Profiles.worked(), TensionCoupon.DEFAULT);
    assertTrue(upper.tensile() <= 190 * MPA * (1 + 1e-12));
    assertTrue(upper.tensile() > lower.tensile());
  }

  @Test
  void aBarWithoutHarderNeighboursStaysAsItIs() {
    SliceLine bar = SliceLine.uniform(0.1, 6 * MM, "base", metal(115, 180));
    assertSame(bar, PlasticConstraint.upperEstimate(bar, 1, E).line());
  }

  /** Thick and narrow: the smaller of the two; thick and wide: the plate's. */
  @Test
  void plateCountsOnlyInAWideStrip() {
    assertEquals(
        PlasticConstraint.sheet(2), PlasticConstraint.factor(20 * MM, 12 * MM, 10 * MM), 1e-12);
    assertEquals(
        PlasticConstraint.plate(1.2), PlasticConstraint.factor(40 * MM, 12 * MM, 10 * MM), 1e-12);
    assertEquals(
        PlasticConstraint.sheet(4), PlasticConstraint.factor(40 * MM, 6 * MM, 10 * MM), 1e-12);
  }
}
