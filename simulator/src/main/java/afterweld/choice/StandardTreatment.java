package afterweld.choice;

import afterweld.material.Alloy;
import afterweld.section.WeldCase;
import afterweld.thermal.FurnaceStep;
import afterweld.thermal.QuenchMedium;
import java.util.List;
import java.util.Optional;

/** The treatments that the trade uses on an alloy when a case names none. */
public final class StandardTreatment {
  private static final double DAY = 86400;
  private static final double WATER = 298.15;
  private static final double DELAY = 7;

  private StandardTreatment() {}

  /** Solution treatment, water quench, a day, ageing to T6; empty without a heat-treatable base. */
  public static Optional<List<FurnaceStep>> full(WeldCase weldCase) {
    return schedule(weldCase)
        .map(
            schedule ->
                List.of(
                    new FurnaceStep.SolutionTreat(
                        schedule.solutionTemperature(), schedule.soak(), FurnaceStep.Furnace.AIR),
                    new FurnaceStep.Quench(QuenchMedium.WATER, WATER, DELAY),
                    new FurnaceStep.NaturalAge(DAY),
                    age(schedule)));
  }

  /** Ageing alone. */
  static Optional<List<FurnaceStep>> ageOnly(WeldCase weldCase) {
    return schedule(weldCase).map(schedule -> List.of(age(schedule)));
  }

  private static FurnaceStep age(Alloy.StandardSchedule schedule) {
    return new FurnaceStep.Age(
        schedule.ageTemperature(), schedule.ageTime(), FurnaceStep.Ramp.BY_FURNACE, false);
  }

  /** The schedule of the left base if it is heat-treatable, else of the right one. */
  static Optional<Alloy.StandardSchedule> schedule(WeldCase weldCase) {
    return weldCase.left().alloy().schedule().or(() -> weldCase.right().alloy().schedule());
  }
}
