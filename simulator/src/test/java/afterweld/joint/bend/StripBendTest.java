package afterweld.joint.bend;

import static afterweld.joint.Profiles.ANNEALED;
import static afterweld.joint.Profiles.H14;
import static afterweld.joint.Profiles.MM;
import static afterweld.joint.Profiles.metal;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import afterweld.joint.JointSettings.BendLoad;
import afterweld.joint.JointSettings.BendSettings;
import afterweld.joint.PowerLaw;
import afterweld.joint.Profiles;
import afterweld.joint.SliceLine;
import afterweld.joint.SliceMetal;
import afterweld.joint.StrengthStation;
import afterweld.weld.Warning;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Worked examples of the model's definition: strip 150 x 25 x 3 mm, H14 145/152 MPa, O 42/110, 90
 * degrees under even moment, at the precision they are printed.
 */
class StripBendTest {

  static Stream<Arguments> cases() {
    return Stream.of(
        Arguments.of(Profiles.unwelded(H14), 8.403, 0.010472, 0.010472, 1.00, 0.0157, 18.61),
        Arguments.of(Profiles.unwelded(ANNEALED), 3.367, 0.010472, 0.010472, 1.00, 0.0157, 7.46),
        Arguments.of(Profiles.caseA(), 5.988, 0.09185, 0.001581, 8.77, 0.138, 13.26),
        Arguments.of(Profiles.caseC(), 5.188, 0.05349, 0.001337, 5.11, 0.080, 11.49));
  }

  @ParameterizedTest
  @MethodSource("cases")
  void table(
      SliceLine line,
      double moment,
      double peak,
      double base,
      double kink,
      double strain,
      double springback) {
    StripBend bend = Profiles.bend(line, 90);
    assertEquals(moment, bend.moment(), 0.0006);
    assertEquals(peak, bend.peakCurvature() * MM, 2e-4 * peak);
    assertEquals(base, bend.endCurvature() * MM, 3e-4 * base);
    assertEquals(kink, bend.kinkFactor(), 0.006);
    assertEquals(strain, bend.outerStrain(), 0.0006);
    assertEquals(springback, Math.toDegrees(bend.springback()), 0.006);
  }

  /** The soft minimum of case B is a point: its peak depends on the slices, its average doesn't. */
  @Test
  void pointedMinimumIsAveragedOverOneThickness() {
    StripBend bend = Profiles.bend(Profiles.caseB(), 90);
    assertEquals(7.065, bend.moment(), 0.0006);
    assertEquals(0.170, bend.peakCurvature() * MM, 0.0006);
    assertEquals(16.2, bend.kinkFactor(), 0.06);
    assertEquals(0.255, bend.outerStrain(), 0.0006);
    assertEquals(0.149, bend.averagedPeakCurvature() * MM, 0.0006);
    assertEquals(14.2, bend.averagedKinkFactor(), 0.06);
    assertEquals(0.224, bend.averagedOuterStrain(), 0.0006);
    assertEquals(15.64, Math.toDegrees(bend.springback()), 0.006);
  }

  @ParameterizedTest
  @CsvSource({"10, 4.8", "30, 7.7", "60, 8.6", "90, 8.8", "120, 8.8"})
  void kinkGrowsWithTheAngle(double degrees, double kink) {
    assertEquals(kink, Profiles.bend(Profiles.caseA(), degrees).kinkFactor(), 0.051);
  }

  @Test
  void sensitivities() {
    assertEquals(8.4, kink(ANNEALED, metal(130, 152), 0.25), 0.06);
    assertEquals(8.4, kink(metal(42, 120), H14, 0.25), 0.06);
    assertEquals(8.7, kink(metal(50, 110), H14, 0.25), 0.06);
    assertEquals(8.77, kink(ANNEALED, H14, 0.1), 0.006);
  }

  private static double kink(SliceMetal soft, SliceMetal base, double longest) {
    return Profiles.bend(Profiles.plateauAndRamp(6, 12, 3, soft, base, longest), 90).kinkFactor();
  }

