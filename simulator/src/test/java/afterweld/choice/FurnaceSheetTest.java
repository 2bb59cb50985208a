package afterweld.choice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import afterweld.choice.answer.Objection;
import afterweld.choice.answer.Requirement;
import afterweld.choice.practice.FurnacePractice;
import afterweld.choice.schedule.FurnaceOrder;
import afterweld.quantity.UnitSystem;
import afterweld.section.Cases;
import afterweld.section.Welded;
import afterweld.strength.HardnessScale;
import afterweld.thermal.furnace.FurnaceStep;
import afterweld.thermal.furnace.FurnaceStep.Age;
import afterweld.thermal.furnace.FurnaceStep.NaturalAge;
import afterweld.thermal.furnace.FurnaceStep.Quench;
import afterweld.thermal.furnace.FurnaceStep.Ramp;
import afterweld.thermal.furnace.FurnaceStep.SolutionTreat;
import afterweld.thermal.furnace.QuenchMedium;
import afterweld.weld.WeldCase;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class FurnaceSheetTest {
  private static FurnaceSheet sheet(Cases cases) {
    return of(cases.weldCase()).orElseThrow();
  }

  private static FurnaceSheet treated(String alloy, FurnaceStep... steps) {
    return sheet(Cases.butt(alloy, "T6").then(List.of(steps)));
  }

  static String text(FurnaceSheet sheet, String what) {
    return sheet.lines().stream()
        .filter(line -> line.what().equals(what))
        .map(FurnaceSheet.Line::text)
        .findFirst()
        .orElseThrow();
  }

  @Test
  void limitsFollowThicknessWithTheirSource() {
    // MIL-H-6088 tables, from memory: 3 mm soaks 40 min in air, waits at most 15 s.
    FurnaceSheet sheet = sheet(Cases.butt("6061", "T6"));
    assertFalse(sheet.ownSchedule());
    assertTrue(
        text(sheet, "Soak").contains("40 min for 3 mm (0.12 in) (MIL-H-6088"), text(sheet, "Soak"));
    assertTrue(text(sheet, "Quench").contains("the limit is 15 s"), text(sheet, "Quench"));
    assertEquals(10, FurnacePractice.of("longest quench delay", 0.001).value());
  }

  @Test
  void expectedHardnessIsThatOfT6() {
    FurnaceSheet sheet = sheet(Cases.butt("6061", "T6").withFiller(Cases.filler("4643", 0.4)));
    // 6061-T6 typical 95 HB (Aluminum Association), 10 %.
    FurnaceSheet.Expected base = sheet.expected().get(0);
    assertEquals(95, base.brinell(), 9.5);
    assertTrue(base.recheck().limit() < base.vickers());
    assertEquals(3, sheet.expected().size());
  }

  @Test
  void aScheduleThatWouldMeltIsRefused() {
    List<FurnaceStep> hot =
        List.of(
            new FurnaceStep.SolutionTreat(555 + 273.15, 3600, FurnaceStep.Furnace.AIR),
            new FurnaceStep.Quench(QuenchMedium.WATER, 298.15, 7));
    FurnaceSheet sheet = sheet(Cases.butt("6061", "T6").then(hot));
    assertEquals(1, sheet.refusals().size());
    assertTrue(sheet.expected().isEmpty());
  }

  @Test
  void workHardenedJointsHaveNoSheet() {
    assertTrue(of(Cases.butt("5083", "H116").weldCase()).isEmpty());
  }

  private static final Quench WATER = new Quench(QuenchMedium.WATER, 298.15, 7);

  private static Age age(double celsius, double hours, Ramp ramp) {
    return new Age(celsius + 273.15, hours * 3600, ramp, false);
  }

  private static SolutionTreat solution(double hours) {
    return new SolutionTreat(530 + 273.15, hours * 3600, FurnaceStep.Furnace.AIR);
  }

  private static boolean says(FurnaceSheet sheet, String words) {
    return sheet.lines().stream().anyMatch(line -> line.text().contains(words));
  }

  @Test
  void everythingOrderedIsOnTheSheet() {
    Ramp slow = new Ramp(OptionalDouble.empty(), OptionalDouble.of(30 / 3600.0));
    FurnaceSheet sheet = treated("6061", solution(2.5), WATER, age(177, 4.5, slow));
    assertTrue(text(sheet, "Soak").startsWith("2.5 h as ordered"), text(sheet, "Soak"));
    assertTrue(text(sheet, "Ageing").contains("for 4.5 h as ordered"), text(sheet, "Ageing"));
    assertTrue(text(sheet, "Ageing").contains("30 °C/h (54 °F/h)"), text(sheet, "Ageing"));
    assertTrue(
        sheet.objections().stream()
            .noneMatch(one -> one.severity() == Objection.Severity.OBJECTED));
  }

  @Test
  void whatIsOutsideTheLimitsIsObjectedTo() {
    // 3 mm: 40 min in air, 15 s (MIL-H-6088, from memory); usual ageing up to 205 °C.
    Quench lateAndHot = new Quench(QuenchMedium.WATER, 333.15, 20);
    FurnaceSheet sheet =
        treated("6061", solution(1 / 6.0), lateAndHot, age(250, 24, Ramp.BY_FURNACE));
    List<Objection> found = sheet.objections();
    assertEquals(4, found.size(), found.toString());
    assertTrue(found.get(0).text().contains("at least 40 min"), found.toString());
    assertTrue(text(sheet, "Soak").startsWith("At least 40 min"), text(sheet, "Soak"));
    assertTrue(text(sheet, "Quench").contains("(ordered: 20 s)"), text(sheet, "Quench"));
    assertTrue(text(sheet, "Quench").contains("at most 38 °C"), text(sheet, "Quench"));
    assertTrue(text(sheet, "Ageing").startsWith("177 °C"), text(sheet, "Ageing"));
    assertEquals(List.of(), sheet.expected());
    assertTrue(sheet.onHardness().contains(FurnaceSheet.NOTHING_EXPECTED));
  }

  @Test
  void ageingAloneSpeaksOfNoQuench() {
    FurnaceSheet sheet =
        sheet(Cases.butt("6061", "T4").then(List.of(age(177, 8, Ramp.BY_FURNACE))));
    assertFalse(says(sheet, "quench"), sheet.lines().toString());
    assertFalse(says(sheet, "T62"), sheet.lines().toString());
    assertTrue(
        sheet.expected().stream()
            .noneMatch(one -> one.recheck().means().contains("solution treatment")));
    assertTrue(sheet.warnings().stream().anyMatch(text -> text.contains("without solution")));
  }

  @Test
  void theReadingFindsAPartThatMissedItsAgeing() {
    FurnaceSheet sheet =
        sheet(Cases.butt("6061", "T4").then(List.of(age(177, 8, Ramp.BY_FURNACE))));
    FurnaceSheet.Expected base = sheet.expected().get(0);
    // 6061-T4, 65 HB typical (Aluminum Association, from memory), is about 75 HV.
    assertTrue(base.recheck().limit() > 75, base.toString());
    assertTrue(base.recheck().limit() < base.vickers(), base.toString());
    assertTrue(base.recheck().means().contains("missed"), base.recheck().means());
  }

  /** A part that was not annealed reads hard (common practice: O metal is checked for softness). */
  @Test
  void anAnnealIsCheckedForHardReadings() {
    FurnaceStep anneal = new FurnaceStep.Anneal(413 + 273.15, 9000, OptionalDouble.of(28.0 / 3600));
    FurnaceSheet.Recheck recheck =
        sheet(Cases.butt("6061", "T6").then(List.of(anneal))).expected().get(0).recheck();
    assertTrue(recheck.over(), recheck.toString());
    assertTrue(recheck.limit() < 60, recheck.toString());
    assertTrue(recheck.means().contains("not annealed"), recheck.means());
  }

  /** Only metal that hardens by heat treatment is cooled slowly (ASM, from memory). */
  @Test
  void anAnnealOrdersACoolingOnlyWhereItCountsOrIsStated() {
    String hardening = annealing("6061", "T6", OptionalDouble.empty());
    assertTrue(hardening.contains("cooled at 28 °C/h"), hardening);
    assertTrue(hardening.contains("states no cooling"), hardening);
    String worked = annealing("5086", "H34", OptionalDouble.empty());
    assertFalse(worked.contains("cool"), worked);
    String stated = annealing("5086", "H34", OptionalDouble.of(30.0 / 3600));
    assertTrue(stated.contains("cooled at 30 °C/h"), stated);
    assertFalse(stated.contains("states no cooling"), stated);
  }

  private static String annealing(String alloy, String temper, OptionalDouble cooling) {
    FurnaceStep anneal = new FurnaceStep.Anneal(413 + 273.15, 9000, cooling);
    WeldCase weldCase = Cases.butt(alloy, temper).then(List.of(anneal)).weldCase();
    FurnaceOrder order = new FurnaceOrder(weldCase, true);
    return new FurnaceInstruction(order, UnitSystem.METRIC, false)
        .lines().stream()
            .filter(line -> line.what().equals("Anneal"))
            .map(FurnaceSheet.Line::text)
            .findFirst()
            .orElseThrow();
  }

  /** The sheet shows whole HV: two places of one HV have one HB and one HRB. */
  @Test
  void oneVickersFigureIsOneBrinellFigure() {
    for (FurnaceSheet.Expected expected : sheet(Cases.butt("6061", "T6")).expected()) {
      assertEquals(
          HardnessScale.brinell(Math.rint(expected.vickers())).value(),
          expected.brinell(),
          1e-9,
          expected.place());
    }
  }

  @Test
  void coolingInAirIsNoImmersion() {
    // 6063 hardens from 1 °C/s on: moving air is enough for thin sections (common practice).
    Quench air = new Quench(QuenchMedium.FORCED_AIR, 298.15, 7);
    FurnaceSheet sheet =
        sheet(
            Cases.butt("6063", "T6")
                .then(
                    List.of(solution(1), air, new NaturalAge(7200), age(177, 8, Ramp.BY_FURNACE))));
    assertFalse(text(sheet, "Quench").contains("immersion"), text(sheet, "Quench"));
    assertFalse(text(sheet, "Quench").contains("water"), text(sheet, "Quench"));
    assertEquals(List.of(), sheet.objections());
  }

  @Test
  void twoBasesHaveOneFigureForEachStepAndEachItsHardness() {
    Cases pair = Cases.butt("A356", "T6").withRight(Cases.side("6061", "T6", 0.005));
    FurnaceSheet sheet = sheet(pair);
    assertTrue(text(sheet, "Solution treatment").contains("AMS 2770 and AMS 2771"));
    assertTrue(text(sheet, "Soak").startsWith("8 h"), text(sheet, "Soak"));
    assertTrue(text(sheet, "Quench").startsWith("Into water of 65 °C"), text(sheet, "Quench"));
    assertTrue(text(sheet, "Mark as").contains("6061: T62"), text(sheet, "Mark as"));
    assertTrue(text(sheet, "Mark as").contains("A356: T6, re-treated"), text(sheet, "Mark as"));
    assertEquals("base metal A356 (left)", sheet.expected().get(0).place());
    assertEquals("base metal 6061 (right)", sheet.expected().get(1).place());
    assertTrue(sheet.expected().get(0).rockwell().isEmpty(), "the table is for wrought metal");
    assertTrue(sheet.expected().get(1).rockwell().isPresent());
    FurnaceSheet short4 =
        sheet(pair.then(List.of(solution(4), WATER, age(160, 8, Ramp.BY_FURNACE))));
    assertTrue(text(short4, "Soak").startsWith("At least 6 h"), text(short4, "Soak"));
  }

  @Test
  void straighteningAgreesWithTheHold() {
    Cases plate = Cases.butt("6061", "T6");
    Age aged = age(177, 8, Ramp.BY_FURNACE);
    FurnaceSheet atOnce = sheet(plate.then(List.of(solution(1), WATER, aged)));
    assertTrue(text(atOnce, "Straightening").startsWith("None"), text(atOnce, "Straightening"));
    FurnaceSheet day = sheet(plate);
    // Common practice: 6061 within about an hour, two at the outside unless kept cold.
    assertTrue(text(day, "Straightening").contains("2 h at the outside"));
    assertFalse(text(day, "Straightening").contains("8 h"), text(day, "Straightening"));
  }

  @Test
  void unitsAskedForLead() {
    FurnaceSheet us =
        FurnaceSheet.of(
                Cases.butt("6061", "T6").weldCase(),
                Requirement.NONE,
                UnitSystem.US,
                Welded.SESSION::profile)
            .orElseThrow();
    assertTrue(text(us, "Solution treatment").startsWith("985 °F (530 °C)"));
    assertTrue(text(us, "Ageing").startsWith("350 °F (177 °C) ± 10 °F (6 °C)"), text(us, "Ageing"));
  }

  @Test
  void conductivityOf6061IsNotGivenForOthers() {
    assertTrue(says(sheet(Cases.butt("6061", "T6")), "% IACS"));
    assertFalse(says(sheet(Cases.butt("6063", "T6")), "% IACS"));
  }

  @Test
  void movingAirIsHeldToNoTableOfImmersion() {
    Quench fan = new Quench(QuenchMedium.FORCED_AIR, 298.15, 7);
    SolutionTreat hot = new SolutionTreat(521 + 273.15, 2400, FurnaceStep.Furnace.AIR);
    FurnaceSheet sheet = treated("6063", hot, fan, age(177, 8, Ramp.BY_FURNACE));
    assertFalse(text(sheet, "Quench").contains("MIL-H-6088"), text(sheet, "Quench"));
    assertFalse(text(sheet, "Hazards").contains("hot water"), text(sheet, "Hazards"));
  }

  /** The order is for still air; the sheet orders water in its place, and warns of it. */
  @Test
  void theHazardsAreThoseOfTheQuenchThatTheSheetOrders() {
    Quench still = new Quench(QuenchMedium.STILL_AIR, 298.15, 7);
    FurnaceSheet sheet = treated("6082", solution(1), still, age(177, 8, Ramp.BY_FURNACE));
    assertTrue(text(sheet, "Quench").startsWith("Into water"), text(sheet, "Quench"));
    assertTrue(text(sheet, "Hazards").contains("hot water"), text(sheet, "Hazards"));
  }

  /** ANSI H35.1: annealed metal is O. */
  @Test
  void annealedMetalIsMarkedSo() {
    FurnaceStep anneal = new FurnaceStep.Anneal(413 + 273.15, 9000, OptionalDouble.empty());
    FurnaceSheet sheet = sheet(Cases.butt("6063", "T5").then(List.of(anneal)));
    assertTrue(text(sheet, "Mark as").startsWith("O, "), text(sheet, "Mark as"));
  }

  private static Optional<FurnaceSheet> of(WeldCase weldCase) {
    return FurnaceSheet.of(weldCase, Requirement.NONE, UnitSystem.METRIC, Welded.SESSION::profile);
  }
}
