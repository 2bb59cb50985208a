package afterweld.choice.schedule;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import afterweld.choice.CaseObjections;
import afterweld.choice.FurnaceSheet;
import afterweld.choice.answer.Objection;
import afterweld.choice.answer.Objection.Severity;
import afterweld.choice.answer.Requirement;
import afterweld.choice.filler.FillerPurpose;
import afterweld.choice.practice.HardeningAge;
import afterweld.choice.practice.StandardTreatment;
import afterweld.material.Alloy;
import afterweld.material.MaterialLibrary;
import afterweld.quantity.UnitSystem;
import afterweld.section.Cases;
import afterweld.section.Welded;
import afterweld.section.WrittenWelds;
import afterweld.thermal.furnace.FurnaceStep;
import afterweld.thermal.furnace.FurnaceStep.Age;
import afterweld.thermal.furnace.FurnaceStep.Anneal;
import afterweld.thermal.furnace.FurnaceStep.Furnace;
import afterweld.thermal.furnace.FurnaceStep.NaturalAge;
import afterweld.thermal.furnace.FurnaceStep.Quench;
import afterweld.thermal.furnace.FurnaceStep.QuenchAtRate;
import afterweld.thermal.furnace.FurnaceStep.Ramp;
import afterweld.thermal.furnace.FurnaceStep.SolutionTreat;
import afterweld.thermal.furnace.QuenchMedium;
import afterweld.weld.WeldCase;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Limits: furnace practice of the trade (MIL-H-6088, AMS 2770, AMS 2771), from memory. */
class ScheduleCheckTest {
  /** An alloy that is added and hardens needs its line in quench_rates.csv. */
  @Test
  void theSlowestQuenchOfEveryHardeningBaseIsKnown() {
    MaterialLibrary.standard().bases().stream()
        .filter(Alloy::heatTreatable)
        .forEach(
            alloy ->
                assertTrue(
                    FurnaceLimits.slowestQuench(alloy).isPresent(),
                    alloy.name() + " has no line in afterweld/choice/schedule/quench_rates.csv"));
  }

  private static final SolutionTreat SOLUTION = solution(530, 60);
  private static final Quench WATER = water(25, 7);
  private static final NaturalAge HOLD = new NaturalAge(7200);
  private static final NaturalAge MONTH = new NaturalAge(30 * 86_400.0);
  private static final Age AGE = age(177, 8 * 60);

  private static SolutionTreat solution(double celsius, double minutes) {
    return new SolutionTreat(celsius + 273.15, minutes * 60, Furnace.AIR);
  }

  private static Quench water(double celsius, double delay) {
    return new Quench(QuenchMedium.WATER, celsius + 273.15, delay);
  }

  private static Age age(double celsius, double minutes) {
    return new Age(celsius + 273.15, minutes * 60, Ramp.BY_FURNACE, false);
  }

  private static Cases plate(String alloy, String temper, double millimetres) {
    return Cases.butt(alloy, temper)
        .withLeft(Cases.side(alloy, temper, millimetres / 1000))
        .withRight(Cases.side(alloy, temper, millimetres / 1000))
        .withFiller(Cases.filler("4643", 0.3));
  }

  private static List<String> objected(Cases cases, FurnaceStep... steps) {
    WeldCase treated = cases.then(List.of(steps)).weldCase();
    return ScheduleCheck.of(treated, Requirement.NONE, Severity.OBJECTED);
  }

  private static void assertObjected(String word, Cases cases, FurnaceStep... steps) {
    List<String> found = objected(cases, steps);
    assertTrue(found.stream().anyMatch(text -> text.contains(word)), found.toString());
  }

  @Test
  void theUsualFullTreatmentPassesWithoutARemark() {
    WeldCase usual = plate("6061", "T6", 6).then(List.of(SOLUTION, WATER, HOLD, AGE)).weldCase();
    assertEquals(List.of(), ScheduleCheck.of(usual, Requirement.NONE));
    WeldCase welded = plate("6061", "T6", 6).weldCase();
    assertEquals(List.of(), ScheduleCheck.of(welded, Requirement.NONE));
  }

