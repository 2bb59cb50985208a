package afterweld.choice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import afterweld.choice.answer.Requirement;
import afterweld.choice.answer.StrengthFinding;
import afterweld.choice.practice.StandardTreatment;
import afterweld.choice.schedule.SharedTreatment;
import afterweld.joint.JointReport;
import afterweld.joint.JointSettings;
import afterweld.joint.JointStrength;
import afterweld.quantity.UnitSystem;
import afterweld.section.BaseTrial;
import afterweld.section.Cases;
import afterweld.section.SectionProfile;
import afterweld.section.Welded;
import afterweld.section.WrittenWelds;
import afterweld.thermal.furnace.FurnaceStep;
import afterweld.weld.Side;
import afterweld.weld.WeldCase;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Facts of the trade about routes must come out of the simulation. */
class RouteStudyTest {
  private static final OptionalDouble NONE = OptionalDouble.empty();

  private static Requirement tensile(double mpa) {
    return new Requirement(NONE, OptionalDouble.of(mpa * 1e6), NONE, Optional.empty(), NONE);
  }

  private static RouteStudy study(Cases cases, Requirement requirement) {
    return study(cases.weldCase(), requirement);
  }

  private static RouteStudy study(WeldCase weld, Requirement requirement) {
    return RouteStudy.of(
        Welded.SESSION, weld, JointSettings.DEFAULT, requirement, RouteSettings.DEFAULT);
  }

  private static double strength(RouteStudy study, RouteKind kind) {
    return route(study, kind).joint().tensile().orElseThrow();
  }

  private static RouteResult route(RouteStudy study, RouteKind kind) {
    return study.routes().stream()
        .filter(route -> route.name().equals(kind.label()))
        .findFirst()
        .orElseThrow();
  }

  /** A furnace and a part of given lengths, m. */
  private static RouteSettings sizes(
      double furnace, double part, Optional<RouteSettings.Box> tank) {
    return new RouteSettings(
        Optional.of(new RouteSettings.Box(furnace, 1, 1)),
        Optional.of(new RouteSettings.Box(part, 0.5, 0.5)),
        tank,
        NONE,
        NONE,
        List.of(),
        NONE,
        List.of());
  }

  /** What would be strong enough and does not go into the furnace is barred by the furnace. */
  @Test
  void aRouteBarredByTheFurnaceIsNotCalledTooWeak() {
    RouteSettings small = sizes(1, 2, Optional.empty());
    WeldCase weld = Cases.butt("6061", "T6").weldCase();
    RouteStudy study =
        RouteStudy.of(Welded.SESSION, weld, JointSettings.DEFAULT, tensile(240), small);
    assertTrue(study.choice().isEmpty());
    assertTrue(study.why().get(0).contains("barred, by furnace size"), study.why()::toString);
  }

  /** Annealed metal leads heat away better: what just melts a bead on T6 does not on O. */
  @Test
  void aRouteWhoseHeatMakesNoWeldIsToldAndNotChosen() {
    String sides =
        """
        left: {alloy: "6063", temper: T6, thickness: 3 mm}
        right: {alloy: "6063", temper: T6, thickness: 2 mm}
        joint: tee
        """;
    String pass = "process: GTAW-AC, current: 105 A, voltage: 14 V, travel_speed: 2.5 mm/s";
    RouteStudy study = study(WrittenWelds.of(sides, pass, 1), tensile(80));
    RouteResult annealed = route(study, RouteKind.ANNEALED_FULL);
    assertTrue(annealed.joint().note().contains("would not melt a bead"), annealed.joint().note());
    assertFalse(annealed.allowed());
    assertTrue(route(study, RouteKind.LEAVE).joint().tensile().isPresent());
  }

  @Test
  void theOrderOfTheRoutesIsThatOfTheTrade() {
    // Armao, The Fabricator; groove-weld tables: ageing a T6 weld gains little, T4 then age beats
    // T6
    // as welded, a full treatment brings most of the strength back.
    RouteStudy study =
        study(Cases.butt("6061", "T6").withFiller(Cases.filler("4643", 0.4)), Requirement.NONE);
    double welded = strength(study, RouteKind.LEAVE);
    double aged = strength(study, RouteKind.AGE);
    double fromT4 = strength(study, RouteKind.T4_AGE);
    double full = strength(study, RouteKind.T6_FULL);
    assertTrue(aged < 1.15 * welded, "ageing alone: " + aged / welded);
    assertEquals(
        aged < 0.995 * welded,
        route(study, RouteKind.AGE).reasons().stream()
            .anyMatch(why -> why.startsWith("Lower in tensile strength")),
        "says why it is weaker");
    assertTrue(fromT4 > 1.1 * welded && full > fromT4);
    assertEquals(full, strength(study, RouteKind.ANNEALED_FULL), 0.02 * full);
  }

