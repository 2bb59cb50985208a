package afterweld.choice;

import afterweld.section.BothUnits;
import afterweld.thermal.FurnaceStep;
import afterweld.thermal.FurnaceStep.Age;
import afterweld.thermal.FurnaceStep.Anneal;
import afterweld.thermal.FurnaceStep.Furnace;
import afterweld.thermal.FurnaceStep.NaturalAge;
import afterweld.thermal.FurnaceStep.Quench;
import afterweld.thermal.FurnaceStep.QuenchAtRate;
import afterweld.thermal.FurnaceStep.Ramp;
import afterweld.thermal.FurnaceStep.SolutionTreat;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** A furnace step in the words of the shop, metric with °F beside °C, every time as ordered. */
final class FurnaceWords {
  private static final int DECIMALS = 2;
  private static final double HOUR = 3600;

  /** Units from the longest; each is used from twice its length on. */
  private static final List<Map.Entry<String, Double>> UNITS =
      List.of(
          Map.entry("days", 86400.0),
          Map.entry("h", HOUR),
          Map.entry("min", 60.0),
          Map.entry("s", 1.0));

  private FurnaceWords() {}

  static String of(FurnaceStep step) {
    if (step instanceof SolutionTreat treat) {
      return "solution treat at "
          + BothUnits.temperature(treat.temperature())
          + " for "
          + time(treat.soak())
          + (treat.furnace() == Furnace.SALT ? " in a salt bath" : "");
    }
    if (step instanceof Quench quench) {
      return "quench into "
          + quench.medium().label()
          + " of "
          + BothUnits.temperature(quench.temperature())
          + " within "
          + time(quench.delay());
    }
    if (step instanceof QuenchAtRate quench) {
      return "quench at " + rate(quench.rate(), "s");
    }
    if (step instanceof NaturalAge age) {
      return "hold at room temperature for " + time(age.time());
    }
    return step instanceof Age age ? age(age) : anneal((Anneal) step);
  }

  private static String age(Age age) {
    return "age at "
        + BothUnits.temperature(age.temperature())
        + " for "
        + time(age.time())
        + heating(age.ramp())
        + (age.overage() ? ", meant to overage" : "");
  }

  /** How an ordered heating is said; nothing where the furnace heats as it does. */
  static String heating(Ramp ramp) {
    if (ramp.time().isPresent()) {
      return ", heated in " + time(ramp.time().getAsDouble());
    }
    return ramp.rate().isPresent()
        ? ", heated at " + rate(HOUR * ramp.rate().getAsDouble(), "h")
        : "";
  }

  private static String anneal(Anneal anneal) {
    return "anneal at "
        + BothUnits.temperature(anneal.temperature())
        + " for "
        + time(anneal.time())
        + ", cooled at "
        + rate(HOUR * anneal.coolingRate(), "h")
        + " down to 260 °C (500 °F)";
  }

  private static String rate(double kelvin, String per) {
    return String.format(
        Locale.ROOT, "%s °C/%s (%s °F/%s)", figures(kelvin), per, figures(1.8 * kelvin), per);
  }

  private static String figures(double value) {
    return plain(new BigDecimal(value).round(new MathContext(3)));
  }

  /**
   * A time in the longest unit that says it exactly.
   *
   * @param seconds s
   */
  static String time(double seconds) {
    return UNITS.stream()
        .filter(unit -> seconds >= 2 * unit.getValue() && exact(seconds / unit.getValue()))
        .findFirst()
        .map(unit -> rounded(seconds / unit.getValue()) + " " + unit.getKey())
        .orElseGet(() -> rounded(seconds) + " s");
  }

  private static boolean exact(double value) {
    double hundredths = 100 * value;
    return Math.abs(hundredths - Math.rint(hundredths)) < 1e-6 * hundredths;
  }

  private static String rounded(double value) {
    return plain(BigDecimal.valueOf(value).setScale(DECIMALS, RoundingMode.HALF_UP));
  }

  private static String plain(BigDecimal value) {
    return value.signum() == 0 ? "0" : value.stripTrailingZeros().toPlainString();
  }
}