  /** Powder coat after a full treatment is ordinary work; these metals are aged in one hold. */
  @Test
  void aCoatingMayBeBakedAfterTheAgeing() {
    Cases plate = plate("6061", "T6", 6);
    Age bake = age(200, 20);
    assertEquals(List.of(), objected(plate, SOLUTION, WATER, HOLD, AGE, bake, bake));
    assertObjected("Aged twice", plate, SOLUTION, WATER, HOLD, AGE, AGE);
    assertObjected("Aged twice", plate, SOLUTION, WATER, HOLD, age(100, 240), AGE);
  }

  /** AMS 2770, from memory: 6061 sheet comes to T6 in 18 h at 160 °C. */
  @Test
  void aCoolerAgeingOfTheTradeIsNotCalledShort() {
    WeldCase sheet =
        plate("6061", "T4", 6).then(List.of(SOLUTION, WATER, HOLD, age(160, 18 * 60))).weldCase();
    assertEquals(List.of(), ScheduleCheck.of(sheet, Requirement.NONE));
    assertTrue(
        Welded.SESSION.thinProfile(sheet).warnings().stream()
            .anyMatch(warning -> warning.code().equals("cool-ageing")));
  }

  @Test
  void theAgeingThatHardensIsTheOneAsHotAsTheTradeAges() {
    assertEquals(
        4, HardeningAge.place(List.of(SOLUTION, WATER, HOLD, age(100, 240), AGE)).getAsInt());
    assertEquals(
        3, HardeningAge.place(List.of(SOLUTION, WATER, HOLD, AGE, age(200, 20))).getAsInt());
    assertEquals(3, HardeningAge.place(List.of(AGE, SOLUTION, WATER, AGE)).getAsInt());
    assertEquals(0, HardeningAge.place(List.of(age(190, 20))).getAsInt());
    assertTrue(HardeningAge.place(List.of(SOLUTION, WATER)).isEmpty());
  }

  @Test
  void aSolutionTreatmentWipesOutWhatWasBeforeIt() {
    Cases plate = plate("6061", "T6", 6);
    assertObjected("wiped out", plate, AGE, SOLUTION, WATER, MONTH);
    assertObjected("Aged twice", plate, AGE, AGE);
    assertObjected("Aged twice", plate, SOLUTION, WATER, HOLD, AGE, AGE);
    assertObjected(
        "annealing undoes",
        plate,
        SOLUTION,
        WATER,
        HOLD,
        AGE,
        new Anneal(688.15, 9000, OptionalDouble.of(0.008)));
  }

  /** Bare metal that missed its hardness may be treated again (AMS 2770, from memory). */
  @Test
  void aTreatmentDoneOverAgainIsNoted() {
    List<FurnaceStep> twice = List.of(SOLUTION, WATER, HOLD, AGE, SOLUTION, WATER, HOLD, AGE);
    WeldCase again = plate("6061", "T6", 6).then(twice).weldCase();
    assertEquals(List.of(), ScheduleCheck.of(again, Requirement.NONE, Severity.OBJECTED));
    String noted = String.join(" ", ScheduleCheck.of(again, Requirement.NONE, Severity.NOTED));
    assertTrue(noted.contains("Solution treated 2 times"), noted);
  }

  /** The quench that counts is the last one. */
  @Test
  void nothingIsHeldAgainstAStepThatIsWipedOut() {
    List<String> found =
        objected(
            plate("6061", "T6", 6), SOLUTION, water(25, 30), HOLD, AGE, SOLUTION, WATER, HOLD, AGE);
    assertTrue(found.stream().noneMatch(text -> text.contains("delay")), found.toString());
    assertObjected("delay", plate("6061", "T6", 6), SOLUTION, water(25, 30), HOLD, AGE);
  }

  /** AMS 2770, from memory: 28 °C/h down to 260 °C; faster cooled metal is not fully soft. */
  @ParameterizedTest
  @CsvSource({"28, false", "30, false", "167, true", "1100, true"})
  void anAnnealIsCooledSlowly(double kelvinPerHour, boolean fast) {
    Anneal anneal = new Anneal(686.15, 9000, OptionalDouble.of(kelvinPerHour / 3600));
    WeldCase soft = plate("6063", "T5", 4).then(List.of(anneal)).weldCase();
    assertEquals(
        fast,
        ScheduleCheck.of(soft, Requirement.NONE).stream()
            .anyMatch(one -> one.text().startsWith("Cooled faster")));
  }

