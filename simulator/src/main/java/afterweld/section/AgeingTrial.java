package afterweld.section;

import afterweld.metallurgy.State;
import afterweld.strength.Strength;
import afterweld.thermal.TemperatureHistory;
import afterweld.thermal.furnace.FurnaceHistory;
import afterweld.thermal.furnace.FurnaceStep;
import afterweld.thermal.furnace.FurnaceStep.Age;
import afterweld.thermal.furnace.FurnaceStep.SolutionTreat;
import afterweld.weld.Side;
import afterweld.weld.WeldCase;
import afterweld.weldmetal.PoolMetals;
import afterweld.weldmetal.WeldPool;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Ages the metals of a case: each in the state in which the case's schedule brings it to the ageing
 * furnace, for growing times at one temperature, heated as the furnace heats its part. Base metal
 * is taken away from the weld, weld metal as it froze at the weld's centre.
 */
public final class AgeingTrial {
  private final SectionMetal<?> metal;
  private final FurnaceHistory furnace;
  private final List<TemperatureHistory> before;
  private final boolean heldBack;
  private final Optional<Strength> delivered;

  private AgeingTrial(
      SectionMetal<?> metal,
      FurnaceHistory furnace,
      List<TemperatureHistory> before,
      boolean heldBack,
      Optional<Strength> delivered) {
    this.metal = metal;
    this.furnace = furnace;
    this.before = List.copyOf(before);
    this.heldBack = heldBack;
    this.delivered = delivered;
  }

  /**
   * The base of a side: delivered aged and not dissolved again, no stronger than before ({@link
   * AgedOnly}).
   *
   * @param before what the schedule does between welding and ageing
   */
  public static AgeingTrial base(WeldCase weldCase, Side side, List<FurnaceStep> before) {
    FurnaceHistory furnace = furnace(side);
    List<TemperatureHistory> histories = new ArrayList<>();
    histories.add(TemperatureHistory.hold(FurnaceHistory.ROOM, weldCase.naturalAge()));
    histories.addAll(furnace.of(before));
    SectionMetal<?> metal = SectionMetal.base(side);
    boolean comesAged = metal.hasNeedles() && !dissolved(before);
    return new AgeingTrial(
        metal,
        furnace,
        histories,
        comesAged,
        comesAged ? Optional.of(metal.strengthBefore()) : Optional.empty());
  }

  /**
   * The weld metal of the case: without solution treatment no stronger than before ({@link
   * AgedOnly}). It is heated as the thicker side is.
   *
   * @param session where its weld is kept
   */
  public static AgeingTrial weld(WeldSession session, WeldCase weldCase, List<FurnaceStep> before) {
    return new AgeingTrial(
        SectionMetal.weld(PoolMetals.of(weldCase), WeldPool.of(weldCase).composition()),
        furnace(WeldMetalTrial.governing(weldCase)),
        session.weldMetal(weldCase.withAfterWeld(before)).histories(),
        !dissolved(before),
        Optional.empty());
  }

  private static boolean dissolved(List<FurnaceStep> before) {
    return before.stream().anyMatch(SolutionTreat.class::isInstance);
  }

  private static FurnaceHistory furnace(Side side) {
    return new FurnaceHistory(side.alloy(), side.temper().name(), side.thickness());
  }

  /**
   * Strength after each of the times at temperature, hot.
   *
   * @param age its temperature and how the part is heated to it; its own time does not count
   * @param times rising, s at temperature
   */
  public List<Strength> at(Age age, List<Double> times) {
    return at(metal, age, times);
  }

  /** Strength after an ageing, cold again: the strength a section of the case has there. */
  public Strength after(Age age) {
    return after(metal, age);
  }

  /** Strength as the metal comes to the ageing. */
  public Strength before() {
    return strengthBefore(metal);
  }

  private <S extends State> Strength strengthBefore(SectionMetal<S> aged) {
    return asBrought(aged.strength().apply(brought(aged)));
  }

  /** Metal that comes aged gains nothing on the shelf either ({@link OnTheShelf}). */
  private Strength asBrought(Strength computed) {
    return delivered.map(most -> AgedOnly.lower(computed, most)).orElse(computed);
  }

  private <S extends State> S brought(SectionMetal<S> aged) {
    S state = aged.before();
    for (TemperatureHistory history : before) {
      state = aged.metallurgy().advance(state, history);
    }
    return state;
  }

  private double start() {
    return before.get(before.size() - 1).endTemperature();
  }

  private <S extends State> Strength after(SectionMetal<S> aged, Age age) {
    S brought = brought(aged);
    S state = aged.metallurgy().advance(brought, furnace.of(age, start()));
    return held(aged.strength().apply(state), asBrought(aged.strength().apply(brought)));
  }

  private <S extends State> List<Strength> at(SectionMetal<S> aged, Age age, List<Double> times) {
    S state = brought(aged);
    Strength limit = asBrought(aged.strength().apply(state));
    double longest = times.get(times.size() - 1);
    TemperatureHistory hot =
        furnace.hot(new Age(age.temperature(), longest, age.ramp(), age.overage()), start());
    double heating = hot.duration() - longest;
    List<Strength> strengths = new ArrayList<>();
    double passed = 0;
    for (double time : times) {
      state = aged.metallurgy().advance(state, hot.until(heating + time).from(passed));
      passed = heating + time;
      strengths.add(held(aged.strength().apply(state), limit));
    }
    return strengths;
  }

  private Strength held(Strength strength, Strength limit) {
    return heldBack ? AgedOnly.lower(strength, limit) : strength;
  }
}
