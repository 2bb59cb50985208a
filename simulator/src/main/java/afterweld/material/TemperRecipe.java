package afterweld.material;

import afterweld.quantity.Check;
import java.util.List;

/**
 * How a temper is made: the temperature history from solution (or from the casting as solidified),
 * in straight legs. A base metal is computed through its recipe before it is welded.
 *
 * @param asCast true if the metal starts as solidified, false if it starts dissolved
 * @param startTemperature temperature at the start, K
 * @param legs the straight legs that follow
 */
public record TemperRecipe(boolean asCast, double startTemperature, List<Leg> legs) {
  /** Copies the legs. */
  public TemperRecipe {
    Check.positive("temperature", startTemperature, "K");
    legs = List.copyOf(legs);
  }

  /**
   * One straight piece of a temperature history.
   *
   * @param duration s
   * @param endTemperature K
   */
  public record Leg(double duration, double endTemperature) {
    /** Refuses what it cannot be. */
    public Leg {
      Check.notNegative("duration", duration, "s");
      Check.positive("temperature", endTemperature, "K");
    }
  }
}