  /** 530 °C and 8 h at 175 °C is 6082's own schedule: only the wait before the ageing differs. */
  @ParameterizedTest
  @CsvSource({"1", "3", "24"})
  void aBaseDoesNotSufferByTheWaitBeforeItsOwnAgeing(double hours) {
    WeldCase pair =
        plate("6351", "T6", 8)
            .withRight(Cases.side("6082", "T6", 0.006))
            .then(List.of(SOLUTION, WATER, new NaturalAge(hours * 3600), age(175, 8 * 60)))
            .weldCase();
    List<Objection> found = ScheduleCheck.of(pair, Requirement.NONE);
    assertTrue(found.stream().noneMatch(one -> one.text().contains("suffers")), found.toString());
  }

  /** Huang et al. 2023 and Balanovic et al. 2019: a wait costs 6005A and helps 6060. */
  @ParameterizedTest
  @CsvSource({"6061, 24, false", "6061, 72, true", "A356, 72, false"})
  void aLongWaitBeforeTheAgeingIsSaidNotToBeKnown(String alloy, double hours, boolean said) {
    WeldCase waits =
        plate(alloy, "T6", 6)
            .then(List.of(SOLUTION, WATER, new NaturalAge(hours * 3600), AGE))
            .weldCase();
    assertEquals(
        said,
        Welded.SESSION.thinProfile(waits).warnings().stream()
            .anyMatch(warning -> warning.code().equals("wait-before-ageing")));
  }

  @Test
  void onlyMetalInSolutionAges() {
    assertObjected("Ageing does nothing for annealed 6061", plate("6061", "O", 6), AGE);
    assertObjected(
        "Ageing does nothing",
        plate("6061", "T6", 6),
        new Anneal(688.15, 9000, OptionalDouble.of(0.008)),
        AGE);
    assertEquals(List.of(), objected(plate("6061", "O", 6), SOLUTION, WATER, HOLD, AGE));
    assertEquals(List.of(), objected(plate("6061", "T4", 6), AGE));
  }

  /** 6082 is annealed at 380 to 420 °C (data sheet), 3003 at 345 °C (common practice). */
  @Test
  void metalIsNotAnnealedInACoolFurnace() {
    Anneal cool = new Anneal(232 + 273.15, 3600, OptionalDouble.of(0.008));
    assertObjected("too cold", plate("6061", "T6", 6), cool);
    assertObjected("is cold", plate("3003", "H14", 3), cool);
    assertEquals(
        List.of(),
        objected(plate("3003", "H14", 3), new Anneal(345 + 273.15, 3600, OptionalDouble.of(0.02))));
    assertEquals(
        List.of(),
        objected(plate("6061", "T6", 6), new Anneal(413 + 273.15, 9000, OptionalDouble.of(0.008))));
  }

  /** 2 to 3 h for metal that hardens, no hold for the other: AMS 2770 practice, from memory. */
  @Test
  void aBriefAnnealOfMetalThatHardensIsARemark() {
    Anneal brief = new Anneal(413 + 273.15, 300, OptionalDouble.empty());
    WeldCase short6061 = steps(plate("6061", "T6", 5), brief);
    List<String> noted = ScheduleCheck.of(short6061, Requirement.NONE, Severity.NOTED);
    assertTrue(noted.get(0).startsWith("An anneal of 5 min is short"), noted.toString());
    assertEquals(1, ScheduleCheck.of(short6061, Requirement.NONE).size(), "a remark, no objection");
    assertEquals(
        List.of(), ScheduleCheck.of(steps(plate("5086", "H34", 5), brief), Requirement.NONE));
    Anneal hour = new Anneal(413 + 273.15, 3600, OptionalDouble.empty());
    assertEquals(
        List.of(), ScheduleCheck.of(steps(plate("6061", "T6", 5), hour), Requirement.NONE));
  }

  private static WeldCase steps(Cases cases, FurnaceStep... steps) {
    return cases.then(List.of(steps)).weldCase();
  }

  /** Powder coats are baked on T4 parts too (common practice): no ageing that was ordered short. */
  @Test
  void theBakeOfACoatingOnMetalThatAgesIsARemark() {
    Cases naturallyAged = plate("6063", "T4", 3);
    assertEquals(List.of(), objected(naturallyAged, age(190, 30)));
    assertObjected("stays far under", naturallyAged, age(177, 60));
  }

