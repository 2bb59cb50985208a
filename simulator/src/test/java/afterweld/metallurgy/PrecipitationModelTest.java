package afterweld.metallurgy;

import static afterweld.metallurgy.Treatments.ALLOY_6061;
import static afterweld.metallurgy.Treatments.ALLOY_6063;
import static afterweld.metallurgy.Treatments.DAY;
import static afterweld.metallurgy.Treatments.HOUR;
import static afterweld.metallurgy.Treatments.kelvin;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import afterweld.thermal.TemperatureHistory;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class PrecipitationModelTest {
  private static final PrecipitationModel METAL = PrecipitationModel.wrought(ALLOY_6061);
  private static final PrecipitationModel WELD =
      PrecipitationModel.asCast(Treatments.composition(5.2, 0.02, 0.05, 0.2, 0.02, 0));

  @Test
  void aHistoryInPartsGivesTheSameBitsAsAtOnce() {
    double[] time = {0, 64, 66.5, 1024, 1030.25, 1060, 1100.5, 1200, 20000, 20300, 49100};
    double[] celsius = {530, 530, 25, 25, 410, 200, 120, 25, 25, 175, 175};
    double[] temperature = IntStream.range(0, 11).mapToDouble(i -> kelvin(celsius[i])).toArray();
    PrecipitateState inParts = METAL.start(temperature[0]);
    for (int i = 1; i < time.length; i++) {
      double[] leg = {0, time[i] - time[i - 1]};
      double[] ends = {temperature[i - 1], temperature[i]};
      inParts = METAL.advance(inParts, TemperatureHistory.of(leg, ends));
    }
    assertEquals(METAL.follow(TemperatureHistory.of(time, temperature)), inParts);
  }

  @Test
  void aJumpOfTemperatureBetweenPartsTakesNoTime() {
    TemperatureHistory hot = Treatments.hold(400, 32);
    TemperatureHistory cold = Treatments.hold(25, 1024);
    PrecipitateState before = METAL.start(kelvin(530));
    PrecipitateState inParts = METAL.advance(METAL.advance(before, hot), cold);
    assertEquals(METAL.advance(before, hot.then(cold)), inParts);
  }

  @Test
  void noTimeChangesNothing() {
    PrecipitateState state = METAL.follow(Treatments.t4(530));
    assertEquals(state, METAL.advance(state, Treatments.hold(500, 0)));
  }

  @Test
  void threadsDoNotDisturbEachOther() {
    List<TemperatureHistory> histories =
        IntStream.range(0, 24).mapToObj(i -> Treatments.weldCycle(250 + 10 * i, 45)).toList();
    PrecipitateState t6 = METAL.follow(Treatments.t6(530));
    List<PrecipitateState> oneByOne = histories.stream().map(h -> METAL.advance(t6, h)).toList();
    List<PrecipitateState> together =
        histories.parallelStream().map(h -> METAL.advance(t6, h)).collect(Collectors.toList());
    assertEquals(oneByOne, together);
    assertNotEquals(oneByOne.get(0), oneByOne.get(1));
  }

  @Test
  void advanceLeavesTheGivenStateAsItWas() {
    PrecipitateState t6 = METAL.follow(Treatments.t6(530));
    METAL.advance(t6, Treatments.weldCycle(400, 45));
    assertEquals(METAL.follow(Treatments.t6(530)), t6);
  }

  @Test
  void refusesTheStateOfAnotherMetal() {
    PrecipitateState other = PrecipitationModel.wrought(ALLOY_6063).start(kelvin(520));
    TemperatureHistory history = Treatments.shelf(DAY);
    assertThrows(IllegalArgumentException.class, () -> METAL.advance(other, history));
    assertThrows(
        IllegalArgumentException.class, () -> WELD.advance(METAL.start(kelvin(530)), history));
    PrecipitateState coarser =
        PrecipitationModel.wrought(ALLOY_6061, new NumericalSettings(50, 0.01, 3))
            .start(kelvin(530));
    assertThrows(IllegalArgumentException.class, () -> METAL.advance(coarser, history));
  }

  @Test
  void refusesSettingsThatCannotCompute() {
    assertThrows(IllegalArgumentException.class, () -> new NumericalSettings(9, 0.01, 3));
    assertThrows(IllegalArgumentException.class, () -> new NumericalSettings(100, 0, 3));
    assertThrows(
        IllegalArgumentException.class, () -> new NumericalSettings(100, 0.01, Double.NaN));
  }

  /** The temper's premise: 6061 is just dissolved at 530 °C; one percent is not at once. */
  @Test
  void solutionTemperatureDissolves6061AndLessDoesNot() {
    assertEquals(0, METAL.start(kelvin(540)).totalUnits());
    assertTrue(METAL.start(kelvin(530)).totalUnits() < 0.01 * METAL.hardeningSolute());
    assertTrue(METAL.start(kelvin(500)).totalUnits() > 0.05 * METAL.hardeningSolute());
  }

  /** Solubility limit: what stays dissolved satisfies the equilibrium line. */
  @Test
  void undissolvedEquilibriumPhaseLeavesASaturatedMatrix() {
    PrecipitateState state = METAL.start(kelvin(450));
    SoluteBudget budget = new SoluteBudget(ALLOY_6061);
    double matrix = Math.log(budget.concentration(state.equilibriumUnits(), 0));
    assertEquals(Solvus.lnEquilibrium(kelvin(450)), matrix, 1e-12);
  }

  /** Formulas by hand: 5.15 % effective silicon keeps 1.0898 % and has 35.27 % eutectic. */
  @Test
  void weldMetalStartsWithEutecticSilicon() {
    PrecipitateState state = WELD.start(kelvin(25));
    double kept = 1.1 * (1 - Math.exp(-5.145 / 1.1));
    double bound = 0.5 * Math.pow((5.145 - kept) / (12.6 - kept), 0.43);
    double equilibrium = bound * 0.02 * 0.2698 / 24.305 / 2;
    assertEquals(equilibrium, state.equilibriumUnits(), 1e-15);
    double eutectic = (5.145 - kept) * 0.2698 / 28.086 - equilibrium;
    assertEquals(eutectic, state.siliconPhase(), 1e-15);
    assertEquals(0, state.spheroidisation());
    assertTrue(state.cast());
  }

  /** 1 - exp(-2) after one hour at 530 °C, by the definition of the rate. */
  @Test
  void solutionTreatmentRoundsEutecticSilicon() {
    PrecipitateState state = WELD.advance(WELD.start(kelvin(25)), Treatments.hold(530, HOUR));
    assertEquals(1 - Math.exp(-2), state.spheroidisation(), 1e-9);
  }

  /** The example of the package. */
  @Test
  void exampleOfThePackage() {
    TemperatureHistory t6 =
        TemperatureHistory.hold(803.15, 3600)
            .thenTo(298.15, 1.7)
            .thenTo(298.15, 86400)
            .thenTo(448.15, 300)
            .thenTo(448.15, 8 * 3600)
            .thenTo(298.15, 75);
    assertEquals(4.0e-9, METAL.follow(t6).meanNeedleRadius(), 0.05e-9);
  }
}
