package afterweld.section;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import afterweld.section.WeldReplay.AtStation;
import afterweld.section.WeldReplay.Moment;
import afterweld.thermal.furnace.FurnaceStep;
import afterweld.thermal.furnace.FurnaceStep.Age;
import afterweld.thermal.furnace.FurnaceStep.Ramp;
import afterweld.weld.FillerChoice;
import afterweld.weld.WeldCase;
import java.util.List;
import java.util.OptionalDouble;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

/** A kept weld gives what a fresh computation gives, to the last bit. */
class SectionRunTest {
  private static final Cases TREATED = Cases.butt("6061", "T6").then(Cases.fullTreatment("6061"));

  private static SectionProfile profile(SectionRun run, WeldCase weldCase) {
    return run.profile(weldCase, () -> false);
  }

  private static List<FurnaceStep> aged(double hours) {
    return List.of(new Age(448.15, hours * 3600, Ramp.BY_FURNACE, false));
  }

  @Test
  void whateverComesAfterTheWeldTheKeptWeldGivesWhatAFreshOneGives() {
    SectionRun run = new WeldSession().weld(TREATED.weldCase());
    for (Cases cases : List.of(TREATED, TREATED.then(aged(2)), TREATED.then(aged(9)), TREATED)) {
      assertEquals(cases.runAnew(), profile(run, cases.weldCase()));
    }
  }

  @Test
  void theEndsOfDefaultInputsAreKeptApart() {
    FillerChoice byRule = new FillerChoice(TREATED.filler().alloy(), 0.5, 0.35, 0.65, false, 0.5);
    Cases cases =
        TREATED
            .withFiller(byRule)
            .withRight(Cases.side("6063", "T6", 0.003))
            .withPasses(Cases.pass(110, 3e-3, 293.15, OptionalDouble.empty(), 0));
    SectionRun run = new WeldSession().weld(cases.weldCase());
    assertEquals(cases.runAnew(), profile(run, cases.weldCase()));
    assertEquals(cases.then(aged(4)).runAnew(), profile(run, cases.then(aged(4)).weldCase()));
  }

  @Test
  void anotherWeldIsRefused() {
    SectionRun run = new WeldSession().weld(TREATED.weldCase());
    WeldCase other = TREATED.withPasses(Cases.pass(120, 3e-3, 293.15)).weldCase();
    assertFalse(run.holds(other));
    assertThrows(IllegalArgumentException.class, () -> profile(run, other));
  }

  @Test
  void aPreviewShowsStationsOfTheSettledProfile() {
    SectionRun run = new WeldSession().weld(TREATED.weldCase());
    List<Station> some = run.preview(TREATED.weldCase(), () -> false).stations();
    List<Station> all = profile(run, TREATED.weldCase()).stations();
    assertTrue(some.size() >= 32, some.size() + " stations");
    assertTrue(some.size() < all.size());
    for (Station station : some) {
      Station settled =
          all.stream().filter(s -> s.distance() == station.distance()).findFirst().orElseThrow();
      assertEquals(settled.estimates(), station.estimates());
    }
  }

  @Test
  void anOutdatedRunEndsSoonAndLeavesTheWeldUsable() {
    SectionRun run = new WeldSession().weld(TREATED.weldCase());
    AtomicInteger asked = new AtomicInteger();
    assertThrows(
        CancellationException.class,
        () -> run.profile(TREATED.weldCase(), () -> asked.incrementAndGet() > 3));
    assertTrue(asked.get() < 20, asked + " stations after the run was outdated");
    assertEquals(TREATED.runAnew(), profile(run, TREATED.weldCase()));
  }

  @Test
  void aReplayHasAPhasePerStepAndEndsWhereTheProfileEnds() {
    SectionRun run = new WeldSession().weld(TREATED.weldCase());
    WeldReplay replay = run.replay(TREATED.weldCase(), () -> false);
    assertEquals(
        List.of(
            "welding",
            "natural ageing",
            "solution treatment",
            "quench",
            "natural ageing",
            "ageing"),
        replay.phases());
    List<Station> preview = run.preview(TREATED.weldCase(), () -> false).stations();
    assertEquals(preview.size(), replay.stations().size());
    for (int i = 0; i < preview.size(); i++) {
      AtStation station = replay.stations().get(i);
      assertEquals(preview.get(i).distance(), station.distance());
      assertEquals(preview.get(i).estimates().get(1).middle(), last(station, 1).strength());
      assertEquals(preview.get(i).estimates().get(2).middle(), last(station, 5).strength());
    }
  }

  private static Moment last(AtStation station, int phase) {
    List<Moment> moments = station.phases().get(phase);
    return moments.get(moments.size() - 1);
  }

  @Test
  void onOneClockTheArcHeatsTheNearBeforeTheFarAndNothingPeaksBeforeItCame() {
    WeldReplay replay =
        new WeldSession().weld(TREATED.weldCase()).replay(TREATED.weldCase(), () -> false);
    double before = Double.NEGATIVE_INFINITY;
    for (AtStation station : replay.stations()) {
      if (station.distance() >= 0) {
        double peak = peakTime(station.phases().get(0));
        assertTrue(peak >= before - 0.05, station.distance() + " m peaks at " + peak + " s");
        assertTrue(peak > -0.05, station.distance() + " m peaks at " + peak + " s");
        before = peak;
      }
    }
    assertTrue(before > 1, "the farthest station peaks last");
  }

  private static double peakTime(List<Moment> moments) {
    Moment peak = moments.get(0);
    for (Moment moment : moments) {
      peak = moment.temperature() > peak.temperature() ? moment : peak;
    }
    return peak.time();
  }

  @Test
  void aStationOfTwoPassesFeelsThemInTheirOrder() {
    Cases cases = TREATED.withPasses(Cases.pass(110, 3e-3, 333.15), Cases.pass(110, 3e-3, 343.15));
    WeldReplay replay =
        new WeldSession().weld(cases.weldCase()).replay(cases.weldCase(), () -> false);
    assertEquals(List.of("pass 1", "pass 2"), replay.phases().subList(0, 2));
    for (AtStation station : replay.stations()) {
      for (List<Moment> pass : station.phases().subList(0, 2)) {
        assertTrue(pass.get(0).time() < 0, "felt before the arc is there");
        assertTrue(pass.get(pass.size() - 1).time() > 0, "cools after it");
      }
    }
  }

  @Test
  void theArcLiesWithinTheCycleAlsoAfterPreheating() {
    WeldCase warm = TREATED.withPasses(Cases.pass(110, 3e-3, 393.15)).weldCase();
    AtStation near =
        new WeldSession()
            .weld(warm).replay(warm, () -> false).stations().stream()
                .filter(station -> station.distance() > 0.008)
                .findFirst()
                .orElseThrow();
    Moment first = near.phases().get(0).get(0);
    assertTrue(first.time() < -420, "5 min of preheating and 2 of waiting: " + first.time());
    assertEquals(298.15, first.temperature(), 1e-9);
    assertTrue(peakTime(near.phases().get(0)) > 0);
  }
}
