package afterweld.section;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import afterweld.section.Station.Place;
import afterweld.strength.Strength;
import afterweld.thermal.furnace.FurnaceStep;
import afterweld.thermal.furnace.FurnaceStep.Age;
import afterweld.thermal.furnace.FurnaceStep.Anneal;
import afterweld.thermal.furnace.FurnaceStep.Ramp;
import afterweld.weld.WeldCase;
import afterweld.weldmetal.WeldPool;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;

/** A schedule that overages further than tests go gets no strength, in every state after it. */
class OverageingLimitTest {
  private static FurnaceStep age(double celsius, double hours) {
    return new Age(celsius + 273.15, hours * 3600, Ramp.BY_FURNACE, false);
  }

  private static SectionProfile profile(String temper, FurnaceStep... steps) {
    return Welded.SESSION.thinProfile(Cases.butt("6061", temper).then(List.of(steps)).weldCase());
  }

  private static boolean claimed(SectionProfile profile) {
    return profile.stations().stream()
        .allMatch(
            station -> station.estimates().get(profile.states().size() - 1).middle().predicted());
  }

  private static boolean warned(SectionProfile profile) {
    return profile.warnings().stream().anyMatch(w -> w.code().equals(OverageingLimit.CODE));
  }

  @Test
  void longOverageingHasNoStrengthAndSaysSo() {
    SectionProfile profile = profile("T6", age(207, 25));
    assertFalse(claimed(profile));
    assertTrue(warned(profile));
    profile
        .stations()
        .forEach(station -> assertTrue(station.estimates().get(1).middle().predicted()));
  }

  /** The usual ageing and the reheats that tests cover: 16 h at 199 °C was the longest. */
  @Test
  void ageingThatTestsCoverKeepsItsStrength() {
    for (FurnaceStep step : List.of(age(177, 8), age(199, 10), age(205, 0.5))) {
      SectionProfile profile = profile("T6", step);
      assertTrue(claimed(profile) && !warned(profile), step.toString());
    }
  }

  /** Naturally aged metal first loses its clusters: that is no overageing. */
  @Test
  void theDipBeforeTheRiseIsNoOverageing() {
    assertTrue(claimed(profile("T4", age(200, 0.05))));
  }

  @Test
  void annealingAfterwardsIsKnownAgain() {
    assertTrue(
        claimed(
            profile("T6", age(207, 25), new Anneal(688, 9000, OptionalDouble.of(28.0 / 3600)))));
  }

  @Test
  void theSideThatDoesNotHardenByHeatKeepsItsStrength() {
    SectionProfile profile =
        Welded.SESSION.thinProfile(
            Cases.butt("6061", "T6")
                .withRight(Cases.side("5083", "O", 0.003))
                .then(List.of(age(207, 25)))
                .weldCase());
    int last = profile.states().size() - 1;
    for (Station station : profile.stations()) {
      boolean right = station.place() == Place.RIGHT;
      assertEquals(right, station.estimates().get(last).middle().predicted());
    }
  }

  /** The trial of fillers says what the section says: nothing. */
  @Test
  void weldMetalTriedThroughItHasNoStrengthEither() {
    WeldCase weldCase = Cases.butt("6061", "T6").then(List.of(age(207, 25))).weldCase();
    WeldMetalTrial.Result result =
        Welded.SESSION.weldMetal(weldCase).of(WeldPool.of(weldCase).composition());
    assertFalse(result.treated().predicted());
    assertTrue(result.asWelded().predicted());
  }

  @Test
  void aCurveEndsOnceItOnlyFalls() {
    List<Strength> curve = new ArrayList<>();
    DoubleStream.of(100, 80, 150, 200, 170, 160, 120)
        .forEach(yield -> curve.add(new Strength(yield, yield, yield)));
    List<Boolean> predicted =
        OverageingLimit.claimed(curve).stream().map(Strength::predicted).toList();
    assertEquals(List.of(true, true, true, true, true, false, false), predicted);
  }
}