  @Test
  void theThickerPartSoaks() {
    assertObjected("at least 90 min", plate("6061", "T6", 25), solution(530, 25), WATER, HOLD, AGE);
    Cases unlike = plate("6061", "T6", 40).withRight(Cases.side("6061", "T6", 0.003));
    List<String> found = objected(unlike, SOLUTION, WATER, HOLD, AGE);
    assertEquals(1, found.size(), found.toString());
    assertTrue(found.get(0).contains("150 min for the thicker part"), found.get(0));
  }

  @ParameterizedTest
  @CsvSource({"6061, 15, false", "6061, 16, true", "A356, 45, false", "A356, 60, true"})
  void castingsHaveTheirOwnQuenchDelay(String alloy, double delay, boolean late) {
    boolean cast = alloy.equals("A356");
    Cases plate = plate(alloy, "T6", 10).withFiller(Cases.filler("4008", 0.3));
    List<String> found =
        objected(
            plate,
            cast ? solution(540, 480) : SOLUTION,
            water(cast ? 65 : 25, delay),
            HOLD,
            cast ? age(155, 600) : AGE);
    assertEquals(late, found.stream().anyMatch(text -> text.contains("delay")), found.toString());
  }

  @Test
  void aSlowRateIsObjectedToLikeStillAir() {
    Cases plate = plate("6061", "T6", 6);
    Quench air = new Quench(QuenchMedium.STILL_AIR, 298.15, 7);
    assertObjected("slower than", plate, SOLUTION, air, HOLD, AGE);
    assertObjected("slower than", plate, SOLUTION, new QuenchAtRate(0.5), HOLD, AGE);
    assertEquals(List.of(), objected(plate, SOLUTION, new QuenchAtRate(50), HOLD, AGE));
  }

  @ParameterizedTest
  @CsvSource({
    "177, 20, true",
    "177, 480, false",
    "204, 60, false",
    "160, 1080, false",
    "177, 6000, true",
    "120, 480, true",
    "250, 480, true"
  })
  void ageingHasATimeAtEveryTemperature(double celsius, double minutes, boolean wrong) {
    List<String> found =
        objected(plate("6061", "T6", 6), SOLUTION, WATER, HOLD, age(celsius, minutes));
    assertEquals(wrong, !found.isEmpty(), found.toString());
  }

  @Test
  void metalThatDoesNotHardenComesFirst() {
    // Handbook, Aluminum Association typical values: 5052-H32 193 MPa, O 90 MPa.
    Cases unlike = plate("6061", "T6", 6).withRight(Cases.side("5052", "H32", 0.006));
    List<String> found = objected(unlike, solution(530, 20), WATER, HOLD, AGE);
    assertTrue(found.get(0).startsWith("5052 does not harden"), found.toString());
    assertTrue(found.get(0).contains("193 MPa") && found.get(0).contains("90 MPa"), found.get(0));
    assertTrue(found.stream().noneMatch(text -> text.contains("5052: at least")));
  }

  @Test
  void aFillerWithMuchMagnesiumIsRefused() {
    WeldCase rich =
        plate("6061", "T6", 6)
            .withFiller(Cases.filler("5356", 0.3))
            .then(List.of(SOLUTION, WATER, HOLD, AGE))
            .weldCase();
    assertEquals(1, ScheduleCheck.of(rich, Requirement.NONE, Severity.REFUSED).size());
  }

  @Test
  void aFillerThatDoesNotSuitStandsFirst() {
    // Common practice: no filler with more than 3 % Mg is aged after welding.
    WeldCase aged =
        plate("6061", "T6", 6).withFiller(Cases.filler("5356", 0.3)).then(List.of(AGE)).weldCase();
    Objection first = CaseObjections.serious(aged, Requirement.NONE).get(0);
    assertEquals(Objection.Subject.FILLER, first.subject());
    assertTrue(first.text().contains("ore than 3 % Mg"), first.text());
    WeldCase usual = plate("6061", "T6", 6).then(List.of(AGE)).weldCase();
    assertEquals(List.of(), CaseObjections.serious(usual, Requirement.NONE));
  }

