package afterweld.metallurgy;

import static afterweld.metallurgy.PrecipitationParameters.CAST_EQUILIBRIUM_SITES;
import static afterweld.metallurgy.PrecipitationParameters.CAST_EQUILIBRIUM_TEMPERATURE;
import static afterweld.metallurgy.PrecipitationParameters.EUTECTIC_SILICON;
import static afterweld.metallurgy.PrecipitationParameters.MAGNESIUM_BOUND;
import static afterweld.metallurgy.PrecipitationParameters.MAGNESIUM_BOUND_EXPONENT;
import static afterweld.metallurgy.PrecipitationParameters.RETAINED_SILICON;

/**
 * The state in which a history begins.
 *
 * <p>Wrought: everything dissolved but the equilibrium phase that the matrix cannot hold at the
 * first temperature. As solidified (weld metal, casting): the matrix keeps {@code 1.1 (1 -
 * exp(-Si/1.1))} wt% silicon; the eutectic share is {@code f = (Si - kept) / (12.6 - kept)}; {@code
 * 0.5 f^0.43} of the magnesium is bound as equilibrium phase, in few particles, and the rest of the
 * silicon not kept is eutectic silicon, not yet rounded; what the matrix could not hold at 540 °C
 * is equilibrium phase too.
 *
 * <p>Validity: weld metal and castings with up to 12 % silicon and 5 % magnesium. Source: Al-Si
 * diagram; shares set by hand.
 */
final class StartCondition {
  private static final double FIRST_STEP = 1e-3;
  private static final int BISECTIONS = 200;

  private final Metal metal;
  private final SoluteBudget budget;

  StartCondition(Metal metal) {
    this.metal = metal;
    budget = metal.budget();
  }

  PrecipitateState at(double temperature) {
    return metal.cast() ? asSolidified() : dissolved(temperature);
  }

  private PrecipitateState dissolved(double temperature) {
    double[] numbers = CoarsePhases.sites(budget.siteFactor());
    return state(undissolved(0, 0, temperature), numbers, 0, 1);
  }

  private PrecipitateState asSolidified() {
    double effective = budget.effectiveSilicon();
    double kept = RETAINED_SILICON.value() * (1 - Math.exp(-effective / RETAINED_SILICON.value()));
    double eutectic = (effective - kept) / (EUTECTIC_SILICON.value() - kept);
    double bound = MAGNESIUM_BOUND.value() * Math.pow(eutectic, MAGNESIUM_BOUND_EXPONENT.value());
    double notKept = SoluteBudget.siliconAtoms(effective - kept);
    double equilibrium = Math.min(bound * budget.magnesium() / 2, notKept / 2);
    double silicon = notKept - equilibrium;
    double[] numbers = CoarsePhases.sites(budget.siteFactor());
    numbers[CoarsePhases.EQUILIBRIUM] = CAST_EQUILIBRIUM_SITES.value();
    double all = undissolved(equilibrium, silicon, CAST_EQUILIBRIUM_TEMPERATURE.value());
    return state(all, numbers, silicon, 0);
  }

  /**
   * Least equilibrium phase, at least {@code already}, that leaves the matrix not oversaturated.
   */
  private double undissolved(double already, double silicon, double temperature) {
    double limit = Math.exp(Solvus.lnEquilibrium(temperature));
    if (budget.concentration(already, silicon) <= limit) {
      return already;
    }
    double low = already;
    double high = Math.max(already, budget.hardening());
    for (int i = 0; i < BISECTIONS; i++) {
      double middle = (low + high) / 2;
      boolean oversaturated = budget.concentration(middle, silicon) > limit;
      low = oversaturated ? middle : low;
      high = oversaturated ? high : middle;
    }
    return high;
  }

  private PrecipitateState state(
      double equilibrium, double[] numbers, double silicon, double rounded) {
    double[] coarse = new double[numbers.length];
    coarse[CoarsePhases.EQUILIBRIUM] = equilibrium;
    return new PrecipitateState(
        metal,
        new double[metal.classes().count()],
        coarse,
        numbers,
        new PrecipitateState.Scalars(equilibrium, silicon, 0, rounded, FIRST_STEP));
  }
}