  @Test
  void workedTensionProfileInTheSameStrip() {
    List<StrengthStation> thin =
        Profiles.workedStations().stream()
            .map(s -> new StrengthStation(s.distance(), s.metal(), 3 * MM, s.zone()))
            .toList();
    StripBend bend = Profiles.bend(SliceLine.through(thin, 0.25 * MM), 90);
    assertEquals(9.85, bend.moment(), 0.006);
    assertEquals(5.1, bend.kinkFactor(), 0.06);
    assertEquals(0.080, bend.outerStrain(), 0.0006);
  }

  /** The caution: over an edge an unwelded H14 strip folds sharper than a welded one. */
  @Test
  void overAnEdgeEvenAnUnweldedStripFolds() {
    StripBend unwelded = StripBend.bend(Profiles.unwelded(H14), Profiles.strip(90, BendLoad.EDGE));
    StripBend welded = StripBend.bend(Profiles.caseA(), Profiles.strip(90, BendLoad.EDGE));
    assertEquals(0.256, unwelded.peakCurvature() * MM, 0.0006);
    assertEquals(0.120, welded.peakCurvature() * MM, 0.0006);
    assertTrue(codes(unwelded).contains("edge-fold"));
  }

  /** Elastic limit of the H14 part: 5.33 N m, so in case C the base never yields. */
  @Test
  void elasticLimitOfTheBase() {
    PowerLaw law = PowerLaw.through(145e6, 152e6, PowerLaw.DEFAULT_MODULUS);
    double curvature = 2 * law.elasticLimit() / (3 * MM);
    double limit = BendSection.of(law, 0.025, 3 * MM).moment(curvature);
    assertEquals(5.33, limit, 0.006);
    assertTrue(Profiles.bend(Profiles.caseC(), 90).moment() < limit);
  }

  /** An even bend is an arc: half chord R sin(45), height R (1 - cos(45)). */
  @Test
  void shapeOfAnEvenBend() {
    StripBend bend = Profiles.bend(Profiles.unwelded(H14), 90);
    List<StripBend.Place> shape = bend.shapeUnderLoad();
    double radius = 0.150 / (Math.PI / 2);
    StripBend.Place left = shape.get(0);
    StripBend.Place right = shape.get(shape.size() - 1);
    assertEquals(-radius * Math.sqrt(0.5), left.along(), 1e-9);
    assertEquals(radius * Math.sqrt(0.5), right.along(), 1e-9);
    assertEquals(radius * (1 - Math.sqrt(0.5)), right.height(), 1e-9);
    assertEquals(left.height(), right.height(), 1e-9);
    assertTrue(bend.shapeReleased().get(0).height() < left.height());
  }

  @Test
  void warnsOfSharpBendsAndWideStrips() {
    assertTrue(codes(Profiles.bend(Profiles.caseB(), 90)).contains("sharp-bend"));
    assertFalse(codes(Profiles.bend(Profiles.caseA(), 90)).contains("sharp-bend"));
    assertTrue(codes(Profiles.bend(Profiles.caseA(), 90)).contains("wide-strip"));
  }

  @Test
  void refusesWhatIsNoStripBend() {
    assertThrows(IllegalArgumentException.class, () -> strip(0, 0.150, 0.025));
    assertThrows(IllegalArgumentException.class, () -> strip(181, 0.150, 0.025));
    assertThrows(IllegalArgumentException.class, () -> strip(Double.NaN, 0.150, 0.025));
    assertThrows(IllegalArgumentException.class, () -> strip(90, 0.150, 0));
    BendCoupon shorterThanFourThicknesses = strip(90, 0.011, 0.025);
    assertThrows(
        IllegalArgumentException.class,
        () -> StripBend.bend(Profiles.unwelded(H14), shorterThanFourThicknesses));
    BendCoupon shorterThanTheBand = strip(90, 0.020, 0.025);
    assertThrows(
        IllegalArgumentException.class, () -> StripBend.bend(Profiles.caseC(), shorterThanTheBand));
  }

  private static BendCoupon strip(double degrees, double length, double width) {
    return BendCoupon.of(
        new BendSettings(Math.toRadians(degrees), length, width, BendLoad.COUPLES));
  }

  private static List<String> codes(StripBend bend) {
    return bend.warnings().stream().map(Warning::code).toList();
  }
}
