package afterweld.metallurgy;

import static afterweld.metallurgy.PrecipitationParameters.COARSENING_ONSET;
import static afterweld.metallurgy.PrecipitationParameters.GAS_CONSTANT;
import static afterweld.metallurgy.PrecipitationParameters.PRECIPITATE_MOLAR_VOLUME;
import static afterweld.metallurgy.PrecipitationParameters.SITE_LOSS;
import static afterweld.metallurgy.SoluteBudget.PURE_PRECIPITATE;

/**
 * The coarse precipitates while a history is followed: the intermediate phases (β′) in groups of
 * rising stability and, as the last population, the equilibrium phase (β). Each has formula units
 * {@code q} and number {@code N}, hence one mean size.
 *
 * <pre>
 * radius          r = (3 q / (4 π N q_p))^(1/3),  for growth r* = (r³ + r_0³)^(1/3)
 * interface       C_I = C_e exp(2 γ V_m / (R T r*))
 * growth          dq = 4 π N r* D dt (C - C_I), evaluated at the concentration after the step;
 *                 dissolution q exp(dq / q), which never overshoots
 * loss of sites   N → N_0 + (N - N_0) exp(-w 3 D dt (C_I - C) / (q_p r*²)) while dissolving
 * coarsening      N → N / (1 + (8/9) γ V_m D dt C / (q_p R T r*³) · q / (q + 0.02 p q_max))
 * </pre>
 *
 * Validity: few large particles that do not harden much; one mean size cannot tell a broad
 * distribution from a narrow one. Source: mean-size growth and coarsening laws (Lifshitz, Slyozov,
 * Wagner); the division into groups and the seeds belong to this model and are fitted.
 *
 * <p>Mutable and for one thread: lives only inside one call that follows a history.
 */
final class CoarsePopulations {
  private final CoarsePhases phases = new CoarsePhases();
  private final double hardening;
  private final double[] sites;
  private final double[] quantity;
  private final double[] number;
  private final double[] quantityBefore;
  private final double[] numberBefore;
  private final double[] growing;
  private final double[] radius;
  private final double[] solubility;
  private final double[] exchange;

  CoarsePopulations(SoluteBudget budget, double[] quantity, double[] number) {
    hardening = budget.hardening();
    sites = CoarsePhases.sites(budget.siteFactor());
    this.quantity = quantity.clone();
    this.number = number.clone();
    quantityBefore = new double[quantity.length];
    numberBefore = new double[quantity.length];
    growing = new double[quantity.length];
    radius = new double[quantity.length];
    solubility = new double[quantity.length];
    exchange = new double[quantity.length];
  }

  double[] quantities() {
    return quantity.clone();
  }

  double[] numbers() {
    return number.clone();
  }

  /** Remembers everything for {@link #restore}. */
  void remember() {
    System.arraycopy(quantity, 0, quantityBefore, 0, quantity.length);
    System.arraycopy(number, 0, numberBefore, 0, number.length);
  }

  /** Takes a step back. */
  void restore() {
    System.arraycopy(quantityBefore, 0, quantity, 0, quantity.length);
    System.arraycopy(numberBefore, 0, number, 0, number.length);
  }

  /** Radius, interface concentration and exchange with the matrix for the coming step. */
  void prepare(Interval step) {
    phases.setTemperature(step.temperature());
    for (int j = 0; j < quantity.length; j++) {
      double cube = CoarsePhases.meanCube(quantity[j], number[j]);
      radius[j] = Math.cbrt(cube + CoarsePhases.seedCube(j));
      solubility[j] = phases.solubility(j, radius[j]);
      exchange[j] = 4 * Math.PI * number[j] * radius[j] * step.diffusivity() * step.duration();
    }
  }

  /** Formula units of all populations after the step in a matrix of concentration {@code c}. */
  double afterGrowth(double c) {
    double sum = 0;
    for (int j = 0; j < quantity.length; j++) {
      double gain = exchange[j] * (c - solubility[j]);
      growing[j] = gain > 0 ? quantity[j] + gain : dissolving(quantity[j], gain);
      sum += growing[j];
    }
    return sum;
  }

  private static double dissolving(double q, double gain) {
    return q > 0 ? q * Math.exp(gain / q) : 0;
  }

  /** Makes the last growth count. */
  void accept() {
    System.arraycopy(growing, 0, quantity, 0, quantity.length);
  }

  /** What the intermediate phases gained since {@link #remember}, formula units per atom. */
  double intermediateGain() {
    double sum = 0;
    for (int j = 0; j < CoarsePhases.GROUP_COUNT; j++) {
      sum += quantity[j] - quantityBefore[j];
    }
    return sum;
  }

  /** New seeds of the intermediate phases, shared among the groups like their sites, 1/m³. */
  void seed(double seeds) {
    for (int j = 0; j < CoarsePhases.GROUP_COUNT; j++) {
      number[j] += CoarsePhases.share(j) * seeds;
    }
  }

  /** Dissolving populations lose the sites they gained since the start. */
  void loseSites(Interval step, double c) {
    for (int j = 0; j < number.length; j++) {
      if (c < solubility[j]) {
        double reach = step.growth() * (solubility[j] - c) / (radius[j] * radius[j]);
        number[j] = sites[j] + (number[j] - sites[j]) * Math.exp(-SITE_LOSS.value() * reach);
      }
    }
  }

  /** Large particles grow at the expense of small ones. */
  void coarsen(Interval step, double c) {
    double thermal = GAS_CONSTANT.value() * step.temperature();
    double common = 8.0 / 9 * PRECIPITATE_MOLAR_VOLUME.value() / (PURE_PRECIPITATE * thermal);
    double reach = common * step.diffusivity() * step.duration() * c;
    for (int j = 0; j < number.length; j++) {
      double cube = radius[j] * radius[j] * radius[j];
      double onset = COARSENING_ONSET.value() * CoarsePhases.share(j) * hardening;
      double active = quantity[j] / (quantity[j] + onset);
      number[j] /= 1 + reach * CoarsePhases.surfaceEnergy(j) / cube * active;
    }
  }
}
