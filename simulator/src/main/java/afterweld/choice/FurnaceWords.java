package afterweld.choice;

import afterweld.section.BothUnits;
import afterweld.thermal.FurnaceStep;
import afterweld.thermal.FurnaceStep.Age;
import afterweld.thermal.FurnaceStep.Anneal;
import afterweld.thermal.FurnaceStep.NaturalAge;
import afterweld.thermal.FurnaceStep.Quench;
import afterweld.thermal.FurnaceStep.QuenchAtRate;
import afterweld.thermal.FurnaceStep.SolutionTreat;
import java.util.Locale;

/** A furnace step in the words of the shop, metric with °F beside °C. */
final class FurnaceWords {
  private FurnaceWords() {}

  static String of(FurnaceStep step) {
    if (step instanceof SolutionTreat treat) {
      return "solution treat at "
          + BothUnits.temperature(treat.temperature())
          + " for "
          + time(treat.soak());
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
      return String.format(
          Locale.ROOT, "quench at %.0f °C/s (%.0f °F/s)", quench.rate(), 1.8 * quench.rate());
    }
    if (step instanceof NaturalAge age) {
      return "hold at room temperature for " + time(age.time());
    }
    if (step instanceof Age age) {
      return "age at " + BothUnits.temperature(age.temperature()) + " for " + time(age.time());
    }
    Anneal anneal = (Anneal) step;
    return "anneal at "
        + BothUnits.temperature(anneal.temperature())
        + " for "
        + time(anneal.time());
  }

  static String time(double seconds) {
    if (seconds < 120) {
      return String.format(Locale.ROOT, "%.0f s", seconds);
    }
    if (seconds < 2 * 3600) {
      return String.format(Locale.ROOT, "%.0f min", seconds / 60);
    }
    return seconds < 2 * 86400
        ? String.format(Locale.ROOT, "%.0f h", seconds / 3600)
        : String.format(Locale.ROOT, "%.0f days", seconds / 86400);
  }
}
