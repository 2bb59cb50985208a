package afterweld.choice.answer;

import afterweld.quantity.Asked;
import afterweld.quantity.UnitSystem;
import afterweld.section.ErrorBand;
import java.util.Locale;
import java.util.OptionalDouble;
import org.apache.commons.math3.distribution.NormalDistribution;

/**
 * One strength asked, what is predicted of it and the chance that a sound weld made as written
 * meets it: the printed band as a normal distribution around the prediction, of which it holds nine
 * values of ten, as wide to either side as the band is there. Where the low end was raised to a
 * minimum that the metal keeps by definition, the distribution is as much narrower, so that this
 * minimum is met.
 *
 * @param asked yield, tensile strength or hardness
 * @param low low end of the band, Pa or HV; NaN where nothing is predicted
 * @param middle predicted, Pa or HV; NaN where nothing is predicted
 * @param high high end of the band, Pa or HV; NaN where nothing is predicted
 * @param unknown why nothing is predicted or claimed; used only there
 * @param claimed whether a chance is given; none is while something stands against the case
 */
public record StrengthFinding(
    Asked asked, double low, double middle, double high, String unknown, boolean claimed) {
  private static final NormalDistribution STANDARD = new NormalDistribution(0, 1);
  private static final double ROUNDING = 1e-9;

  /** A chance is cut, not rounded, to this many parts: it never reads as more than it is. */
  private static final double PARTS = 1e4;

  /** Checks that what is not predicted says why. */
  public StrengthFinding {
    if (!(Double.isFinite(low) && Double.isFinite(middle)) && unknown.isBlank()) {
      throw new IllegalArgumentException("nothing is predicted, and nothing says why");
    }
  }

  /** Of a strength of which nothing is claimed while something stands against the case. */
  public static StrengthFinding unclaimed(Asked asked, String subjects) {
    String why = "not judged while something stands against " + subjects;
    return new StrengthFinding(asked, Double.NaN, Double.NaN, Double.NaN, why, false);
  }

  /** The same of a case that something stands against: its word, and no chance. */
  public StrengthFinding unclaimed() {
    return new StrengthFinding(asked, low, middle, high, unknown, false);
  }

  /** Whether a value is predicted. */
  public boolean predicted() {
    return Double.isFinite(low) && Double.isFinite(middle);
  }

  /** Chance that it is met, 0 to 1; empty where nothing is predicted or claimed. */
  public OptionalDouble chance() {
    return predicted() && claimed
        ? OptionalDouble.of(chanceOfPrediction())
        : OptionalDouble.empty();
  }

  private double chanceOfPrediction() {
    double deviation = asked.value() > middle ? deviationAbove() : deviation();
    if (deviation <= 0) {
      return middle * (1 + ROUNDING) >= asked.value() ? 1 : 0;
    }
    double chance = STANDARD.cumulativeProbability((middle - asked.value()) / deviation);
    boolean held = low * (1 + ROUNDING) >= asked.value();
    return Math.floor(PARTS * (held ? Math.max(Verdict.MET.from(), chance) : chance)) / PARTS;
  }

  private double deviation() {
    return (middle - low) / ErrorBand.DEVIATIONS;
  }

  private double deviationAbove() {
    return Double.isFinite(high) ? (high - middle) / ErrorBand.DEVIATIONS : deviation();
  }

  /** The word for its chance; open where nothing is predicted. */
  public Verdict verdict() {
    return Verdict.of(predicted() ? chanceOfPrediction() : Double.NaN);
  }

  /**
   * How far it lies above what is asked, as a share of that; NaN where nothing is predicted.
   *
   * @param deviations standard deviations from the prediction
   */
  public double margin(double deviations) {
    return predicted() ? at(deviations) / asked.value() - 1 : Double.NaN;
  }

  private double at(double deviations) {
    return middle + deviations * (deviations > 0 ? deviationAbove() : deviation());
  }

  /**
   * The same of one joint among many: it is what it is, without a band.
   *
   * @param deviations standard deviations from the prediction
   */
  public StrengthFinding drawn(double deviations) {
    double one = at(deviations);
    return new StrengthFinding(asked, one, one, one, unknown, claimed);
  }

  /** A sentence with what is asked, what is predicted and how far that is from met. */
  public String sentence(UnitSystem units) {
    String title = asked.quantity().title();
    String head = Character.toUpperCase(title.charAt(0)) + title.substring(1) + ": ";
    String asks = head + asked.textBeside(units, middle) + " asked, ";
    return asks + (predicted() ? prediction(units) : unknown) + joined(answer(units));
  }

  /** A reason of whole sentences is followed by another. */
  private String joined(String answer) {
    return !predicted() && unknown.endsWith(".") ? " So it is " + answer : ": " + answer;
  }

  private String prediction(UnitSystem units) {
    if (!claimed) {
      return beside(units, middle) + " predicted, and something stands against the case";
    }
    return beside(units, middle)
        + " predicted, nine of ten welds between "
        + number(units, low)
        + " and "
        + beside(units, high);
  }

  private String answer(UnitSystem units) {
    String word =
        verdict().label() + (verdict().met().isEmpty() && claimed ? ", a coupon decides" : "");
    if (!predicted() || !claimed) {
      return word + ".";
    }
    String sure = verdict() == Verdict.MET ? "" : "; " + beside(units, low) + " would be met";
    return word + " (chance " + percent(chanceOfPrediction()) + sure + ").";
  }

  /** The end of a sentence: its chance, where one is given. */
  public String chanceInBrackets() {
    return chance().isPresent() ? " (chance " + percent(chanceOfPrediction()) + ")." : ".";
  }

  /** A chance as people say it; never more than it is. */
  static String percent(double chance) {
    if (chance < 0.01) {
      return "under 1 %";
    }
    return chance > 0.99
        ? "over 99 %"
        : String.format(Locale.ROOT, "%d %%", (int) Math.floor(100 * chance + ROUNDING));
  }

  private String beside(UnitSystem units, double si) {
    return number(units, si) + " " + asked.quantity().unit(units);
  }

  /** A value so that it can be told from what is asked. */
  private String number(UnitSystem units, double si) {
    return asked.quantity().textBeside(units, si, asked.value());
  }
}
