package afterweld.section;

import afterweld.strength.ModelError;
import afterweld.strength.ModelError.Residuals;
import afterweld.strength.Strength;
import afterweld.thermal.furnace.FurnaceStep;
import afterweld.thermal.furnace.FurnaceStep.Age;
import afterweld.thermal.furnace.FurnaceStep.SolutionTreat;
import afterweld.weld.Warning;
import java.util.List;
import java.util.Locale;

/**
 * How far a prediction may be off, as a share of its value; nine true values of ten are meant to
 * lie inside.
 *
 * <p>How the metals compare (10 to 15 to 20) is assumed. How wide that makes the bands of yield and
 * of tensile strength comes from the deviations from published values the model never saw ({@link
 * ModelError}): the assumed share times {@link Residuals#bandFactor}. Where too few values are
 * known, as for hardness, the assumed share stands.
 */
public enum ErrorBand {
  /** Base metal in T6, and any base metal after a full treatment. */
  TREATED(0.10, 0.10),
  /** Other tempers and the heat-affected zone. */
  AFFECTED(0.15, 0.15),
  /** Between solidus and fusion line: liquation is not modelled. */
  PARTIALLY_MELTED(0.20, 0.15),
  /** Weld metal in every state: dilution and solidification dominate. */
  WELD_METAL(0.20, 0.20);

  /** Standard deviations from the middle of a normal distribution to either end of a band. */
  public static final double DEVIATIONS = 1.6448536269514722;

  private static final String PEAK_AGED = "T6";
  private static final ModelError ERROR = ModelError.standard();

  /** Kept, for every station of every state asks for them. */
  private static final double YIELD_FACTOR = ERROR.yield().bandFactor();

  private static final double TENSILE_FACTOR = ERROR.tensile().bandFactor();
  private static final double HARDNESS_FACTOR = ERROR.hardness().bandFactor();

  private final double below;
  private final double above;

  ErrorBand(double below, double above) {
    this.below = below;
    this.above = above;
  }

  /** The share assumed of it before any residual is known. */
  public double assumed() {
    return below;
  }

  /**
   * The band of a station in one state.
   *
   * @param temper of its side before welding
   * @param zone it lies in
   * @param state 0 before welding, 1 as welded, then one after each furnace step
   * @param steps all furnace steps
   */
  static ErrorBand of(String temper, Zone zone, int state, List<FurnaceStep> steps) {
    if (state == 0) {
      return temper.equals(PEAK_AGED) ? TREATED : AFFECTED;
    }
    if (zone == Zone.FUSION) {
      return WELD_METAL;
    }
    if (zone == Zone.PARTIALLY_MELTED) {
      return PARTIALLY_MELTED;
    }
    boolean untouched = zone == Zone.BASE && temper.equals(PEAK_AGED);
    return untouched || fullyTreated(steps.subList(0, state - 1)) ? TREATED : AFFECTED;
  }

  private static boolean fullyTreated(List<FurnaceStep> steps) {
    int solution = -1;
    for (int i = 0; i < steps.size(); i++) {
      if (steps.get(i) instanceof SolutionTreat) {
        solution = i;
      } else if (solution >= 0 && steps.get(i) instanceof Age) {
        return true;
      }
    }
    return false;
  }

  Strength low(Strength middle) {
    return times(middle, -below);
  }

  Strength high(Strength middle) {
    return times(middle, above);
  }

  private static Strength times(Strength middle, double share) {
    return new Strength(
        middle.yield() * (1 + share * YIELD_FACTOR),
        middle.tensile() * (1 + share * TENSILE_FACTOR),
        middle.hardness() * (1 + share * HARDNESS_FACTOR));
  }

  /** Half-width of the band, as a share of the value. */
  public double share(Residuals residuals) {
    return below * residuals.bandFactor();
  }

  /** Half-width of its yield, as a sentence gives it: {@code 25 %}. */
  public String ofYield() {
    return String.format(Locale.ROOT, "%.0f %%", 100 * share(ERROR.yield()));
  }

  /** Where the bands come from and how wide they are. */
  public static Warning origin() {
    return new Warning(
        "error-band",
        "Nine test results of ten should lie inside the error bands. For metal in T6 or fully"
            + " treated, for other tempers and the heat-affected zone, and for weld metal they are: "
            + origin("yield", ERROR.yield())
            + "; "
            + origin("tensile strength", ERROR.tensile())
            + "; "
            + origin("hardness", ERROR.hardness())
            + ".");
  }

  private static String origin(String quantity, Residuals residuals) {
    String widths =
        String.format(
            Locale.ROOT,
            "%s ±%.0f, %.0f and %.0f %%, ",
            quantity,
            100 * TREATED.share(residuals),
            100 * AFFECTED.share(residuals),
            100 * WELD_METAL.share(residuals));
    return widths + from(residuals);
  }

  private static String from(Residuals residuals) {
    if (residuals.assumed()) {
      return "assumed, for want of published tests to compare with";
    }
    return "by comparison with " + residuals.published() + " published tests kept for the purpose";
  }
}
