package afterweld.choice.practice;

import afterweld.material.Alloy;
import afterweld.quantity.UnitSystem;
import afterweld.thermal.furnace.FurnaceStep;
import afterweld.thermal.furnace.QuenchMedium;
import afterweld.weld.Side;
import afterweld.weld.WeldCase;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The treatments that the trade uses on an alloy when a case names none.
 *
 * <p>The soak is that of the alloy's schedule, longer where the thickness asks for it. Two
 * different heat-treatable bases go through the furnace together: at the lower of their solution
 * temperatures (so that neither melts), at most 10 °C under the higher one, for the longer soak,
 * and through the ageing of the one that is aged hotter, since the other one would stay far under
 * its strength by the cooler one. The water is warm where a casting is quenched: 65 °C.
 */
public final class StandardTreatment {
  private static final double MINUTE = 60;
  private static final double DAY = 86400;

  /** Water of a tank at room temperature, K (common practice). */
  private static final double WATER = 298.15;

  /** Water for castings, K (ASTM B917: 65 to 100 °C). */
  private static final double WATER_FOR_CASTINGS = 65 + UnitSystem.ZERO_CELSIUS;

  /** Under the top of the range by as much as a furnace strays, K (common practice). */
  private static final double UNDER_THE_HIGHER = 10;

  /** Days until quenched metal is called T4, s (common practice). */
  private static final double TO_T4 = 30 * DAY;

  /** The schedule that ages hotter, or longer at the same temperature. */
  private static final Comparator<Alloy.StandardSchedule> HOTTER_AGED =
      Comparator.comparingDouble(Alloy.StandardSchedule::ageTemperature)
          .thenComparingDouble(Alloy.StandardSchedule::ageTime);

  /** Delay from furnace to water, s, that usual racks take (common practice). */
  private static final double DELAY = 7;

  private StandardTreatment() {}

  /** Solution treatment, water quench, a day, ageing to T6; empty without a heat-treatable base. */
  public static Optional<List<FurnaceStep>> full(WeldCase weldCase) {
    boolean casting = weldCase.left().alloy().casting() || weldCase.right().alloy().casting();
    return schedule(weldCase).map(schedule -> full(schedule, casting));
  }

  /** The same as a side would have it by itself. */
  public static Optional<List<FurnaceStep>> full(Side side) {
    return own(side).map(schedule -> full(schedule, side.alloy().casting()));
  }

  /** Solution treatment and quench of a side, and 30 days: T4. */
  public static Optional<List<FurnaceStep>> naturallyAged(Side side) {
    return full(side)
        .map(steps -> List.of(steps.get(0), steps.get(1), new FurnaceStep.NaturalAge(TO_T4)));
  }

  private static List<FurnaceStep> full(Alloy.StandardSchedule schedule, boolean casting) {
    return List.of(
        new FurnaceStep.SolutionTreat(
            schedule.solutionTemperature(), schedule.soak(), FurnaceStep.Furnace.AIR),
        new FurnaceStep.Quench(QuenchMedium.WATER, casting ? WATER_FOR_CASTINGS : WATER, DELAY),
        new FurnaceStep.NaturalAge(DAY),
        age(schedule));
  }

  /** Ageing alone. */
  public static Optional<List<FurnaceStep>> ageOnly(WeldCase weldCase) {
    return schedule(weldCase).map(schedule -> List.of(age(schedule)));
  }

  /**
   * The temperature around which other ageings of a case are worth a trial, K: its own where the
   * trade ages, else that of the standard treatment.
   */
  public static double worthATrial(WeldCase weldCase, FurnaceStep.Age own) {
    return AgeingTime.agesAt(own.temperature())
        ? own.temperature()
        : schedule(weldCase).map(Alloy.StandardSchedule::ageTemperature).orElse(own.temperature());
  }

  private static FurnaceStep age(Alloy.StandardSchedule schedule) {
    return new FurnaceStep.Age(
        schedule.ageTemperature(), schedule.ageTime(), FurnaceStep.Ramp.BY_FURNACE, false);
  }

  /** The schedule of the only heat-treatable base, or one for both; empty if there is none. */
  public static Optional<Alloy.StandardSchedule> schedule(WeldCase weldCase) {
    Optional<Alloy.StandardSchedule> left = own(weldCase.left());
    Optional<Alloy.StandardSchedule> right = own(weldCase.right());
    if (left.isEmpty() || right.isEmpty()) {
      return left.or(() -> right);
    }
    return Optional.of(together(left.get(), right.get()));
  }

  private static Alloy.StandardSchedule together(
      Alloy.StandardSchedule left, Alloy.StandardSchedule right) {
    Alloy.StandardSchedule aged = HOTTER_AGED.compare(left, right) >= 0 ? left : right;
    return new Alloy.StandardSchedule(
        solution(left.solutionTemperature(), right.solutionTemperature()),
        Math.max(left.soak(), right.soak()),
        aged.ageTemperature(),
        aged.ageTime(),
        aged.source());
  }

  private static double solution(double one, double other) {
    return Math.max(Math.min(one, other), Math.max(one, other) - UNDER_THE_HIGHER);
  }

  /** The schedule of one side by itself, soaked for its thickness. */
  private static Optional<Alloy.StandardSchedule> own(Side side) {
    return side.alloy()
        .schedule()
        .map(
            schedule ->
                new Alloy.StandardSchedule(
                    schedule.solutionTemperature(),
                    Math.max(schedule.soak(), soak(side)),
                    schedule.ageTemperature(),
                    schedule.ageTime(),
                    schedule.source()));
  }

  private static double soak(Side side) {
    return MINUTE * FurnacePractice.of("soak in air", side.thickness()).value();
  }
}
