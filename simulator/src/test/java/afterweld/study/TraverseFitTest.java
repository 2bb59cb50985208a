package afterweld.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import afterweld.section.Cases;
import afterweld.section.Welded;
import afterweld.strength.Strength;
import afterweld.weld.WeldCase;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class TraverseFitTest {
  private static final WeldCase CASE = Cases.butt("6061", "T6").weldCase();
  private static final double TRUE_EFFICIENCY = 0.65;
  private static final double TRUE_SCALE = 1.04;
  private static final double TRUE_OFFSET = 0.5e-3;

  private static WeldCase truth() {
    return CaseChange.passes(
        CASE,
        pass -> CaseChange.heat(pass, OptionalDouble.empty(), OptionalDouble.of(TRUE_EFFICIENCY)));
  }

  /** Read off a section of its own, not off the fit's model. */
  private static HardnessTraverse traverse(double from, double to, double step) {
    SectionReading reading = new SectionReading(Welded.SESSION.profile(truth()));
    Random noise = new Random(4);
    List<HardnessTraverse.Point> points = new ArrayList<>();
    for (double y = from; y <= to; y += step) {
      double hv = reading.at(new double[] {y - TRUE_OFFSET}, Strength::hardness)[0];
      points.add(new HardnessTraverse.Point(y, TRUE_SCALE * hv + 2 * noise.nextGaussian(), 2));
    }
    return new HardnessTraverse(points);
  }

  private static RobustFit.Estimate estimate(TraverseFit fit, String name) {
    return fit.fit().orElseThrow().estimates().stream()
        .filter(one -> one.parameter().name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  private static void holds(RobustFit.Estimate one, double truth) {
    double wide = 1.5 * (one.high() - one.low()) / 2;
    assertEquals(truth, one.value(), wide, one.toString());
  }

  @Test
  void aTraverseOfTheModelGivesItsTruthBack() {
    TraverseFit fit = TraverseFit.of(Welded.SESSION, CASE, traverse(-0.05, 0.05, 0.0015));
    holds(estimate(fit, TraverseFit.EFFICIENCY), TRUE_EFFICIENCY);
    holds(estimate(fit, TraverseFit.OFFSET), TRUE_OFFSET);
    double base = new TraverseModel(Welded.SESSION, CASE).baseHardness(TRUE_EFFICIENCY);
    holds(estimate(fit, TraverseFit.BASE), TRUE_SCALE * base);
    assertTrue(fit.rmsAfter() < fit.rmsBefore() && fit.rmsAfter() < 2.6);
    assertTrue(fit.heldOut() < 4);
    assertTrue(fit.refusals().isEmpty());
    assertEquals(estimate(fit, TraverseFit.EFFICIENCY).value(), fit.efficiencies().get(0), 1e-9);
  }

  /** A softened zone deeper than the model's pulls the whole line down, the base with it. */
  @Test
  void readingsOfTheBaseOffTheFittedLineAreTold() {
    HardnessTraverse deep =
        new HardnessTraverse(
            traverse(-0.05, 0.05, 0.0015).points().stream()
                .map(
                    point ->
                        new HardnessTraverse.Point(
                            point.distance(),
                            point.hardness() - (Math.abs(point.distance()) < 0.02 ? 12 : 0),
                            point.deviation()))
                .toList());
    String said = String.join(" ", TraverseFit.of(Welded.SESSION, CASE, deep).refusals());
    assertTrue(said.contains("For the base go by those three"), said);
  }

  @Test
  void oneSideLeavesTheCentreAlone() {
    TraverseFit fit = TraverseFit.of(Welded.SESSION, CASE, traverse(0.004, 0.05, 0.001));
    assertEquals(
        List.of(TraverseFit.EFFICIENCY, TraverseFit.BASE),
        fit.fit().orElseThrow().estimates().stream().map(e -> e.parameter().name()).toList());
    assertTrue(fit.refusals().get(0).contains("one side"));
  }

  @Test
  void aTraverseThatEndsInTheSoftZoneLeavesTheBaseAlone() {
    double flank = 0.005;
    SectionReading reading = new SectionReading(Welded.SESSION.profile(truth()));
    while (reading.at(new double[] {flank}, Strength::hardness)[0] < 85) {
      flank += 0.0005;
    }
    HardnessTraverse inside = traverse(-flank, flank, flank / 9.99);
    TraverseFit fit = TraverseFit.of(Welded.SESSION, CASE, inside);
    assertTrue(inside.outerLevels().isEmpty());
    assertTrue(fit.refusals().get(0).contains("does not reach the base"));
  }

  /** The annealed zone is as even as base metal, but not as hard. */
  @Test
  void aTraverseWithinEvenSoftMetalLeavesTheBaseAlone() {
    HardnessTraverse inside = traverse(-0.016, 0.016, 0.001);
    assertEquals(2, inside.outerLevels().size());
    TraverseFit fit = TraverseFit.of(Welded.SESSION, CASE, inside);
    assertFalse(fit.fit().isEmpty());
    assertEquals(
        List.of(TraverseFit.EFFICIENCY, TraverseFit.OFFSET),
        fit.fit().orElseThrow().estimates().stream().map(e -> e.parameter().name()).toList());
    assertTrue(
        fit.refusals().get(0).startsWith("Base hardness stays as predicted: the last three"));
    assertTrue(fit.refusals().get(0).contains("softened metal"), fit.refusals().get(0));
  }

  /** A softened zone half as wide again as the hottest arc makes it. */
  @Test
  void aFitThatEndsAtALimitGivesNothing() {
    List<HardnessTraverse.Point> wide =
        traverse(-0.05, 0.05, 0.0015).points().stream()
            .map(p -> new HardnessTraverse.Point(2 * p.distance(), p.hardness(), 2))
            .toList();
    TraverseFit fit = TraverseFit.of(Welded.SESSION, CASE, new HardnessTraverse(wide));
    assertTrue(fit.fit().isEmpty());
    assertTrue(
        fit.refusals().stream()
            .anyMatch(why -> why.startsWith("Arc efficiency is at its limit, 0.9")),
        fit.refusals().toString());
  }

  @Test
  void aTraverseOfBaseMetalTellsNothing() {
    TraverseFit fit = TraverseFit.of(Welded.SESSION, CASE, traverse(0.09, 0.13, 0.002));
    assertTrue(fit.fit().isEmpty());
    assertTrue(fit.refusals().stream().anyMatch(why -> why.contains("softened zone")));
    assertEquals(fit.before(), fit.after());
  }

  /** The width would give an efficiency, but not one that these points have anything to do with. */
  @Test
  void aBeadWidthAloneIsNoTraverse() {
    double width = 2 * Welded.SESSION.heats(truth()).get(0).fusionHalfWidth();
    WeldCase measured =
        CaseChange.passes(
            CASE, pass -> CaseChange.heat(pass, OptionalDouble.of(width), OptionalDouble.empty()));
    TraverseFit fit = TraverseFit.of(Welded.SESSION, measured, traverse(0.09, 0.13, 0.002));
    assertTrue(fit.fit().isEmpty());
    assertTrue(fit.refusals().stream().anyMatch(why -> why.contains("softened zone")));
  }

  @Test
  void betweenItsSectionsTheModelIsWhatASectionGives() {
    TraverseModel model = new TraverseModel(Welded.SESSION, CASE);
    double[] places = {-0.04, -0.025, -0.02, -0.015, -0.012, 0, 0.013, 0.018, 0.03};
    double[] direct =
        new SectionReading(Welded.SESSION.profile(model.at(0.63))).at(places, Strength::hardness);
    double[] between = model.hardness(0.63, places);
    for (int i = 0; i < places.length; i++) {
      assertEquals(direct[i], between[i], 1.0, places[i] * 1e3 + " mm");
    }
  }

  /** The model knows no weld metal with so much copper; beside it there is plenty to fit to. */
  @Test
  void pointsInMetalThatIsNotPredictedAreRefusedAndNamed() {
    WeldCase copper = Cases.butt("6061", "T6").withFiller(Cases.filler("4145", 0.3)).weldCase();
    UnpredictedPoints refused =
        assertThrows(
            UnpredictedPoints.class,
            () -> TraverseFit.of(Welded.SESSION, copper, traverse(-0.05, 0.05, 0.0015)));
    assertTrue(refused.getMessage().contains("of 67 points, from -"), refused.getMessage());
    TraverseFit beside = TraverseFit.of(Welded.SESSION, copper, traverse(0.011, 0.06, 0.0015));
    assertTrue(Double.isFinite(beside.rmsBefore()) && Double.isFinite(beside.rmsAfter()));
  }

  @Test
  void tooFewPointsAndContradictionsAreRefused() {
    HardnessTraverse few = new HardnessTraverse(traverse(-0.01, 0.01, 0.004).points());
    assertThrows(IllegalArgumentException.class, () -> TraverseFit.of(Welded.SESSION, CASE, few));
    List<HardnessTraverse.Point> points = new ArrayList<>(traverse(-0.02, 0.02, 0.002).points());
    points.add(new HardnessTraverse.Point(points.get(3).distance(), 20, 3));
    assertTrue(new HardnessTraverse(points).faults().get(0).contains("differ by over 20 HV"));
  }

  /** Annealed metal shows no softened zone: a level line tells no heat. */
  @Test
  void aLevelTraverseTellsNothing() {
    Random noise = new Random(9);
    List<HardnessTraverse.Point> points = new ArrayList<>();
    for (int i = -10; i <= 10; i++) {
      points.add(new HardnessTraverse.Point(3e-3 * i, 52 + noise.nextGaussian(), 3));
    }
    for (String temper : List.of("O", "H34")) {
      WeldCase panel = Cases.butt("5052", temper).withFiller(Cases.filler("5356", 0.4)).weldCase();
      TraverseFit fit = TraverseFit.of(Welded.SESSION, panel, new HardnessTraverse(points));
      assertTrue(fit.fit().isEmpty(), temper);
      assertTrue(fit.refusals().toString().contains("level"), fit.refusals().toString());
    }
  }

  /** After a full treatment the line is level but for a step at the fusion line. */
  @Test
  void aLineOfOneStepTellsNeitherEfficiencyNorCentre() {
    WeldCase treated = CASE.withAfterWeld(Cases.fullTreatment("6061"));
    double[] hardness = {116, 114, 116, 114, 116, 99, 97, 100, 114, 116, 116, 118, 116};
    double[] places = {-60, -40, -25, -15, -8, -3, 0, 3, 8, 15, 25, 40, 60};
    List<HardnessTraverse.Point> points =
        IntStream.range(0, places.length)
            .mapToObj(k -> new HardnessTraverse.Point(1e-3 * places[k], hardness[k], 3))
            .toList();
    for (double efficiency : List.of(0.58, 0.62, 0.66, 0.70, 0.74)) {
      WeldCase written = new TraverseModel(Welded.SESSION, treated).at(efficiency);
      TraverseFit fit = TraverseFit.of(Welded.SESSION, written, new HardnessTraverse(points));
      assertTrue(fit.fit().isEmpty(), efficiency + " " + fit.fit());
      assertTrue(fit.refusals().toString().contains("does not tell"), fit.refusals().toString());
    }
  }
}
