package afterweld.joint.bend;

import static afterweld.joint.Profiles.MM;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import afterweld.joint.JointSettings.BendLoad;
import afterweld.joint.PowerLaw;
import afterweld.joint.Profiles;
import afterweld.joint.RandomJoints;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;

/** What holds for every strip in a bend. */
@Domain(RandomJoints.class)
@Domain(DomainContext.Global.class)
class BendLawsTest {

  @Property(tries = 100)
  void anEvenStripBendsEvenly(
      @ForAll @DoubleRange(min = 40, max = 350) double proof,
      @ForAll @DoubleRange(min = 1, max = 2) double ratio,
      @ForAll @DoubleRange(min = 1, max = 180) double degrees) {
    StripBend bend =
        Profiles.bend(Profiles.unwelded(Profiles.metal(proof, ratio * proof)), degrees);
    assertEquals(1, bend.kinkFactor(), 1e-9);
    assertEquals(degrees, Math.toDegrees(bend.angle()), 1e-9 * degrees);
  }

  @Property(tries = 60)
  void moreAngleTakesMoreMoment(
      @ForAll RandomJoints.Softened joint,
      @ForAll @DoubleRange(min = 1, max = 150) double degrees,
      @ForAll @DoubleRange(min = 0.1, max = 30) double more,
      @ForAll BendLoad load) {
    StripBend less = StripBend.bend(joint.line(), Profiles.strip(degrees, load));
    StripBend further = StripBend.bend(joint.line(), Profiles.strip(degrees + more, load));
    assertTrue(further.moment() > less.moment());
    assertTrue(further.peakCurvature() >= less.peakCurvature());
  }

  @Property(tries = 60)
  void theStripReachesItsAngleAndSpringsBackPartOfIt(
      @ForAll RandomJoints.Softened joint,
      @ForAll @DoubleRange(min = 1, max = 180) double degrees,
      @ForAll BendLoad load) {
    StripBend bend = StripBend.bend(joint.line(), Profiles.strip(degrees, load));
    assertEquals(degrees, Math.toDegrees(bend.angle()), 1e-8 * degrees);
    assertTrue(bend.springback() > 0);
    assertTrue(bend.springback() <= bend.angle() * (1 + 1e-9));
    assertTrue(bend.kinkFactor() >= 1 - 1e-9);
    assertTrue(bend.averagedPeakCurvature() <= bend.peakCurvature() * (1 + 1e-9));
  }

  @Property(tries = 60)
  void leftAndRightAreAlike(@ForAll RandomJoints.Softened joint) {
    StripBend bend = Profiles.bend(joint.line(), 90);
    StripBend mirrored = Profiles.bend(RandomJoints.mirrored(joint.line()), 90);
    assertEquals(bend.moment(), mirrored.moment(), 1e-9 * bend.moment());
    assertEquals(bend.peakCurvature(), mirrored.peakCurvature(), 1e-7 * bend.peakCurvature());
  }

  @Property
  void curvatureUndoesMoment(
      @ForAll @DoubleRange(min = 40, max = 350) double proof,
      @ForAll @DoubleRange(min = 1, max = 3) double ratio,
      @ForAll @DoubleRange(min = 0.01, max = 300) double curvature) {
    PowerLaw law = PowerLaw.through(proof * 1e6, ratio * proof * 1e6, PowerLaw.DEFAULT_MODULUS);
    BendSection section = BendSection.of(law, 25 * MM, 3 * MM);
    double moment = section.moment(curvature);
    double steepness = 1 / law.exponent();
    assertEquals(curvature, section.curvature(moment), 1e-13 * steepness * curvature + 1e-12);
  }
}