  /** 5356 takes part in no full treatment of 6061 (filler guides of the trade, from memory). */
  @Test
  void aRefusedFurnaceShowsNoNumbers() {
    RouteStudy study =
        study(
            Cases.butt("6061", "T6").withFiller(Cases.filler("5356", 0.4)),
            new Requirement(NONE, NONE, OptionalDouble.of(130), Optional.empty(), NONE));
    assertTrue(
        route(study, RouteKind.T6_FULL).strengths().stream().noneMatch(StrengthFinding::predicted));
    assertTrue(route(study, RouteKind.T6_FULL).joint().tensile().isEmpty());
    assertTrue(Double.isNaN(route(study, RouteKind.T6_FULL).lowestHardness()));
    assertTrue(route(study, RouteKind.LEAVE).joint().tensile().isPresent());
  }

  /** Parts that come in T6 are welded in T6 with no step more (common practice). */
  @Test
  void anotherTemperThanThePartsComeInIsAStepMore() {
    WeldCase delivered = Cases.butt("6061", "T6").weldCase();
    assertEquals(4, RouteKind.T6_FULL.steps(delivered));
    assertEquals(5, RouteKind.T4_FULL.steps(delivered));
    assertEquals(1, RouteKind.LEAVE.steps(delivered));
  }

  @Test
  void anEasyRequirementNeverSendsAPartToTheFurnace() {
    RouteStudy study = study(Cases.butt("6061", "T6"), tensile(90));
    assertEquals(RouteKind.LEAVE.label(), study.choice().orElseThrow());
    assertEquals(
        RouteKind.LEAVE.label(),
        study(Cases.butt("6061", "T6"), Requirement.NONE).choice().orElseThrow());
  }

  /** Common practice: castings of A356 are welded with silicon fillers, never with 5356. */
  @Test
  void aFillerThatDoesNotSuitLeavesNoRouteAndNoChance() {
    RouteStudy study =
        study(Cases.butt("A356", "T6").withFiller(Cases.filler("5356", 0.4)), tensile(20));
    assertEquals(Optional.empty(), study.choice());
    for (RouteResult route : study.routes()) {
      assertFalse(route.allowed(), route.name());
      assertTrue(route.judgement().chance().isEmpty(), route.name());
      assertNotEquals(RouteConstraint.State.MET, route.strength().state(), route.name());
    }
  }

  /** Common practice: 5356 is left as welded, and the anodized match speaks for it. */
  @Test
  void aFillerOutOfTheFurnaceClaimsNothingThereAndAllAsWelded() {
    RouteStudy study =
        study(Cases.butt("6082", "T6").withFiller(Cases.filler("5356", 0.4)), tensile(100));
    assertEquals(RouteKind.LEAVE.label(), study.choice().orElseThrow());
    assertTrue(route(study, RouteKind.LEAVE).judgement().chance().isPresent());
    assertTrue(route(study, RouteKind.T6_FULL).judgement().chance().isEmpty());
    assertFalse(route(study, RouteKind.T6_FULL).allowed());
  }

  /** Melted 6061 with little filler cracks (common practice): a coupon decides, so not clear. */
  @Test
  void aChoiceThatACouponDecidesIsNotClear() {
    RouteStudy study =
        study(Cases.butt("6061", "T6").withFiller(Cases.filler("4043", 0.9)), tensile(50));
    assertEquals(RouteKind.LEAVE.label(), study.choice().orElseThrow());
    assertFalse(study.clear());
  }

  @Test
  void aHardRequirementRulesTheAsWeldedRouteOut() {
    RouteStudy study =
        study(Cases.butt("6061", "T6").withFiller(Cases.filler("4643", 0.5)), tensile(240));
    assertFalse(route(study, RouteKind.LEAVE).allowed());
    assertTrue(study.choice().orElseThrow().contains("full treatment"));
    assertTrue(route(study, RouteKind.T6_FULL).open(), "furnace and movement are not known");
  }

