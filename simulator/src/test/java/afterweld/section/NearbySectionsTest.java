package afterweld.section;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import afterweld.strength.Strength;
import afterweld.thermal.Pass;
import afterweld.thermal.WeldCourse.Place;
import afterweld.thermal.WeldingProcess;
import afterweld.weld.Ring;
import afterweld.weld.WeldCase;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What is computed near a case against the case computed on its own: no outside value is needed.
 */
class NearbySectionsTest {
  private static final double WIDTH = 7e-3;

  private static WeldCase ring(Pass pass) {
    WeldCase plate = Cases.butt("6061", "T6").weldCase();
    return plate.change().ring(new Ring(0.05, Place.END)).passes(List.of(pass)).done();
  }

  private static Pass pass(double speed, OptionalDouble width, OptionalDouble efficiency) {
    return new Pass(
        WeldingProcess.GTAW_AC,
        120,
        14,
        speed * 4e-3,
        293.15,
        width,
        OptionalDouble.empty(),
        efficiency,
        0,
        OptionalDouble.empty());
  }

  private static Pass ofWidth(double speed, double width) {
    return pass(speed, OptionalDouble.of(width), OptionalDouble.empty());
  }

  private static Pass ofEfficiency(double speed, double efficiency) {
    return pass(speed, OptionalDouble.empty(), OptionalDouble.of(efficiency));
  }

  /** Corners of the usual spread. */
  @ParameterizedTest
  @CsvSource({"0.9, -0.5", "0.9, 0.5", "1.1, -0.5", "1.1, 0.5"})
  void aRingOfAnotherWidthIsThatOfItsOwnSolution(double speed, double wider) {
    WeldCase other = ring(ofWidth(speed, WIDTH + wider * 1e-3));
    SectionProfile near = Welded.SESSION.near(ring(ofWidth(1, WIDTH))).of(other);
    assertAlike(Welded.SESSION.thinProfile(other), near);
  }

  @ParameterizedTest
  @CsvSource({"0.9, 0.85", "1.1, 1.15"})
  void aRingOfAnotherEfficiencyIsThatOfItsOwnSolution(double speed, double hotter) {
    WeldCase other = ring(ofEfficiency(speed, 0.6 * hotter));
    SectionProfile near = Welded.SESSION.near(ring(ofEfficiency(1, 0.6))).of(other);
    assertAlike(Welded.SESSION.thinProfile(other), near);
  }

  private static void assertAlike(SectionProfile own, SectionProfile near) {
    double power = own.passes().get(0).netPower();
    assertEquals(power, near.passes().get(0).netPower(), 0.01 * power);
    assertEquals(molten(own), molten(near), 0.3e-3);
    assertLowestAlike(own, near, Strength::yield);
    assertLowestAlike(own, near, Strength::tensile);
    assertLowestAlike(own, near, Strength::hardness);
  }

  /** How far the weld metal reaches on the right, m. */
  private static double molten(SectionProfile section) {
    return section.zones().stream()
        .filter(span -> span.zone() == Zone.FUSION)
        .mapToDouble(ZoneSpan::to)
        .max()
        .orElseThrow();
  }

  private static void assertLowestAlike(
      SectionProfile own, SectionProfile near, ToDoubleFunction<Strength> quantity) {
    double lowest = lowest(own, quantity);
    assertEquals(lowest, lowest(near, quantity), 0.01 * lowest);
  }

  private static double lowest(SectionProfile section, ToDoubleFunction<Strength> quantity) {
    return section.stations().stream()
        .mapToDouble(station -> quantity.applyAsDouble(station.estimates().get(1).middle()))
        .min()
        .orElseThrow();
  }

  @Test
  void aPlateIsComputedAsEver() {
    WeldCase plate = Cases.butt("6061", "T6").weldCase();
    WeldCase quicker =
        Cases.butt("6061", "T6").withPasses(Cases.pass(110, 3.3e-3, 293.15)).weldCase();
    assertEquals(
        Welded.SESSION.thinProfile(quicker).stations(),
        Welded.SESSION.near(plate).of(quicker).stations());
  }

  @Test
  void thePreviewOfARingIsHadNearOneThatIsSolved() {
    SectionRun run = new WeldSession().weld(ring(ofWidth(1, WIDTH)));
    WeldCase quicker = ring(ofWidth(1.1, WIDTH));
    assertFalse(run.isNear(quicker), "nothing is solved yet");
    run.preview(ring(ofWidth(1, WIDTH)), () -> false);
    assertTrue(run.isNear(quicker));
    SectionProfile own = new WeldSession().weld(quicker).preview(quicker, () -> false);
    assertAlike(own, run.previewNear(quicker, () -> false));
    WeldCase larger = quicker.change().ring(new Ring(0.06, Place.END)).done();
    assertFalse(run.isNear(larger), "other parts");
    assertThrows(IllegalArgumentException.class, () -> run.previewNear(larger, () -> false));
  }
}
