package afterweld.section;

import afterweld.metallurgy.State;
import afterweld.strength.Strength;
import afterweld.thermal.FurnaceHistory;
import afterweld.thermal.FurnaceStep;
import afterweld.thermal.FurnaceStep.SolutionTreat;
import afterweld.thermal.TemperatureHistory;
import java.util.ArrayList;
import java.util.List;

/**
 * Ages the metals of a case: each in the state in which the case's schedule brings it to the ageing
 * furnace, for growing times at one temperature. Base metal is taken away from the weld, weld metal
 * as it froze at the weld's centre.
 */
public final class AgeingTrial {
  private final SectionMetal<?> metal;
  private final List<TemperatureHistory> before;
  private final boolean heldBack;

  private AgeingTrial(SectionMetal<?> metal, List<TemperatureHistory> before, boolean heldBack) {
    this.metal = metal;
    this.before = before;
    this.heldBack = heldBack;
  }

  /**
   * The base of a side: delivered aged and not dissolved again, no stronger than before ({@link
   * AgedOnly}).
   *
   * @param before what the schedule does between welding and ageing
   */
  public static AgeingTrial base(WeldCase weldCase, Side side, List<FurnaceStep> before) {
    List<TemperatureHistory> histories = new ArrayList<>();
    histories.add(TemperatureHistory.hold(FurnaceHistory.ROOM, weldCase.naturalAge()));
    histories.addAll(furnace(side).of(before));
    SectionMetal<?> metal = SectionMetal.base(side);
    return new AgeingTrial(metal, histories, metal.hasNeedles() && !dissolved(before));
  }

  /**
   * The weld metal of the case: without solution treatment no stronger than before ({@link
   * AgedOnly}).
   */
  public static AgeingTrial weld(WeldCase weldCase, List<FurnaceStep> before) {
    List<TemperatureHistory> histories = new ArrayList<>();
    histories.addAll(WeldMetalTrial.of(weldCase.withAfterWeld(before)).histories());
    return new AgeingTrial(
        SectionMetal.weld(PoolMetals.of(weldCase), WeldPool.of(weldCase).composition()),
        List.copyOf(histories),
        !dissolved(before));
  }

  private static boolean dissolved(List<FurnaceStep> before) {
    return before.stream().anyMatch(SolutionTreat.class::isInstance);
  }

  private static FurnaceHistory furnace(Side side) {
    return new FurnaceHistory(side.alloy(), side.temper().name(), side.thickness());
  }

  /**
   * Strength after each of the times at a temperature, heated at 0.5 K/s.
   *
   * @param temperature K
   * @param times rising, s at temperature
   */
  public List<Strength> at(double temperature, List<Double> times) {
    return at(metal, temperature, times);
  }

  private <S extends State> List<Strength> at(
      SectionMetal<S> aged, double temperature, List<Double> times) {
    S state = aged.before();
    for (TemperatureHistory history : before) {
      state = aged.metallurgy().advance(state, history);
    }
    Strength limit = aged.strength().apply(state);
    double rise = temperature - FurnaceHistory.ROOM;
    TemperatureHistory heating =
        TemperatureHistory.hold(FurnaceHistory.ROOM, 0).thenTo(temperature, Math.abs(rise) / 0.5);
    state = aged.metallurgy().advance(state, heating);
    List<Strength> strengths = new ArrayList<>();
    double passed = 0;
    for (double time : times) {
      TemperatureHistory hold = TemperatureHistory.hold(temperature, time - passed);
      state = aged.metallurgy().advance(state, hold);
      passed = time;
      Strength strength = aged.strength().apply(state);
      strengths.add(heldBack ? AgedOnly.lower(strength, limit) : strength);
    }
    return strengths;
  }
}