  @Test
  void richFillersAreNeverSolutionTreated() {
    RouteStudy study =
        study(Cases.butt("6061", "T6").withFiller(Cases.filler("5356", 0.4)), tensile(150));
    for (RouteKind kind : List.of(RouteKind.T4_FULL, RouteKind.ANNEALED_FULL, RouteKind.T6_FULL)) {
      assertFalse(route(study, kind).allowed(), kind.label());
    }
    assertFalse(study.choice().orElse("none").contains("age"));
  }

  @Test
  void theOwnScheduleIsARouteAndTheShelfIsShown() {
    RouteStudy study =
        study(Cases.butt("6061", "T6").then(Cases.fullTreatment("6061")), Requirement.NONE);
    assertEquals(RouteKind.values().length, study.routes().size());
    assertEquals(
        List.of(1.0, 7.0, 30.0, 180.0),
        study.shelf().stream().map(RouteStudy.Shelf::days).toList());
    double first = study.shelf().get(0).joint().tensile().orElseThrow();
    double later = study.shelf().get(3).joint().tensile().orElseThrow();
    assertTrue(later >= first, "strength comes back on the shelf");
  }

  @Test
  void routesThatAreEquallyGoodAreNotCalledClear() {
    // The full treatment erases the temper a part is welded in, so T4 and O come out the same.
    RouteStudy study =
        study(Cases.butt("6063", "T5").withFiller(Cases.filler("4643", 0.5)), tensile(180));
    assertEquals(RouteKind.T4_FULL.label(), study.choice().orElseThrow());
    assertFalse(study.clear());
    assertTrue(
        study.why().stream()
            .anyMatch(
                why ->
                    why.startsWith("As good in all that is weighed")
                        && why.contains(RouteKind.ANNEALED_FULL.label())),
        study.why().toString());
  }

  @Test
  void theOwnScheduleIsJudgedAlikeInTheProfileAndInTheRoutes() {
    WeldCase aged =
        Cases.butt("6061", "T4")
            .withFiller(Cases.filler("4043", 0.3))
            .then(StandardTreatment.ageOnly(Cases.butt("6061", "T4").weldCase()).orElseThrow())
            .weldCase();
    SectionProfile profile = Welded.SESSION.profile(aged);
    JointStrength deciding = JointReport.finished(profile, JointSettings.DEFAULT.gauge());
    RouteStudy study =
        RouteStudy.of(
            Welded.SESSION, aged, JointSettings.DEFAULT, Requirement.NONE, RouteSettings.DEFAULT);
    assertEquals(deciding.tensile().orElseThrow(), strength(study, RouteKind.OWN), 1e-3 * 200e6);
  }

  @Test
  void asWeldedIsOneStateEverywhereAndAWeakerAgedRouteSaysWhy() {
    WeldCase alone = Cases.butt("6061", "T6").withFiller(Cases.filler("4043", 0.4)).weldCase();
    RouteStudy study =
        RouteStudy.of(
            Welded.SESSION, alone, JointSettings.DEFAULT, Requirement.NONE, RouteSettings.DEFAULT);
    JointStrength profile =
        JointReport.finished(Welded.SESSION.profile(alone), JointSettings.DEFAULT.gauge());
    RouteResult left = route(study, RouteKind.LEAVE);
    RouteResult aged = route(study, RouteKind.AGE);
    assertEquals(profile.tensile().orElseThrow(), left.joint().tensile().orElseThrow(), 1);
    assertEquals(alone.naturalAge(), left.rest(), 0);
    assertEquals(86400, aged.rest(), 0);
    assertTrue(aged.joint().tensile().orElseThrow() < left.joint().tensile().orElseThrow());
    assertTrue(
        aged.reasons().stream().anyMatch(said -> said.contains("24 h") && said.contains("30 days")),
        aged.reasons().toString());

    WeldCase own = alone.change().naturalAge(2 * 86400.0).afterWeld(aged.treatment()).done();
    RouteStudy other =
        RouteStudy.of(
            Welded.SESSION, own, JointSettings.DEFAULT, Requirement.NONE, RouteSettings.DEFAULT);
    other.routes().forEach(route -> assertEquals(2 * 86400.0, route.rest(), 0, route.name()));
  }

