package afterweld.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import afterweld.section.AgeingTrial;
import afterweld.section.Cases;
import afterweld.section.OverageingLimit;
import afterweld.section.Welded;
import afterweld.strength.Strength;
import afterweld.thermal.furnace.FurnaceStep;
import afterweld.thermal.furnace.FurnaceStep.Age;
import afterweld.thermal.furnace.FurnaceStep.Ramp;
import afterweld.weld.Side;
import afterweld.weld.Warning;
import afterweld.weld.WeldCase;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AgeingStudyTest {
  private static final AgeingStudy STUDY =
      AgeingStudy.of(
          Welded.SESSION, Cases.butt("6061", "T6").then(Cases.fullTreatment("6061")).weldCase());

  private static int peak(AgeingStudy.Curve curve) {
    List<Strength> strengths = curve.strengths();
    int best = 0;
    for (int i = 1; i < strengths.size(); i++) {
      best = strengths.get(i).yield() > strengths.get(best).yield() ? i : best;
    }
    return best;
  }

  @Test
  void hotterAgesFasterAndPeaksNoHigherThanAFewPercent() {
    // Ageing curves of 6061 (handbooks): the peak comes sooner at higher temperature.
    List<AgeingStudy.Curve> base =
        STUDY.curves().stream().filter(curve -> curve.metal().equals("left")).toList();
    assertEquals(5, base.size());
    for (int i = 1; i < base.size(); i++) {
      assertTrue(peak(base.get(i)) <= peak(base.get(i - 1)), "curve " + i);
    }
  }

  @Test
  void theScheduleReachesNearlyThePeak() {
    AgeingStudy.Window window = STUDY.windows().get(0);
    // 177 °C for 8 h makes T6; the model has it slightly underaged.
    double share = window.scheduled() / window.peak();
    assertTrue(share > 0.93 && share <= 1, "share " + share);
    assertTrue(window.from() < window.to());
  }

  @Test
  void aHotterPaintOvenCostsMore() {
    List<AgeingStudy.Paint> base =
        STUDY.paint().stream().filter(paint -> paint.metal().equals("left")).toList();
    assertTrue(base.get(3).share() < base.get(0).share());
    assertTrue(base.get(3).share() > 0.85, "half an hour at 220 °C leaves most");
  }

  @Test
  void workHardenedMetalDoesNotAnswer() {
    AgeingStudy none = AgeingStudy.of(Welded.SESSION, Cases.butt("5083", "H116").weldCase());
    assertTrue(none.schedule().isEmpty() && none.curves().isEmpty());
  }

  @Test
  void theWindowLiesBetweenTheComputedTimes() {
    AgeingStudy.Window window = STUDY.windows().get(0);
    AgeingStudy.Curve curve =
        STUDY.curves().stream()
            .filter(one -> one.metal().equals("left"))
            .filter(one -> one.temperature() == STUDY.schedule().orElseThrow().temperature())
            .findFirst()
            .orElseThrow();
    assertFalse(curve.hours().contains(window.from()), "from " + window.from());
    assertFalse(curve.hours().contains(window.to()), "to " + window.to());
    assertTrue(window.answers());
  }

  @Test
  void heldTimeIsInterpolatedOverTheLogarithmOfTime() {
    HeldTime held = HeldTime.of(List.of(1.0, 10.0, 100.0, 1000.0), new double[] {0, 2, 2, 0}, 1);
    assertEquals(Math.sqrt(10), held.from(), 1e-9);
    assertEquals(100 * Math.sqrt(10), held.to(), 1e-9);
    HeldTime always = HeldTime.of(List.of(1.0, 10.0), new double[] {2, 2}, 1);
    assertEquals(new HeldTime(1, 10), always);
  }

  // Yield of reheated 6061-T6 extrusions against the minimum of 240 MPa (35 ksi): at 350 °F it was
  // not reached in 64 h, at 390 °F after 16 h, at 425 °F after 4 h (Donovan, Fortune, Trout,
  // California Polytechnic State University 2015).
  private static double reheated(double celsius, double hours) {
    WeldCase weldCase = Cases.butt("6061", "T6").weldCase();
    return AgeingTrial.base(weldCase, weldCase.left(), List.of())
        .at(ageing(celsius), List.of(hours * 3600))
        .get(0)
        .yield();
  }

  private static Age ageing(double celsius) {
    return new Age(celsius + 273.15, 1, Ramp.BY_FURNACE, true);
  }

  @Test
  void t6KeepsItsMinimumAt350FahrenheitAsPublished() {
    assertTrue(reheated(176.7, 64) > 240e6);
  }

  @ParameterizedTest
  @CsvSource({"198.9, 16", "218.3, 4"})
  void t6LosesItsMinimumWithinHalfOfThePublishedTime(double celsius, double hours) {
    assertTrue(reheated(celsius, hours / 1.5) > 240e6);
    assertTrue(reheated(celsius, hours * 1.5) < 240e6);
  }

  @Test
  void whatTheCurvesCannotBeTrustedForIsSaid() {
    List<String> codes = STUDY.warnings().stream().map(Warning::code).toList();
    assertEquals(List.of("ageing-slow", "overageing-limit"), codes);
    assertEquals(
        List.of("casting-ageing", "overageing-limit"),
        AgeingStudy.of(Welded.SESSION, Cases.butt("A356", "T6").weldCase()).warnings().stream()
            .map(Warning::code)
            .toList());
    assertTrue(
        AgeingStudy.of(Welded.SESSION, Cases.butt("5083", "H116").weldCase()).warnings().isEmpty());
  }

  private static List<Strength> agedT6(double celsius) {
    WeldCase weldCase = Cases.butt("6061", "T6").weldCase();
    List<Double> times = STUDY.curves().get(0).hours().stream().map(hour -> hour * 3600).toList();
    return OverageingLimit.claimed(
        AgeingTrial.base(weldCase, weldCase.left(), List.of()).at(ageing(celsius), times));
  }

  /** What the published tests reached is given; what lies far beyond them is not. */
  @ParameterizedTest
  @CsvSource({"177, 64, 300", "192, 16, 99", "207, 4, 25", "235, 0.5, 6.3"})
  void overagedMetalHasAValueAsFarAsTestsGoAndNoFurther(
      double celsius, double tested, double beyond) {
    List<Double> hours = STUDY.curves().get(0).hours();
    List<Strength> aged = agedT6(celsius);
    for (int i = 0; i < hours.size(); i++) {
      String where = celsius + " °C " + hours.get(i) + " h";
      if (hours.get(i) <= tested) {
        assertTrue(aged.get(i).predicted(), where);
      } else if (hours.get(i) >= 0.98 * beyond) {
        assertFalse(aged.get(i).predicted(), where);
      }
    }
  }

  private static AgeingStudy aged(String temper) {
    return AgeingStudy.of(
        Welded.SESSION,
        Cases.butt("6061", temper)
            .then(List.of(new Age(450, 8 * 3600, Ramp.BY_FURNACE, false)))
            .weldCase());
  }

  /** Fact of the trade: annealed metal holds nothing that ageing alone could harden. */
  @Test
  void annealedMetalHasNothingToAgeAndSoNoWindow() {
    AgeingStudy annealed = aged("O");
    AgeingStudy.Window base = annealed.windows().get(0);
    assertTrue(base.nothingToAge() && !base.answers());
    assertTrue(Double.isNaN(base.from()) && Double.isNaN(base.to()));
    assertTrue(annealed.curves().stream().noneMatch(curve -> curve.metal().equals("left")));
    assertFalse(aged("T6").windows().get(0).nothingToAge());
    assertFalse(aged("T4").windows().get(0).nothingToAge());
    assertTrue(aged("T4").windows().get(0).answers());
  }

  /** A thick part heats slowly, and ages on the way: the curves count that as the section does. */
  @ParameterizedTest
  @CsvSource({"A356, 246, 3", "6061, 205, 1"})
  void theScheduleReachesWhatTheSectionHas(String alloy, double celsius, double hours) {
    List<FurnaceStep> steps = new ArrayList<>(Cases.fullTreatment(alloy));
    steps.set(steps.size() - 1, new Age(celsius + 273.15, hours * 3600, Ramp.BY_FURNACE, true));
    Side thick = Cases.side(alloy, "T6", 0.010);
    Cases cases = Cases.butt(alloy, "T6").withLeft(thick).withRight(thick).then(steps);
    double there =
        Welded.SESSION
            .profile(cases.weldCase())
            .stations()
            .get(0)
            .estimates()
            .get(2)
            .middle()
            .yield();
    assertEquals(
        there,
        AgeingStudy.of(Welded.SESSION, cases.weldCase()).windows().get(0).scheduled(),
        0.001 * there);
  }

  /** Metal that comes aged is one number to the curves, to the fillers and to the section. */
  @ParameterizedTest
  @CsvSource({"6063, T5", "6005A, T6"})
  void aSecondAgeingOfAgedBaseIsOneNumber(String alloy, String temper) {
    WeldCase weldCase =
        Cases.butt(alloy, temper)
            .then(List.of(new Age(448.15, 4 * 3600, Ramp.BY_FURNACE, false)))
            .weldCase();
    double there =
        Welded.SESSION.profile(weldCase).stations().get(0).estimates().get(2).middle().yield();
    assertEquals(
        there, AgeingStudy.of(Welded.SESSION, weldCase).windows().get(0).scheduled(), 0.02 * there);
    assertEquals(
        there,
        Welded.SESSION.weldMetal(weldCase).base(weldCase.left()).treated().yield(),
        0.02 * there);
  }
}
