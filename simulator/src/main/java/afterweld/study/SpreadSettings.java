package afterweld.study;

import afterweld.quantity.Check;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.OptionalLong;

/**
 * Half-widths of the inputs for the spread, where the case sets them; empty means the defaults.
 *
 * @param runs number of simulated joints
 * @param seed of the random draws
 * @param dilution points of dilution as a fraction (0.10 is ten points)
 * @param beadWidth m
 * @param arcEfficiency relative, where no bead width tells it
 * @param travelSpeed relative
 * @param furnaceTemperature K
 * @param soak how much longer than nominal, relative
 * @param quenchDelay s
 * @param ageingTime relative
 * @param composition relative
 */
public record SpreadSettings(
    OptionalInt runs,
    OptionalLong seed,
    OptionalDouble dilution,
    OptionalDouble beadWidth,
    OptionalDouble arcEfficiency,
    OptionalDouble travelSpeed,
    OptionalDouble furnaceTemperature,
    OptionalDouble soak,
    OptionalDouble quenchDelay,
    OptionalDouble ageingTime,
    OptionalDouble composition) {
  /** Refuses what it cannot be. */
  public SpreadSettings {
    runs.ifPresent(count -> Check.within("runs", count, 1, Integer.MAX_VALUE, ""));
    Check.notNegative("spread of the dilution", dilution, "");
    Check.notNegative("spread of the bead width", beadWidth, "m");
    Check.notNegative("spread of the arc efficiency", arcEfficiency, "");
    Check.notNegative("spread of the travel speed", travelSpeed, "");
    Check.notNegative("spread of the furnace temperature", furnaceTemperature, "K");
    Check.notNegative("spread of the soak", soak, "");
    Check.notNegative("spread of the quench delay", quenchDelay, "s");
    Check.notNegative("spread of the ageing time", ageingTime, "");
    Check.notNegative("spread of the composition", composition, "");
  }

  /** Nothing set. */
  public static final SpreadSettings DEFAULT =
      new SpreadSettings(
          OptionalInt.empty(),
          OptionalLong.empty(),
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          OptionalDouble.empty());
}
