package afterweld.section.soundness;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import afterweld.joint.JointReport;
import afterweld.section.SectionProfile;
import afterweld.section.Welded;
import afterweld.section.WrittenWelds;
import afterweld.thermal.HeatInputException;
import afterweld.thermal.Pass;
import afterweld.thermal.PassHeat;
import afterweld.weld.WeldCase;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

/** What holds of every weld, whatever was welded. */
class SoundnessLawsTest {
  private static final List<String> PREPARATIONS = List.of("square", "single-v", "double-v");

  private static WeldCase weld(
      double left,
      double right,
      int preparation,
      boolean tungsten,
      double amps,
      double speed,
      int n) {
    String sides =
        String.format(
            Locale.ROOT,
            "left: {alloy: \"6061\", temper: T6, thickness: %.2f mm}%n"
                + "right: {alloy: \"6061\", temper: T6, thickness: %.2f mm}%npreparation: %s%n",
            left,
            right,
            PREPARATIONS.get(preparation));
    String pass =
        String.format(
            Locale.ROOT,
            "process: %s, current: %.1f A, voltage: %s V, travel_speed: %.2f mm/s",
            tungsten ? "GTAW-AC" : "GMAW",
            amps,
            tungsten ? 15 : 24,
            speed);
    return WrittenWelds.of(sides, pass, n);
  }

  private static Optional<SoundnessRule> rule(WeldCase weldCase) {
    try {
      List<PassHeat> heats = Welded.SESSION.heats(weldCase);
      return Optional.of(new SoundnessRule(weldCase, heats));
    } catch (HeatInputException noWeld) {
      return Optional.empty();
    }
  }

  /** More heat for the same length melts no less and lays down no less. */
  @Property(tries = 60)
  void slowerTravelNeverOpensARootNorEmptiesAGroove(
      @ForAll @DoubleRange(min = 1, max = 20) double thickness,
      @ForAll @IntRange(max = 2) int preparation,
      @ForAll boolean tungsten,
      @ForAll @DoubleRange(min = 80, max = 300) double amps,
      @ForAll @DoubleRange(min = 2, max = 12) double speed,
      @ForAll @DoubleRange(min = 0.5, max = 0.95) double slower,
      @ForAll @IntRange(min = 1, max = 4) int passes) {
    WeldCase fast = weld(thickness, thickness, preparation, tungsten, amps, speed, passes);
    List<Pass> slow =
        fast.passes().stream().map(pass -> pass.withTravelSpeed(slower * speed * 1e-3)).toList();
    Optional<SoundnessRule> before = rule(fast);
    Optional<SoundnessRule> after = rule(fast.change().passes(slow).done());
    if (before.isPresent() && after.isPresent()) {
      assertTrue(after.get().fusedThrough() || !before.get().fusedThrough());
      assertTrue(after.get().filled() || !before.get().filled());
    }
  }

  @Property(tries = 8)
  void aMirroredWeldStandsAsItsImage(
      @ForAll @DoubleRange(min = 2, max = 10) double left,
      @ForAll @DoubleRange(min = 2, max = 10) double right,
      @ForAll @IntRange(max = 2) int preparation,
      @ForAll @DoubleRange(min = 90, max = 250) double amps) {
    WeldCase one = weld(left, right, preparation, true, amps, 3, 1);
    WeldCase other = weld(right, left, preparation, true, amps, 3, 1);
    try {
      Soundness soundness = Welded.SESSION.soundness(one);
      assertEquals(soundness.state(), Welded.SESSION.soundness(other).state());
    } catch (HeatInputException noWeld) {
      assertTrue(rule(other).isEmpty());
    }
  }

  @Property(tries = 12)
  void nothingThatIsNoJointHasAStrength(
      @ForAll @DoubleRange(min = 1, max = 15) double thickness,
      @ForAll @IntRange(max = 2) int preparation,
      @ForAll boolean tungsten,
      @ForAll @DoubleRange(min = 100, max = 300) double amps) {
    WeldCase weldCase = weld(thickness, thickness, preparation, tungsten, amps, 6, 1);
    if (rule(weldCase).isEmpty()) {
      return;
    }
    SectionProfile profile = Welded.SESSION.thinProfile(weldCase);
    boolean claims = JointReport.finished(profile, 0.05).tensile().isPresent();
    assertEquals(profile.soundness().sound(), claims);
    assertFalse(profile.soundness().note().isBlank() != profile.soundness().sound());
  }
}