  @Test
  void theStandardTreatmentStandsUpToItsOwnCheckEitherWayRound() {
    for (String left : List.of("6061", "6063", "6082", "6005A", "6060", "6351", "A356", "A357")) {
      Cases alike = plate(left, "T6", 6);
      assertStandardPasses(alike);
      assertStandardPasses(alike.withRight(Cases.side("A356", "T6", 0.010)));
      assertStandardPasses(plate("A356", "T6", 10).withRight(Cases.side(left, "T6", 0.006)));
    }
  }

  private static void assertStandardPasses(Cases cases) {
    WeldCase weldCase = cases.weldCase();
    WeldCase treated = weldCase.withAfterWeld(StandardTreatment.full(weldCase).orElseThrow());
    assertEquals(
        List.of(),
        ScheduleCheck.of(treated, Requirement.NONE, Severity.OBJECTED),
        weldCase.left().alloy().name() + " to " + weldCase.right().alloy().name());
  }

  /** Powder coatings are baked 10 to 30 min at 180 to 210 °C: common practice, from memory. */
  @ParameterizedTest
  @CsvSource({"200,20", "180,30", "210,10"})
  void theBakeOfACoatingOnAgedMetalIsNotedAndNoShortAge(double celsius, double minutes) {
    WeldCase baked =
        plate("6061", "T6", 3)
            .withFiller(Cases.filler("5356", 0.3))
            .then(List.of(age(celsius, minutes)))
            .weldCase();
    assertEquals(List.of(), CaseObjections.serious(baked, Requirement.NONE));
    String noted = String.join(" ", ScheduleCheck.of(baked, Requirement.NONE, Severity.NOTED));
    assertTrue(noted.contains("bake of a coating"), noted);
    String sheet =
        FurnaceSheet.of(baked, Requirement.NONE, UnitSystem.METRIC, Welded.SESSION::profile)
            .orElseThrow()
            .lines()
            .toString();
    assertFalse(sheet.contains("8 h"), sheet);
    assertTrue(sheet.contains("Bake"), sheet);
    assertEquals(FillerPurpose.Heat.SOFT, FillerPurpose.of(baked, Requirement.NONE).heat());
  }

  @Test
  void aShortAgeOfMetalInSolutionIsNoBake() {
    assertObjected("short of", plate("6061", "T6", 3), SOLUTION, WATER, HOLD, age(200, 20));
  }

  @Test
  void twoBakesOfAnAgedPlateAreNotAgedTwice() {
    assertTrue(objected(plate("6061", "T6", 3), age(180, 20), age(200, 15)).isEmpty());
  }

  /** Published reheating tests are of T6 (Donovan et al. 2015); metal in T5 was never so strong. */
  @Test
  void howLongT5KeepsItsStrengthIsNotClaimed() {
    Age longHeld = age(204, 30 * 60);
    assertObjected("the strength of T6 lasts there", plate("6063", "T6", 3), longHeld);
    assertEquals(List.of(), objected(plate("6063", "T5", 3), longHeld));
    WeldCase aged = plate("6063", "T5", 3).then(List.of(longHeld)).weldCase();
    assertTrue(
        ScheduleCheck.of(aged, Requirement.NONE, Severity.NOTED).stream()
            .anyMatch(text -> text.contains("how long T5 keeps its own")));
  }

  /** Salt baths are for open work: trapped moisture erupts (cautions of the trade). */
  @Test
  void aTubeInASaltBathIsRemarkedOn() {
    String tube =
        """
        left: {alloy: "6061", temper: T6, thickness: 3 mm}
        joint: butt
        ring: {diameter: 76 mm}
        filler: {alloy: "4643", dilution: 40 %}
        after_weld:
          - solution_treat: {temperature: 530 °C, soak: 35 min, furnace: FURNACE}
          - quench: {medium: water, temperature: 25 °C, delay: 5 s}
          - age: {temperature: 177 °C, time: 8 h}
        """;
    String pass = "process: GTAW-AC, current: 140 A, voltage: 14 V, travel_speed: 4 mm/s";
    WeldCase salt = WrittenWelds.of(tube.replace("FURNACE", "salt"), pass, 1);
    WeldCase air = WrittenWelds.of(tube.replace("FURNACE", "air"), pass, 1);
    assertTrue(ScheduleCheck.of(salt, Requirement.NONE).toString().contains("salt bath only open"));
    assertFalse(ScheduleCheck.of(air, Requirement.NONE).toString().contains("salt bath only open"));
  }
}
