package afterweld.quantity;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import afterweld.choice.RouteSettings.Box;
import afterweld.choice.answer.Requirement;
import afterweld.joint.JointSettings.Fillet;
import afterweld.joint.JointSettings.FilletLoad;
import afterweld.joint.JointSettings.Tube;
import afterweld.section.Cases;
import afterweld.section.Station;
import afterweld.section.Zone;
import afterweld.strength.Strength;
import afterweld.thermal.Pass;
import afterweld.thermal.WeldCourse.Place;
import afterweld.thermal.furnace.FurnaceStep.Age;
import afterweld.thermal.furnace.FurnaceStep.Furnace;
import afterweld.thermal.furnace.FurnaceStep.Quench;
import afterweld.thermal.furnace.FurnaceStep.Ramp;
import afterweld.thermal.furnace.FurnaceStep.SolutionTreat;
import afterweld.thermal.furnace.QuenchMedium;
import afterweld.weld.FillerChoice;
import afterweld.weld.Ring;
import afterweld.weld.Side;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Values refuse what they cannot be, and say what they had, what they may be and in which unit. */
class CheckTest {
  /**
   * A value that takes one number.
   *
   * @param name of the number, as a message has it
   * @param good one that it takes
   * @param bad one that it does not
   */
  private record Case(String name, double good, double bad, DoubleFunction<Object> maker) {
    @Override
    public String toString() {
      return name;
    }
  }

  private static final Side SIDE = Cases.side("6061", "T6", 0.003);
  private static final OptionalDouble NONE = OptionalDouble.empty();

  private static Side thick(double metres) {
    return new Side(SIDE.alloy(), SIDE.temper(), metres, NONE, SIDE.composition());
  }

  private static FillerChoice diluted(double dilution) {
    return new FillerChoice(Optional.empty(), dilution, dilution, dilution, true, 0.5);
  }

  static Stream<Case> cases() {
    return Stream.of(
        new Case("thickness", 0.003, 0, CheckTest::thick),
        new Case("dilution", 0.4, 1.1, CheckTest::diluted),
        new Case("diameter", 0.05, -0.05, metres -> new Ring(metres, Place.WORST)),
        new Case("current", 100, 0, amperes -> Cases.pass(amperes, 3e-3, 293)),
        new Case("travel speed", 3e-3, 0, speed -> Cases.pass(100, speed, 293)),
        new Case("soak", 3600, -1, seconds -> new SolutionTreat(803, seconds, Furnace.AIR)),
        new Case("quench delay", 0, -1, seconds -> new Quench(QuenchMedium.WATER, 298, seconds)),
        new Case("ageing time", 3600, 0, seconds -> new Age(450, seconds, Ramp.BY_FURNACE, false)),
        new Case("leg", 0.006, 0, leg -> new Fillet(leg, 0.006, 0.1, FilletLoad.ALONG)),
        new Case("pressure", 0, -1, pascal -> new Tube(0.1, pascal)),
        new Case("height", 1, 0, metres -> new Box(1, 1, metres)),
        new Case(
            "required tensile",
            1e8,
            -1,
            pascal ->
                new Requirement(NONE, OptionalDouble.of(pascal), NONE, Optional.empty(), NONE)),
        new Case("yield", 1e8, -1, pascal -> new Strength(pascal, 2e8, 60)),
        new Case(
            "peak temperature",
            600,
            0,
            kelvin ->
                new Station(
                    0,
                    Station.Place.WELD,
                    Zone.FUSION,
                    kelvin,
                    Cases.butt("6061", "T6").run().stations().get(0).estimates())));
  }

  private static String refused(Executable made) {
    return assertThrows(IllegalArgumentException.class, made).getMessage();
  }

  @ParameterizedTest
  @MethodSource("cases")
  void whatCannotBeIsRefusedByNameAndWhatCanBeIsNot(Case one) {
    assertDoesNotThrow(() -> one.maker().apply(one.good()));
    for (double bad : new double[] {one.bad(), Double.NaN, Double.POSITIVE_INFINITY}) {
      String message = refused(() -> one.maker().apply(bad));
      assertTrue(message.startsWith(one.name()), message);
      assertTrue(message.contains("must be") || message.contains("all or none"), message);
    }
  }

  @Test
  void aMessageHasValueLimitAndUnit() {
    assertEquals(
        "thickness -0.003 m: must be above 0 and finite",
        refused(() -> Check.positive("thickness", -0.003, "m")));
    assertEquals("dilution 1.2: must be 0.0 to 1.0", refused(() -> Check.share("dilution", 1.2)));
    assertEquals(
        "passes of a weld: must be at least one",
        refused(() -> Check.some("passes of a weld", List.of())));
  }

  @Test
  void aStrengthIsKnownWholeOrNotAtAll() {
    assertDoesNotThrow(() -> Strength.NOT_PREDICTED.times(1));
    assertTrue(refused(() -> new Strength(Double.NaN, 2e8, 60)).contains("all or none"));
  }

  @Test
  void aPassStatesItsWidthOrItsEfficiency() {
    Pass pass = Cases.pass(100, 3e-3, 293);
    assertTrue(
        refused(
                () ->
                    new Pass(
                        pass.process(),
                        100,
                        14,
                        3e-3,
                        293,
                        OptionalDouble.of(0.008),
                        OptionalDouble.of(-0.001),
                        NONE,
                        0,
                        NONE))
            .startsWith("penetration"));
  }
}
