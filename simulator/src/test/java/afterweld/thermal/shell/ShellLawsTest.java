package afterweld.thermal.shell;

import static afterweld.quantity.UnitSystem.ZERO_CELSIUS;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import afterweld.thermal.ConductionMaterial;
import afterweld.thermal.HeatInput;
import afterweld.thermal.HeatInputException;
import afterweld.thermal.Leg;
import afterweld.thermal.Metals;
import afterweld.thermal.Pass;
import afterweld.thermal.PassHeat;
import afterweld.thermal.PlateField;
import afterweld.thermal.StationHistory;
import afterweld.thermal.StationTimeline;
import afterweld.thermal.SurfaceLoss;
import afterweld.thermal.TemperatureHistory;
import afterweld.thermal.WeldCourse;
import afterweld.thermal.WeldLegs;
import afterweld.thermal.Welds;
import java.util.List;
import java.util.OptionalDouble;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What must hold of the transient field, whatever its numbers; on rough nets. */
class ShellLawsTest {
  private static final double ROUGH = 2;
  private static final double LAP = 0.15;
  private static final SurfaceLoss AIR = SurfaceLoss.stillAir(Welds.ROOM);
  private static final ConductionMaterial METAL = Metals.ALUMINIUM_6061;

  private static Leg leg(boolean left, double thickness, double width) {
    return new Leg(left, thickness, OptionalDouble.of(width), METAL);
  }

  private static WeldLegs tube(double leftThickness, double leftWidth, double width) {
    return new WeldLegs(List.of(leg(true, leftThickness, leftWidth), leg(false, 3e-3, width)), 0);
  }

  private static Pass pass(double start) {
    return Welds.withEfficiency(
        Welds.pass(120, 3e-3, start, OptionalDouble.empty(), OptionalDouble.empty()), 0.6);
  }

  private static ShellWeld ring(WeldLegs legs, WeldCourse.Place place, Pass... passes) {
    return ShellSolver.of(legs, AIR, WeldCourse.ring(LAP, place))
        .withCoarseness(ROUGH)
        .weld(List.of(passes));
  }

  private static double reach(ShellWeld weld, int leg, double celsius) {
    return weld.timeline(leg, 1.5e-3).reach(celsius + ZERO_CELSIUS);
  }

  /** First law of thermodynamics: heat in the metal is what came in less what the air took. */
  @Property(tries = 10)
  void keepsItsHeat(
      @ForAll @DoubleRange(min = 300, max = 900) double power,
      @ForAll @DoubleRange(min = 2, max = 8) double thickness,
      @ForAll @DoubleRange(min = 20, max = 90) double width,
      @ForAll @DoubleRange(min = -3, max = 3) double offset) {
    WeldLegs legs = tube(thickness * 1e-3, width * 1e-3, 0.05);
    ShellGrid grid = new ShellGrid(legs, true, LAP, ROUGH, offset == 0);
    WeldCourse course = WeldCourse.ring(LAP, WeldCourse.Place.START).withEndPower(0.8);
    ShellRun run = new ShellRun(grid, course, AIR, Welds.ROOM, List.of(0.0));
    double before = run.field().content();
    Pass first = Welds.changed(pass(Welds.ROOM), Welds.ROOM, offset * 1e-3, OptionalDouble.empty());
    run.weld(first, power);
    run.cool(0, 20);
    run.weld(pass(Welds.ROOM), power);
    run.cool(0, 100);
    double expected = 2 * power * 0.9 * LAP / 3e-3;
    assertEquals(expected, run.given(), 1e-6 * expected);
    double balance = run.field().content() - before - run.given() + run.field().lost();
    assertEquals(0, balance, 1e-9 * run.given());
    assertTrue(run.field().lost() > 0);
  }

  @Test
  void equalLegsAreAlikeWhenComputedApart() {
    ShellGrid grid = new ShellGrid(tube(3e-3, 0.05, 0.05), true, LAP, ROUGH, false);
    assertEquals(2, grid.chains().size());
    WeldCourse course = WeldCourse.ring(LAP, WeldCourse.Place.START);
    ShellRun run = new ShellRun(grid, course, AIR, Welds.ROOM, List.of(0.0));
    run.weld(pass(Welds.ROOM), 700);
    int[] left = run.lines().ofChain(0);
    int[] right = run.lines().ofChain(1);
    for (int line = 0; line < left.length; line++) {
      assertArrayEquals(run.field().line(left[line]), run.field().line(right[line]), 1e-6);
    }
  }

