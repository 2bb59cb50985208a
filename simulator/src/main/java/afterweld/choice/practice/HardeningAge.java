package afterweld.choice.practice;

import afterweld.thermal.furnace.FurnaceStep;
import afterweld.thermal.furnace.FurnaceStep.Age;
import afterweld.thermal.furnace.FurnaceStep.SolutionTreat;
import afterweld.weld.CoatingBake;
import java.util.List;
import java.util.OptionalInt;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;

/**
 * Which of the ageings of a treatment hardens the part. These metals are aged in one hold (common
 * practice): the first after the last solution treatment that is as hot as the trade ages and is no
 * bake of a coating. A bake may follow it; any other hold is one too many.
 */
public final class HardeningAge {
  private HardeningAge() {}

  /** Its place among the steps; empty if none of them ages. */
  public static OptionalInt place(List<FurnaceStep> steps) {
    int dissolved =
        places(steps, i -> steps.get(i) instanceof SolutionTreat).reduce(-1, (one, next) -> next);
    OptionalInt usual =
        places(steps, i -> i > dissolved && steps.get(i) instanceof Age age && hardens(age))
            .findFirst();
    OptionalInt first =
        places(steps, i -> i > dissolved && steps.get(i) instanceof Age).findFirst();
    OptionalInt any = places(steps, i -> steps.get(i) instanceof Age).findFirst();
    return usual.isPresent() ? usual : first.isPresent() ? first : any;
  }

  private static IntStream places(List<FurnaceStep> steps, IntPredicate kind) {
    return IntStream.range(0, steps.size()).filter(kind);
  }

  private static boolean hardens(Age age) {
    return AgeingTime.agesAt(age.temperature()) && !CoatingBake.bakes(age);
  }

  /** Whether a step is the bake of a coating on a part that is aged by then. */
  public static boolean bakedAfter(List<FurnaceStep> steps, int index) {
    OptionalInt place = place(steps);
    return place.isPresent() && index > place.getAsInt() && CoatingBake.bakes(steps.get(index));
  }
}
