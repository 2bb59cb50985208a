package afterweld.thermal.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import afterweld.thermal.ConductionMaterial;
import afterweld.thermal.HeatFlow;
import afterweld.thermal.HeatInputException;
import afterweld.thermal.Leg;
import afterweld.thermal.Metals;
import afterweld.thermal.Pass;
import afterweld.thermal.SurfaceLoss;
import afterweld.thermal.WeldCourse;
import afterweld.thermal.WeldLegs;
import afterweld.thermal.Welds;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class HeatFlowRuleTest {
  private static final SurfaceLoss AIR = SurfaceLoss.stillAir(Welds.ROOM);
  private static final ConductionMaterial METAL = Metals.ALUMINIUM_6061;

  private static WeldLegs legs(double... widths) {
    List<Leg> legs = new ArrayList<>();
    for (double width : widths) {
      OptionalDouble given = width > 0 ? OptionalDouble.of(width) : OptionalDouble.empty();
      legs.add(new Leg(legs.isEmpty(), 3e-3, given, METAL));
    }
    return new WeldLegs(legs, 0);
  }

  private static HeatFlow.Choice choice(WeldLegs legs, double circumference, Pass... passes) {
    WeldCourse course =
        circumference > 0
            ? WeldCourse.ring(circumference, WeldCourse.Place.WORST)
            : WeldCourse.steady();
    return HeatFlowRule.choose(legs, AIR, List.of(passes), course);
  }

  private static Pass pass() {
    return Welds.withEfficiency(Welds.plain(), 0.4);
  }

  @Test
  void widePlatesAreSteady() {
    assertEquals(HeatFlow.PLATE, choice(legs(0, 0), 0, pass()).flow());
  }

  @Test
  void smallRingsBuildUpHeatAndHugeOnesDoNot() {
    HeatFlow.Choice small = choice(legs(0, 0), 0.16, pass());
    assertEquals(HeatFlow.SHELL, small.flow());
    assertTrue(small.reason().contains("a tube of 51 mm (2.01 in)"), small.reason());
    assertEquals(HeatFlow.PLATE, choice(legs(0, 0), 300, pass()).flow());
    HeatFlow.Choice large = choice(legs(0, 0), 1.9, pass());
    assertEquals(HeatFlow.PLATE, large.flow());
    assertTrue(large.leavesHeatOut());
    assertTrue(large.reason().contains("is not followed in time"), large.reason());
  }

  /** Two legs alike: 3.5 a/v = 79 mm at 3 mm/s; others: 14 a/v = 317 mm. */
  @Test
  void narrowLegsBuildUpHeat() {
    assertEquals(HeatFlow.SHELL, choice(legs(0.075, 0.075), 0, pass()).flow());
    assertEquals(HeatFlow.PLATE, choice(legs(0.085, 0.085), 0, pass()).flow());
    assertEquals(HeatFlow.SHELL, choice(legs(0.085, 0.1), 0, pass()).flow());
    assertEquals(HeatFlow.SHELL, choice(legs(0.3, 0), 0, pass()).flow());
    assertEquals(HeatFlow.PLATE, choice(legs(0.33, 0), 0, pass()).flow());
  }

  @Test
  void aSeamIsSteadyInTheMiddleOnlyIfItIsLong() {
    WeldCourse longSeam = WeldCourse.seam(1, 0, WeldCourse.Place.MIDDLE);
    assertEquals(HeatFlow.PLATE, along(longSeam).flow());
    assertEquals(HeatFlow.SHELL, along(longSeam.at(WeldCourse.Place.END)).flow());
    assertEquals(HeatFlow.SHELL, along(longSeam.withEndPower(0.8)).flow());
    HeatFlow.Choice tooShort = along(WeldCourse.seam(0.06, 0, WeldCourse.Place.MIDDLE));
    assertEquals(HeatFlow.SHELL, tooShort.flow());
    assertTrue(
        tooShort.reason().startsWith("a weld of 60 mm (2.36 in) is too short"), tooShort.reason());
  }

  private static HeatFlow.Choice along(WeldCourse course) {
    return HeatFlowRule.choose(legs(0, 0), AIR, List.of(pass()), course);
  }

  @Test
  void aPauseTooShortToCool() {
    Pass soon = Welds.changed(pass(), Welds.ROOM, 0, OptionalDouble.of(60));
    Pass late = Welds.changed(pass(), Welds.ROOM, 0, OptionalDouble.of(7 * 86400));
    HeatFlow.Choice warm = choice(legs(0, 0), 0, pass(), soon);
    assertEquals(HeatFlow.SHELL, warm.flow());
    assertTrue(warm.reason().startsWith("pass 2"), warm.reason());
    assertEquals(HeatFlow.PLATE, choice(legs(0, 0), 0, pass(), late).flow());
    assertEquals(HeatFlow.PLATE, choice(legs(0, 0), 0, pass(), pass()).flow());
  }

  @Test
  void aRingTooSmallToWeldIsRefused() {
    assertThrows(HeatInputException.class, () -> WeldCourse.ring(0.029, WeldCourse.Place.MIDDLE));
    WeldCourse ring = WeldCourse.ring(0.2, WeldCourse.Place.MIDDLE);
    assertThrows(IllegalArgumentException.class, () -> ring.withEndPower(0.1));
    assertThrows(
        HeatInputException.class, () -> WeldCourse.seam(0.009, 0, WeldCourse.Place.MIDDLE));
  }
}