  @Test
  void equalLegsTogetherAreLikeEachAlone() {
    double[][] peaks = new double[2][];
    for (int i = 0; i < 2; i++) {
      ShellGrid grid = new ShellGrid(tube(3e-3, 0.05, 0.05), true, LAP, ROUGH, i == 0);
      assertEquals(i + 1, grid.chains().size());
      WeldCourse course = WeldCourse.ring(LAP, WeldCourse.Place.START);
      ShellRun run = new ShellRun(grid, course, AIR, Welds.ROOM, List.of(0.0));
      run.weld(pass(Welds.ROOM), 700);
      peaks[i] = run.peaks()[run.lines().ofChain(0)[4]];
    }
    assertArrayEquals(peaks[0], peaks[1], 1e-6);
  }

  @Test
  void aSmallerPartSoftensFartherOut() {
    double last = 0;
    for (double width : new double[] {0.15, 0.08, 0.05}) {
      ShellWeld weld = ring(tube(3e-3, width, width), WeldCourse.Place.END, pass(Welds.ROOM));
      double reach = reach(weld, 1, 300);
      assertTrue(reach > last, width + ": " + reach);
      last = reach;
    }
  }

  @Test
  void aThickLegDrawsHeatFromTheThinOne() {
    Pass strong =
        Welds.withEfficiency(
            Welds.pass(160, 3e-3, Welds.ROOM, OptionalDouble.empty(), OptionalDouble.empty()), 0.6);
    double last = Double.POSITIVE_INFINITY;
    for (double thickness : new double[] {3e-3, 3.5e-3, 4.5e-3}) {
      ShellWeld weld = ring(tube(thickness, 0.1, 0.1), WeldCourse.Place.END, strong);
      double reach = reach(weld, 1, 400);
      assertTrue(reach < last, thickness + ": " + reach);
      last = reach;
    }
  }

  @Test
  void theEndOfTheLapIsHotterThanHalfWayAndWorstIsNoCooler() {
    WeldLegs legs = tube(3e-3, 0.1, 0.1);
    ShellWeld weld = ring(legs, WeldCourse.Place.WORST, pass(Welds.ROOM));
    double[] start = weld.peaks().profile(1, WeldCourse.Place.START);
    double[] half = weld.peaks().profile(1, WeldCourse.Place.MIDDLE);
    double[] end = weld.peaks().profile(1, WeldCourse.Place.END);
    double[] worst = weld.peaks().profile(1, WeldCourse.Place.WORST);
    for (int i = 3; i < end.length; i++) {
      assertTrue(end[i] > half[i] && end[i] > start[i], "line " + i);
      assertTrue(worst[i] > end[i] - 10, "line " + i);
    }
    assertTrue(weld.peaks().section() > 0.7 * LAP);
  }

  @Test
  void takingTheCurrentBackCoolsTheEnd() {
    WeldLegs legs = tube(3e-3, 0.1, 0.1);
    WeldCourse course = WeldCourse.ring(LAP, WeldCourse.Place.END);
    double[] reach = new double[2];
    for (int i = 0; i < 2; i++) {
      ShellWeld weld =
          ShellSolver.of(legs, AIR, course.withEndPower(1 - 0.3 * i))
              .withCoarseness(ROUGH)
              .weld(List.of(pass(Welds.ROOM)));
      reach[i] = reach(weld, 1, 350);
    }
    assertTrue(reach[1] < reach[0] - 1e-3, reach[1] + " " + reach[0]);
  }

  /**
   * Trade knowledge: a welder keeps the bead even round a small tube by taking the current back.
   */
  @Test
  void anEvenBeadNeedsLessCurrentAtTheEnd() {
    WeldLegs legs = tube(3e-3, 0.1, 0.1);
    ShellSolver constant = ShellSolver.of(legs, AIR, WeldCourse.ring(LAP, WeldCourse.Place.END));
    ShellWeld weld = constant.weld(List.of(pass(Welds.ROOM)));
    double middle = weld.beadWidth(WeldCourse.Place.MIDDLE);
    assertTrue(weld.beadWidth(WeldCourse.Place.START) < middle);
    assertTrue(weld.beadWidth(WeldCourse.Place.END) > 1.2 * middle);
    double share = constant.evenEndPower(weld);
    assertTrue(share > 0.5 && share < 0.95, "share " + share);
    ShellWeld even =
        ShellSolver.of(legs, AIR, WeldCourse.ring(LAP, WeldCourse.Place.END).withEndPower(share))
            .weld(constant.pivoted(weld.heats(), share), weld);
    double width = even.beadWidth(WeldCourse.Place.MIDDLE);
    assertEquals(width, even.beadWidth(WeldCourse.Place.END), 0.1 * width);
  }