  @Test
  void bothBasesAreNamedAndAskedForInTheirTemper() {
    WeldCase two =
        Cases.butt("5083", "H116")
            .withRight(Cases.side("6061", "T6", 0.006))
            .withFiller(Cases.filler("4643", 0.4))
            .weldCase();
    RouteStudy study =
        RouteStudy.of(
            Welded.SESSION, two, JointSettings.DEFAULT, Requirement.NONE, RouteSettings.DEFAULT);
    RouteResult fromT4 = route(study, RouteKind.T4_AGE);
    assertEquals("weld 5083 in H116 to 6061 in T4", fromT4.steps().get(0));
    assertTrue(
        fromT4.constraints().stream().anyMatch(one -> one.text().equals("Can 6061 in T4 be had?")),
        fromT4.constraints().toString());
  }

  @Test
  void metalSofterThanAllInTheGaugeDecidesTheYield() {
    // A slow, hot weld softens beyond the 25 mm that a 50 mm gauge reaches on either side.
    Cases hot = Cases.butt("6061", "T6").withPasses(Cases.pass(85, 0.002, 293.15 + 100));
    JointStrength joint = JointReport.finished(hot.run(), JointSettings.DEFAULT.gauge());
    double proof = joint.proof().orElseThrow();
    assertEquals(
        joint.softestInGauge() ? proof : Math.min(proof, joint.lowestYield()),
        joint.decidingYield().orElseThrow());
    JointStrength shortGauge = JointReport.finished(hot.run(), 0.010);
    assertFalse(shortGauge.softestInGauge(), "5 mm from the centre lies the weld only");
    assertTrue(shortGauge.decidingYield().orElseThrow() <= shortGauge.lowestYield());
  }

  @Test
  void aThickPlateSoaksLongerThanItsScheduleSays() {
    // Soak tables of furnace practice (MIL-H-6088, from memory): over 12.7 mm 90 minutes in air.
    Side thick = Cases.side("6061", "T6", 0.020);
    List<FurnaceStep> thin = StandardTreatment.full(Cases.side("6061", "T6", 0.006)).orElseThrow();
    List<FurnaceStep> steps = StandardTreatment.full(thick).orElseThrow();
    assertEquals(3600, ((FurnaceStep.SolutionTreat) thin.get(0)).soak());
    assertEquals(5400, ((FurnaceStep.SolutionTreat) steps.get(0)).soak());
  }

  @Test
  void twoBasesInOneFurnaceSayWhichOneSuffers() {
    // A356 ages at 155 °C (data sheets); 6061 hardly ages there.
    WeldCase two = Cases.butt("6061", "T6").withRight(Cases.side("A356", "T6", 0.006)).weldCase();
    List<FurnaceStep> cool = StandardTreatment.full(two.right()).orElseThrow();
    List<String> losses = SharedTreatment.losses(two.withAfterWeld(cool));
    for (Side side : List.of(two.left(), two.right())) {
      double share =
          BaseTrial.of(side, cool).yield()
              / BaseTrial.of(side, StandardTreatment.full(side).orElseThrow()).yield();
      boolean said =
          losses.stream().anyMatch(text -> text.contains(": " + side.alloy().name() + " suffers"));
      assertEquals(share < 0.97, said, side.alloy().name() + " keeps " + share);
    }
    assertEquals(1, losses.size(), losses.toString());
    assertEquals(List.of(), SharedTreatment.losses(Cases.butt("6061", "T6").weldCase()));
  }

  @Test
  void workHardenedJointsHaveNoHardeningRoute() {
    RouteStudy study =
        study(Cases.butt("5083", "H116").withFiller(Cases.filler("5183", 0.4)), Requirement.NONE);
    assertEquals(
        List.of(RouteKind.LEAVE.label()), study.routes().stream().map(RouteResult::name).toList());
  }

  @Test
  void theSameStudyComesOutTwice() {
    WeldCase weldCase = Cases.butt("6061", "T6").weldCase();
    RouteStudy one =
        RouteStudy.of(
            Welded.SESSION, weldCase, JointSettings.DEFAULT, tensile(200), RouteSettings.DEFAULT);
    RouteStudy two =
        RouteStudy.of(
            Welded.SESSION, weldCase, JointSettings.DEFAULT, tensile(200), RouteSettings.DEFAULT);
    assertEquals(one.why(), two.why());
    assertEquals(one.scores(), two.scores());
  }

