package afterweld.section;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import afterweld.section.WeldReplay.AtStation;
import afterweld.section.WeldReplay.Moment;
import afterweld.strength.Strength;
import afterweld.thermal.furnace.FurnaceStep;
import afterweld.thermal.furnace.FurnaceStep.Age;
import afterweld.weld.WeldCase;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class AgedOnlyTest {
  private static final List<FurnaceStep> AGED =
      List.of(new Age(177 + 273.15, 8 * 3600, FurnaceStep.Ramp.BY_FURNACE, false));
  private static final WeldCase T6 = aged("T6");
  private static final WeldCase T4 = aged("T4");
  private static final SectionProfile FROM_T6 = Welded.SESSION.profile(T6);
  private static final SectionProfile FROM_T4 = Welded.SESSION.profile(T4);

  private static WeldCase aged(String temper) {
    return Cases.butt("6061", temper)
        .withFiller(Cases.filler("4043", 0.5))
        .then(AGED)
        .weldCase()
        .change()
        .naturalAge(Cases.DAY)
        .done();
  }

  private static Strength at(Station station, int state) {
    return station.estimates().get(state).middle();
  }

  private static boolean gains(Station station) {
    return at(station, 2).yield() > at(station, 1).yield() + 1e3
        || at(station, 2).tensile() > at(station, 1).tensile() + 1e3
        || at(station, 2).hardness() > at(station, 1).hardness() + 0.01;
  }

  private static boolean says(SectionProfile profile) {
    return profile.warnings().stream().anyMatch(said -> said.code().equals(AgedOnly.CODE));
  }

  @Test
  void weldMetalAndMetalWithCoarsePrecipitatesGainNothing() {
    // Common practice: T6 that is only aged after welding stays near as welded beside the weld.
    for (Station station : FROM_T6.stations()) {
      boolean softened = station.zone() != Zone.BASE && station.zone() != Zone.PARTIALLY_MELTED;
      if (softened && station.peakTemperature() < ZoneRule.DISSOLVES) {
        assertFalse(gains(station), station.zone() + " of " + station.peakTemperature() + " K");
      }
      assertFalse(station.zone() == Zone.FUSION && gains(station), "weld metal");
    }
    assertTrue(says(FROM_T6));
  }

  /** Handbooks give T5 and T6 one strength each: a second ageing makes no T6 of T5. */
  @ParameterizedTest
  @ValueSource(strings = {"T5", "T6"})
  void metalDeliveredAgedGainsNothingByASecondAgeing(String temper) {
    SectionProfile again =
        Welded.SESSION.thinProfile(
            Cases.butt("6063", temper).withFiller(Cases.filler("4643", 0.5)).then(AGED).weldCase());
    for (Station station : again.stations()) {
      assertFalse(station.zone() == Zone.BASE && gains(station), "" + station.distance());
    }
    assertTrue(says(again));
  }

  @Test
  void dissolvedMetalAgesAndSoDoesThatOfAT4Start() {
    assertTrue(
        FROM_T6.stations().stream()
            .filter(station -> station.zone() == Zone.SOLUTIONIZED)
            .filter(station -> station.peakTemperature() > ZoneRule.DISSOLVES)
            .allMatch(AgedOnlyTest::gains));
    assertTrue(
        FROM_T4.stations().stream()
            .filter(station -> station.zone() != Zone.FUSION)
            .allMatch(AgedOnlyTest::gains));
    assertTrue(FROM_T4.stations().stream().noneMatch(at -> at.zone() == Zone.FUSION && gains(at)));
  }

  @Test
  void everyMakerOfAProfileHoldsItBackAlike() {
    SectionProfile stages = Welded.SESSION.profileOfEveryStage(T6);
    assertEquals(FROM_T6.stations(), stages.stations());
    SectionProfile preview = new WeldSession().weld(T6).preview(T6, () -> false);
    for (SectionProfile thin :
        List.of(Welded.SESSION.thinProfile(T6), Welded.SESSION.near(T6).of(T6), preview)) {
      for (Station station : thin.stations()) {
        FROM_T6.stations().stream()
            .filter(same -> same.distance() == station.distance())
            .forEach(same -> assertEquals(at(same, 2), at(station, 2)));
      }
      assertTrue(says(thin));
    }
  }

  @Test
  void fillersAreComparedByTheProfilesWeldMetal() {
    WeldMetalTrial.Result result =
        Welded.SESSION.weldMetal(T6).of(FROM_T6.weldMetal().composition());
    Station centre =
        FROM_T6.stations().stream().filter(at -> at.distance() == 0).findFirst().orElseThrow();
    assertEquals(at(centre, 1), result.asWelded());
    assertEquals(at(centre, 2), result.treated());
  }

  @Test
  void aReplayEndsWithTheProfile() {
    WeldReplay replay = new WeldSession().weld(T6).replay(T6, () -> false);
    for (AtStation station : replay.stations()) {
      List<Moment> ageing = station.phases().get(station.phases().size() - 1);
      Strength last = ageing.get(ageing.size() - 1).strength();
      FROM_T6.stations().stream()
          .filter(same -> same.distance() == station.distance())
          .forEach(same -> assertEquals(at(same, 2), last));
    }
  }

  @Test
  void nothingIsSaidWhereNothingChanged() {
    WeldCase full = T6.withAfterWeld(Cases.fullTreatment("6061"));
    assertFalse(says(Welded.SESSION.thinProfile(full)));
    assertFalse(says(Welded.SESSION.thinProfile(T6.withAfterWeld(List.of()))));
  }

  @Test
  void aLaterPassCoarsensWhatAnEarlierOneDissolved() {
    assertTrue(ZoneRule.coarse(List.of(800.0, 700.0)));
    assertTrue(ZoneRule.coarse(List.of(550.0)));
    assertFalse(ZoneRule.coarse(List.of(700.0, 800.0)));
    assertFalse(ZoneRule.coarse(List.of(800.0, 400.0)));
  }
}