  /** Trade knowledge: the end of a weld that runs out at an edge gets hottest, its start least. */
  @Test
  void aShortSeamIsHottestAtItsEnd() {
    WeldCourse seam = WeldCourse.seam(0.08, 0, WeldCourse.Place.WORST);
    ShellWeld weld =
        ShellSolver.of(tube(3e-3, 0.1, 0.1), AIR, seam)
            .withCoarseness(ROUGH)
            .weld(List.of(pass(Welds.ROOM)));
    double start = weld.beadWidth(WeldCourse.Place.START);
    double middle = weld.beadWidth(WeldCourse.Place.MIDDLE);
    double end = weld.beadWidth(WeldCourse.Place.END);
    assertTrue(start < middle && middle < end, start + " " + middle + " " + end);
    assertTrue(weld.peaks().section() > 0.06, "section at " + weld.peaks().section());
  }

  /** Metal beyond its ends takes heat from a seam. */
  @Test
  void metalBeyondTheEndKeepsItCooler() {
    double[] width = new double[2];
    for (int i = 0; i < 2; i++) {
      WeldCourse seam = WeldCourse.seam(0.06, 0.08 * i, WeldCourse.Place.END);
      ShellWeld weld =
          ShellSolver.of(tube(3e-3, 0.1, 0.1), AIR, seam)
              .withCoarseness(ROUGH)
              .weld(List.of(pass(Welds.ROOM)));
      width[i] = weld.beadWidth(WeldCourse.Place.END);
    }
    assertTrue(width[1] < width[0] - 0.3e-3, width[1] + " " + width[0]);
  }

  /** A seam longer than it needs to become steady is as the steady weld in its middle. */
  @Test
  void theMiddleOfALongSeamIsSteady() {
    WeldLegs plate = WeldLegs.plate(3e-3, METAL);
    List<Pass> bead = List.of(Welds.withBead(8e-3));
    WeldCourse seam = WeldCourse.seam(0.5, 0, WeldCourse.Place.MIDDLE);
    StationTimeline inSeam = ShellSolver.of(plate, AIR, seam).weld(bead).timeline(1, 1.5e-3);
    StationTimeline steady =
        ShellSolver.of(plate, AIR, WeldCourse.steady()).weld(bead).timeline(1, 1.5e-3);
    for (double y = 5e-3; y < 30e-3; y += 5e-3) {
      assertEquals(steady.at(y).peakTemperature(), inSeam.at(y).peakTemperature(), 5, "at " + y);
    }
  }

  /** Trade knowledge: a warmer interpass widens the soft zone. */
  @Test
  void warmInterpassWidens() {
    WeldLegs legs = tube(3e-3, 0.1, 0.1);
    double[] reach = new double[2];
    double[] celsius = {50, 150};
    for (int i = 0; i < 2; i++) {
      Pass second = pass(celsius[i] + ZERO_CELSIUS);
      ShellWeld weld = ring(legs, WeldCourse.Place.MIDDLE, pass(Welds.ROOM), second);
      reach[i] = reach(weld, 0, 300);
      List<Double> peaks = weld.timeline(0, 1.5e-3).at(-0.01).passPeaks();
      assertTrue(peaks.get(1) > peaks.get(0), peaks.toString());
    }
    assertTrue(reach[1] > 1.1 * reach[0], reach[1] + " " + reach[0]);
  }

  @Test
  void aShortPauseLeavesThePartWarm() {
    WeldLegs legs = tube(3e-3, 0.1, 0.1);
    double[] peaks = new double[2];
    double[] pauses = {20, 1200};
    for (int i = 0; i < 2; i++) {
      Pass second = Welds.changed(pass(Welds.ROOM), Welds.ROOM, 0, OptionalDouble.of(pauses[i]));
      ShellWeld weld = ring(legs, WeldCourse.Place.MIDDLE, pass(Welds.ROOM), second);
      StationHistory station = weld.timeline(1, 1.5e-3).at(0.02);
      peaks[i] = station.passPeaks().get(1);
    }
    assertTrue(peaks[0] > peaks[1] + 50, peaks[0] + " " + peaks[1]);
  }

