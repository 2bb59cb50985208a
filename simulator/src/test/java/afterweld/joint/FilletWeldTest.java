package afterweld.joint;

import static afterweld.joint.Profiles.MM;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import afterweld.joint.JointSettings.Fillet;
import afterweld.joint.JointSettings.FilletLoad;
import afterweld.joint.JointSettings.FilletSides;
import afterweld.quantity.UnitSystem;
import afterweld.weld.Warning;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Worked examples of the model's definition: leg 6 mm, length 100 mm, weld metal 190 MPa. */
class FilletWeldTest {

  @Test
  void workedFillet() {
    FilletWeld along = weld(6, 6, 100, FilletLoad.ALONG, true);
    FilletWeld across = weld(6, 6, 100, FilletLoad.ACROSS, true);
    assertEquals(4.243, along.throat() / MM, 0.0006);
    assertEquals(46.5, along.throatForce() / 1e3, 0.06);
    assertEquals(37.2, along.designForce() / 1e3, 0.06);
    assertEquals(57.0, across.throatForce() / 1e3, 0.06);
    assertEquals(48.4, along.simpleForce() / 1e3, 0.06);
    assertEquals(48.5, along.legForce() / FilletWeld.DESIGN_FACTOR / 1e3, 0.06);
    assertFalse(along.legDecides());
  }

  /** Across over along: the square root of 1.5; Marsh (1988) cites 1.2 from tee joints. */
  @Test
  void acrossAgainstAlong() {
    double ratio =
        weld(6, 6, 100, FilletLoad.ACROSS, true).throatForce()
            / weld(6, 6, 100, FilletLoad.ALONG, true).throatForce();
    assertEquals(Math.sqrt(1.5), ratio, 1e-12);
    assertEquals(1.2, ratio, 0.03);
  }

  @Test
  void aWeakZoneDecidesAtTheLeg() {
    FilletWeld weld =
        FilletWeld.of(new Fillet(6 * MM, 9 * MM, 0.1, FilletLoad.ACROSS), 210e6, 100e6, true);
    assertTrue(weld.legDecides());
    assertEquals(100e6 / Math.sqrt(3) * 6 * MM * 0.1, weld.force(), 1e-6);
  }

  /** The load told is that of one; where the joint has two, it says so. */
  @Test
  void aJointWithAFilletOnEachSideSaysThatItHasTwo() {
    Fillet one = new Fillet(6 * MM, 6 * MM, 0.1, FilletLoad.ACROSS);
    assertTrue(words(one).startsWith("Fillet, as welded") && !words(one).contains("twice"));
    Fillet two = new Fillet(6 * MM, 6 * MM, 0.1, FilletLoad.ACROSS, Optional.of(FilletSides.BOTH));
    assertTrue(words(two).startsWith("One fillet, as welded"), words(two));
    assertTrue(words(two).endsWith("The joint has one on each side: twice that."), words(two));
  }

  private static String words(Fillet fillet) {
    JointChecks checks =
        new JointChecks(
            Optional.of(FilletWeld.of(fillet, 190e6, 175e6, true)),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            List.of());
    return checks.sentences(UnitSystem.METRIC).get(0);
  }

  @Test
  void unsoundEndsCostAThroatEach() {
    FilletWeld weld = weld(6, 6, 100, FilletLoad.ALONG, false);
    assertEquals(100 - 2 * weld.throat() / MM, weld.length() / MM, 1e-9);
  }

  @Test
  void heatTreatedWeldMetalCountsOnlyAfterSolutionTreatment() {
    assertEquals(200e6, FilletWeld.heatTreatedStrength(250e6, true).orElseThrow(), 1e-6);
    assertTrue(FilletWeld.heatTreatedStrength(250e6, false).isEmpty());
  }

  @Test
  void refusesSmallLegsAndShortWelds() {
    refused(1.9, 6, 100);
    refused(6, 1.9, 100);
    refused(2, 2, 29);
    refused(8, 8, 36);
    refused(8, 8, 45.2);
    refused(Double.NaN, 6, 100);
    assertEquals(2, weld(2, 2, 30, FilletLoad.ALONG, true).warnings().size());
    assertEquals(2, weld(8, 8, 45.3, FilletLoad.ALONG, true).warnings().size());
  }

  /** EN 1999-1-1, 8.6.3.3 (from memory): over 100 throats (1.2 - 0.2 L / (100 a)) L counts. */
  @Test
  void aLongFilletLoadedAlongIsSaidToBeTakenAsEvenlySheared() {
    double throat = 6 / Math.sqrt(2);
    assertFalse(uneven(99 * throat, FilletLoad.ALONG).isPresent());
    assertFalse(uneven(400 * throat, FilletLoad.ACROSS).isPresent());
    String twice = uneven(200 * throat, FilletLoad.ALONG).orElseThrow();
    assertTrue(twice.contains("even shear over its length is assumed"), twice);
    assertTrue(twice.contains("a lap that is loaded at its ends"), twice);
    assertTrue(twice.contains("counts less of it (80 %;"), twice);
    String far = uneven(400 * throat, FilletLoad.ALONG).orElseThrow();
    assertTrue(far.contains("not meant for more than about 300 throats"), far);
    assertFalse(far.contains("%"), far);
  }

  private static Optional<String> uneven(double length, FilletLoad load) {
    return weld(6, 6, length, load, true).warnings().stream()
        .filter(warning -> warning.code().equals("long-fillet"))
        .map(Warning::text)
        .findFirst();
  }

  private static void refused(double leg, double secondLeg, double length) {
    assertThrows(
        IllegalArgumentException.class, () -> weld(leg, secondLeg, length, FilletLoad.ALONG, true));
  }

  private static FilletWeld weld(
      double leg, double secondLeg, double length, FilletLoad load, boolean soundEnds) {
    return FilletWeld.of(
        new Fillet(leg * MM, secondLeg * MM, length * MM, load), 190e6, 175e6, soundEnds);
  }
}
