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
  private static final double DAY = 86400;

  /**
   * The time that nobody stated: 30 days before a test, one before a heat treatment (common
   * practice).
   *
   * @return s
   */
  public static double usualWait(List<FurnaceStep> steps) {
    return steps.isEmpty() ? 30 * DAY : DAY;
  }

  /** Refuses what it cannot be. */
  public AfterWelding {
    Check.notNegative("time at room temperature", naturalAge, "s");
    steps = List.copyOf(steps);
  }
}
