package afterweld.metallurgy;

import static afterweld.metallurgy.PrecipitationParameters.SILICON_RATE_CAST;
import static afterweld.metallurgy.PrecipitationParameters.SILICON_RATE_WROUGHT;
import static afterweld.metallurgy.PrecipitationParameters.SILICON_SOLUBILITY;
import static afterweld.metallurgy.PrecipitationParameters.SILICON_SOLUBILITY_SLOPE;

/**
 * Silicon as a phase of its own: the eutectic silicon of castings and weld metal, and silicon that
 * leaves a matrix with more of it than magnesium can bind.
 *
 * <p>The matrix relaxes towards the solvus {@code s_e = 2925 exp(-6358/T)} wt% by a share {@code 1
 * - exp(-W D dt)} in each step. Validity: 25 to 577 °C. Source: solvus of the Al-Si diagram, from
 * memory; {@code W} set by hand.
 */
final class SiliconPhase {
  private SiliconPhase() {}

  /**
   * Silicon as silicon phase after one step of time, atoms per atom.
   *
   * @param s before the step
   * @param q formula units in precipitates after it
   */
  static double after(Interval step, SoluteBudget budget, boolean cast, double s, double q) {
    double excess = budget.silicon() - q - s - solubility(step.temperature());
    double rate = cast ? SILICON_RATE_CAST.value() : SILICON_RATE_WROUGHT.value();
    double share = 1 - Math.exp(-rate * step.diffusivity() * step.duration());
    return Math.max(0, Math.min(budget.silicon() - q, s + excess * share));
  }

  private static double solubility(double temperature) {
    return SoluteBudget.siliconAtoms(
        SILICON_SOLUBILITY.value() * Math.exp(-SILICON_SOLUBILITY_SLOPE.value() / temperature));
  }
}