  @Test
  void aWidthSetsThePowerHalfWayRound() {
    WeldLegs legs = tube(3e-3, 0.1, 0.1);
    Pass bead = Welds.pass(120, 3e-3, Welds.ROOM, OptionalDouble.of(8e-3), OptionalDouble.empty());
    ShellWeld weld = ring(legs, WeldCourse.Place.MIDDLE, bead);
    assertTrue(weld.heats().get(0).calibrated());
    assertEquals(4e-3, weld.timeline(1, 0).fusionReach(), 0.03e-3);
    assertEquals(4e-3, weld.heats().get(0).fusionHalfWidth(), 0);
  }

  /** The steady field and this one are two methods for a long weld in a wide plate. */
  @Test
  void agreesWithTheSteadyFieldOfAWidePlate() {
    SurfaceLoss none = SurfaceLoss.none(Welds.ROOM);
    WeldLegs plate = WeldLegs.plate(3e-3, METAL);
    Pass bead = Welds.withBead(8e-3);
    ShellWeld weld =
        ShellSolver.of(plate, none, WeldCourse.steady())
            .withCoarseness(2 / 3.0)
            .weld(List.of(bead));
    PassHeat heat = HeatInput.into(plate, none).of(bead);
    assertEquals(heat.netPower(), weld.heats().get(0).netPower(), 0.025 * heat.netPower());
    PlateField field = PlateField.of(plate, 1, heat, none, 1.5e-3);
    StationTimeline timeline = weld.timeline(1, 1.5e-3);
    for (double celsius = 200; celsius <= 560; celsius += 40) {
      double y = field.isotherm(celsius + ZERO_CELSIUS);
      assertEquals(celsius, timeline.at(y).peakTemperature() - ZERO_CELSIUS, 3, "at " + y);
    }
  }

  @Test
  void theTimeLineBeginsAndEndsAtRoomTemperature() {
    Pass warm = pass(100 + ZERO_CELSIUS);
    ShellWeld weld = ring(tube(3e-3, 0.05, 0.05), WeldCourse.Place.END, warm);
    StationHistory station = weld.timeline(0, 1.5e-3).at(-0.012);
    TemperatureHistory history = station.history();
    assertEquals(25 + ZERO_CELSIUS, history.temperature(0), 0);
    assertEquals(100 + ZERO_CELSIUS, history.at(300), 1e-9);
    assertEquals(25 + ZERO_CELSIUS, history.endTemperature(), 0);
    assertEquals(station.peakTemperature(), history.peakTemperature(), 1e-9);
    assertTrue(history.size() < 150, history.toString());
  }

  /** Bead widths give the same efficiency on rings of any size that is followed. */
  @Test
  void theEfficiencyOfABeadDoesNotDependOnTheSizeOfTheRing() {
    WeldLegs legs = tube(3e-3, 0.25, 0.25);
    List<Pass> bead = List.of(Welds.withBead(8e-3));
    double plate = HeatInput.into(legs, AIR).of(bead).get(0).efficiency();
    WeldCourse large = WeldCourse.ring(ShellSolver.LONGEST, WeldCourse.Place.MIDDLE);
    double ring = ShellSolver.of(legs, AIR, large).weld(bead).heats().get(0).efficiency();
    assertTrue(ring < 1.03 * plate, ring + " against " + plate);
    WeldCourse tooLarge = WeldCourse.ring(0.95, WeldCourse.Place.MIDDLE);
    HeatInputException fault =
        assertThrows(
            HeatInputException.class, () -> ShellSolver.of(legs, AIR, tooLarge).weld(bead));
    assertEquals("diameter", fault.field());
  }

  @Test
  void heatThatBurnsThroughIsRefused() {
    Pass hot = Welds.pass(800, 3e-3, Welds.ROOM, OptionalDouble.empty(), OptionalDouble.empty());
    WeldLegs thin = new WeldLegs(List.of(leg(true, 1e-3, 0.02), leg(false, 1e-3, 0.02)), 0);
    HeatInputException fault =
        assertThrows(HeatInputException.class, () -> ring(thin, WeldCourse.Place.MIDDLE, hot));
    assertEquals("current", fault.field());
  }

  @ParameterizedTest
  @ValueSource(doubles = {5, 20})
  void heatThatDoesNotMeltIsRefused(double amps) {
    Pass cold = Welds.pass(amps, 3e-3, Welds.ROOM, OptionalDouble.empty(), OptionalDouble.empty());
    assertThrows(
        HeatInputException.class,
        () -> ring(tube(3e-3, 0.05, 0.05), WeldCourse.Place.MIDDLE, cold));
  }
}
