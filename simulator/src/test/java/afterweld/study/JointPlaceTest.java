package afterweld.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import afterweld.choice.answer.Requirement;
import afterweld.section.Cases;
import afterweld.section.SectionProfile;
import afterweld.section.Welded;
import afterweld.section.soundness.Soundness;
import afterweld.thermal.furnace.FurnaceStep;
import afterweld.thermal.furnace.FurnaceStep.Age;
import afterweld.thermal.furnace.FurnaceStep.Ramp;
import afterweld.weld.WeldCase;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** What keeps a joint from being called best in a map. */
class JointPlaceTest {
  private static final Requirement HARDNESS =
      new Requirement(
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          OptionalDouble.of(50),
          Optional.empty(),
          OptionalDouble.empty());

  private static SectionProfile unsound(SectionProfile of) {
    Soundness not =
        new Soundness(
            Soundness.State.NOT_SOUND,
            List.of("Not fused through."),
            List.of(),
            OptionalDouble.empty());
    return new SectionProfile(
        of.weldCase(),
        not,
        of.states(),
        of.stations(),
        of.runs(),
        of.zones(),
        of.weldMetal(),
        of.passes(),
        of.tellingCycles(),
        of.softening(),
        of.warnings(),
        of.cautions());
  }

  /** Whatever is asked, hardness too: an unsound weld has no value, and its reason stands. */
  @Test
  void aWeldThatIsNotSoundIsBlankWithTheReason() {
    SectionProfile sound = Welded.SESSION.thinProfile(Cases.butt("6061", "T6").weldCase());
    for (Requirement asked : List.of(Requirement.NONE, HARDNESS)) {
      assertTrue(JointPlace.of(sound, 0.05, asked).ranked());
      JointPlace blank = JointPlace.of(unsound(sound), 0.05, asked);
      assertTrue(Double.isNaN(blank.value()) && !blank.ranked());
      assertEquals("Not sound. Not fused through.", blank.blank());
      assertTrue(Double.isNaN(blank.figures().hardness()));
    }
  }

  /** Weld metal near 1 % Mg: the classic of 5356 with too much 6061 in it. */
  @Test
  void whatAnotherCommandObjectsToIsShownAndNotRanked() {
    Cases butt = Cases.butt("6061", "T6");
    WeldCase prone =
        new Cases(
                butt.left(),
                butt.right(),
                Cases.filler("5356", 0.8),
                butt.passes(),
                butt.naturalAge(),
                List.of())
            .weldCase();
    JointPlace place = JointPlace.of(Welded.SESSION.thinProfile(prone), 0.05, Requirement.NONE);
    assertTrue(place.value() > 0 && !place.ranked());
    assertTrue(place.objections().get(0).startsWith("Cracking high"), place.objections().get(0));
  }

  @Test
  void anAgeingPastTheTestsIsBlankAndSaysWhy() {
    FurnaceStep tooLong = new Age(480, 25 * 3600, Ramp.BY_FURNACE, false);
    SectionProfile profile =
        Welded.SESSION.thinProfile(Cases.butt("6061", "T6").then(List.of(tooLong)).weldCase());
    JointPlace place = JointPlace.of(profile, 0.05, Requirement.NONE);
    assertFalse(place.ranked());
    assertTrue(place.blank().contains("further than tests go"), place.blank());
  }
}