  /** 6xxx metal beside a weld comes back at room temperature over days (textbooks). */
  @Test
  void waitingIsAdvisedWhereItWouldBeEnoughAndThenItIs() {
    WeldCase sameDay = waiting(4.0 / 24);
    RouteStudy tooMuch = study(sameDay, tensile(500));
    assertTrue(tooMuch.why().stream().noneMatch(why -> why.contains("natural_age")));
    double early = strength(tooMuch, RouteKind.LEAVE);
    double late = tooMuch.shelf().get(2).joint().tensile().orElseThrow();
    Requirement between = tensile((early + late) / 2e6);
    String why = String.join(" ", study(sameDay, between).why());
    Matcher advice = Pattern.compile("natural_age: (\\d+) day").matcher(why);
    assertTrue(advice.find(), why);
    RouteStudy followed = study(waiting(Double.parseDouble(advice.group(1))), between);
    assertEquals(RouteKind.LEAVE.label(), followed.choice().orElse("none"));
  }

  private static WeldCase waiting(double days) {
    WeldCase weld = Cases.butt("6005A", "T6").withFiller(Cases.filler("5356", 0.4)).weldCase();
    return weld.change().naturalAge(days * Cases.DAY).done();
  }

  @Test
  void theSentenceSaysWhereItIsNotTheProofOfTheTableThatIsJudged() {
    Requirement proof =
        new Requirement(OptionalDouble.of(200e6), NONE, NONE, Optional.empty(), NONE);
    JointSettings shortGauge =
        new JointSettings(0.01, JointSettings.DEFAULT.bend(), Optional.empty(), Optional.empty());
    RouteResult left =
        route(
            RouteStudy.of(
                Welded.SESSION,
                Cases.butt("6061", "T6").weldCase(),
                shortGauge,
                proof,
                RouteSettings.DEFAULT),
            RouteKind.LEAVE);
    assertFalse(left.joint().softestInGauge());
    assertNotEquals(left.joint().proof(), left.joint().decidingYield());
    for (UnitSystem units : UnitSystem.values()) {
      assertTrue(left.text(left.strength(), units).endsWith(left.joint().decidingNote()));
    }
  }

  /**
   * 6063 beside a weld gains strength for weeks at room temperature (common practice). A case with
   * an ageing waits a day, so the joint left alone is judged after a day: where a month would let
   * it compete, that is said, and the choice is not called clear.
   */
  @Test
  void whereWaitingWouldDoTheChoiceIsNotClear() {
    String sides = "left: {alloy: \"6063\", temper: T5, thickness: 3.2 mm}\njoint: butt\n";
    String filler = "filler: {alloy: \"4043\"}\n";
    String pass = "process: GTAW-AC, current: 125 A, voltage: 14 V, travel_speed: 3.4 mm/s";
    WeldCase month = WrittenWelds.of(sides + filler, pass, 1);
    WeldCase aged =
        month
            .change()
            .naturalAge(Cases.DAY)
            .afterWeld(List.of(Cases.fullTreatment("6063").get(3)))
            .done();
    double between =
        (strength(study(aged, tensile(100)), RouteKind.LEAVE)
                + strength(study(month, tensile(100)), RouteKind.LEAVE))
            / 2e6;
    RouteStudy study = study(aged, tensile(0.84 * between));
    assertFalse(study.clear());
    assertTrue(
        study.why().stream().anyMatch(why -> why.startsWith("Waiting at room temperature helps")),
        study.why()::toString);
    assertEquals(
        Optional.of(RouteKind.LEAVE.label()), study(month, tensile(0.84 * between)).choice());
  }

  /** A tank that is too short is no reason against a treatment that does not quench. */
  @Test
  void theFurnaceIsNotBlamedForTheTank() {
    RouteSettings shortTank = sizes(2.4, 1.8, Optional.of(new RouteSettings.Box(1.5, 1, 1)));
    WeldCase weld = Cases.butt("6061", "T6").weldCase();
    RouteStudy study =
        RouteStudy.of(Welded.SESSION, weld, JointSettings.DEFAULT, tensile(240), shortTank);
    String full =
        route(study, RouteKind.T6_FULL).constraints().stream()
            .filter(one -> one.name().equals("furnace size"))
            .findFirst()
            .orElseThrow()
            .text();
    assertEquals("The part does not go into the quench tank.", full);
  }
}
