package afterweld.choice.schedule;

import afterweld.quantity.BothUnits;
import afterweld.quantity.TimeWords;
import afterweld.quantity.UnitSystem;
import afterweld.thermal.furnace.FurnaceStep;
import afterweld.thermal.furnace.FurnaceStep.Age;
import afterweld.thermal.furnace.FurnaceStep.Anneal;
import afterweld.thermal.furnace.FurnaceStep.Furnace;
import afterweld.thermal.furnace.FurnaceStep.NaturalAge;
import afterweld.thermal.furnace.FurnaceStep.Quench;
import afterweld.thermal.furnace.FurnaceStep.QuenchAtRate;
import afterweld.thermal.furnace.FurnaceStep.Ramp;
import afterweld.thermal.furnace.FurnaceStep.SolutionTreat;
import afterweld.thermal.furnace.QuenchMedium;
import java.math.BigDecimal;
import java.math.MathContext;

/** A furnace step in the words of the shop, metric with °F beside °C, every time as ordered. */
public final class FurnaceWords {
  private static final double HOUR = 3600;

  /** Full anneals cool slowly down to this, K (AMS 2770, from memory). */
  private static final double ANNEAL_SLOW_UNTIL = 260 + UnitSystem.ZERO_CELSIUS;

  private FurnaceWords() {}

  /** A step in words, both systems of units. */
  public static String of(FurnaceStep step) {
    return of(step, UnitSystem.METRIC);
  }

  /**
   * The same.
   *
   * @param first the system of units that leads
   */
  public static String of(FurnaceStep step, UnitSystem first) {
    if (step instanceof SolutionTreat treat) {
      return "solution treat at "
          + BothUnits.temperature(treat.temperature(), first)
          + " for "
          + time(treat.soak())
          + (treat.furnace() == Furnace.SALT ? " in a salt bath" : "");
    }
    if (step instanceof Quench quench) {
      return "quench "
          + into(quench.medium())
          + " of "
          + BothUnits.temperature(quench.temperature(), first)
          + " within "
          + time(quench.delay());
    }
    if (step instanceof QuenchAtRate quench) {
      return "quench at " + rate(quench.rate(), "s", first);
    }
    if (step instanceof NaturalAge age) {
      return "hold at room temperature for " + time(age.time());
    }
    return step instanceof Age age ? age(age, first) : anneal((Anneal) step, first);
  }

  private static String into(QuenchMedium medium) {
    return switch (medium) {
      case FORCED_AIR -> "in moving air";
      case STILL_AIR -> "in still air";
      case BOILING_WATER -> "into boiling water";
      case SPRAY -> "under a spray";
      case WATER -> "into water";
      case POLYMER -> "into polymer";
    };
  }

  private static String age(Age age, UnitSystem first) {
    return "age at "
        + BothUnits.temperature(age.temperature(), first)
        + " for "
        + time(age.time())
        + heating(age.ramp(), first)
        + (age.overage() ? ", meant to overage" : "");
  }

  /** How an ordered heating is said; nothing where the furnace heats as it does. */
  public static String heating(Ramp ramp, UnitSystem first) {
    if (ramp.time().isPresent()) {
      return ", heated in " + time(ramp.time().getAsDouble());
    }
    return ramp.rate().isPresent()
        ? ", heated at " + rate(HOUR * ramp.rate().getAsDouble(), "h", first)
        : "";
  }

  private static String anneal(Anneal anneal, UnitSystem first) {
    return "anneal at "
        + BothUnits.temperature(anneal.temperature(), first)
        + " for "
        + time(anneal.time())
        + (anneal.coolingRate().isPresent() ? cooling(anneal, first) : "");
  }

  /** How it cools, ordered or not. */
  public static String cooling(Anneal anneal, UnitSystem first) {
    return ", cooled at "
        + rate(HOUR * anneal.cooling(), "h", first)
        + (anneal.temperature() > ANNEAL_SLOW_UNTIL
            ? " down to " + BothUnits.temperature(ANNEAL_SLOW_UNTIL, first)
            : "");
  }

  static String rate(double kelvin, String per, UnitSystem first) {
    String celsius = figures(kelvin) + " °C/" + per;
    String fahrenheit = figures(1.8 * kelvin) + " °F/" + per;
    return first == UnitSystem.METRIC
        ? celsius + " (" + fahrenheit + ")"
        : fahrenheit + " (" + celsius + ")";
  }

  private static String figures(double value) {
    return plain(new BigDecimal(value).round(new MathContext(3)));
  }

  /**
   * A time in the longest unit that says it exactly.
   *
   * @param seconds s
   */
  public static String time(double seconds) {
    return TimeWords.of(seconds);
  }

  private static String plain(BigDecimal value) {
    return value.signum() == 0 ? "0" : value.stripTrailingZeros().toPlainString();
  }
}
