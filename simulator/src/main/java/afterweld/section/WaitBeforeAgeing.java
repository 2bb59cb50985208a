package afterweld.section;

import afterweld.thermal.furnace.FurnaceStep;
import afterweld.thermal.furnace.FurnaceStep.Age;
import afterweld.thermal.furnace.FurnaceStep.NaturalAge;
import afterweld.thermal.furnace.FurnaceStep.SolutionTreat;
import afterweld.weld.Warning;
import afterweld.weld.WeldCase;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * A wait between quench and ageing longer than the day that the model is matched with. Here every
 * alloy gains a little by it. In tests 6005A lost 12 % of its yield by 3 h and 17 % by 10 days
 * (Huang et al. 2023, abstract), and lean 6060 gained 13 % of its hardness by 40 days (Balanovic et
 * al. 2019, abstract); alloys with over about 1 % Mg2Si, 6061 and 6082, lose (handbooks, from
 * memory).
 */
public final class WaitBeforeAgeing {
  /** The code of the warning. */
  public static final String CODE = "wait-before-ageing";

  private static final double MATCHED = 86400;
  private static final double HAIR = 60;

  private WaitBeforeAgeing() {}

  /** What to say of a case that waits so; empty for others. */
  static Optional<Warning> warning(WeldCase weldCase) {
    return weldCase.hardensWrought() && wait(weldCase.afterWeld()) > MATCHED + HAIR
        ? Optional.of(
            new Warning(
                CODE,
                "More than a day between quench and ageing: here it brings every alloy a little, in"
                    + " tests it cost 6005A 17 % of its yield in 10 days and helps lean alloys such"
                    + " as 6060 alone. 6061 and 6082 rather lose: age them within a day."))
        : Optional.empty();
  }

  /** Rest between the last solution treatment and the ageing after it, s; 0 without either. */
  private static double wait(List<FurnaceStep> steps) {
    int dissolved =
        IntStream.range(0, steps.size())
            .filter(place -> steps.get(place) instanceof SolutionTreat)
            .max()
            .orElse(steps.size());
    List<FurnaceStep> after = steps.subList(dissolved, steps.size());
    return after.stream().noneMatch(Age.class::isInstance)
        ? 0
        : after.stream()
            .takeWhile(step -> !(step instanceof Age))
            .filter(NaturalAge.class::isInstance)
            .mapToDouble(step -> ((NaturalAge) step).time())
            .sum();
  }
}
