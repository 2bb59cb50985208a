package afterweld.weld;

import afterweld.quantity.Check;
import afterweld.thermal.furnace.FurnaceStep;
import java.util.List;

/**
 * What happens to the joint after welding.
 *
 * @param naturalAge time between welding and the next step or the test, s
 * @param steps heat treatment, in order; empty if none
 */
public record AfterWelding(double naturalAge, List<FurnaceStep> steps) {
  /** Refuses what it cannot be. */
  public AfterWelding {
    Check.notNegative("time at room temperature", naturalAge, "s");
    steps = List.copyOf(steps);
  }
}
