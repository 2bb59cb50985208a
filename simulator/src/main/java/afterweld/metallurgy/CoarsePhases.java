package afterweld.metallurgy;

import static afterweld.metallurgy.PrecipitationParameters.COARSE_SEED_RADIUS;
import static afterweld.metallurgy.PrecipitationParameters.COARSE_SITES;
import static afterweld.metallurgy.PrecipitationParameters.COARSE_SURFACE_ENERGY;
import static afterweld.metallurgy.PrecipitationParameters.EQUILIBRIUM_SEED_RADIUS;
import static afterweld.metallurgy.PrecipitationParameters.EQUILIBRIUM_SITES;
import static afterweld.metallurgy.PrecipitationParameters.EQUILIBRIUM_SURFACE_ENERGY;
import static afterweld.metallurgy.PrecipitationParameters.GROUPS;
import static afterweld.metallurgy.PrecipitationParameters.GROUP_REACH;
import static afterweld.metallurgy.PrecipitationParameters.GROUP_SHARE_FALL;

/**
 * The phases behind the coarse populations: which solvus, surface energy, seed and share of the
 * sites each has.
 *
 * <p>The intermediate phases form a family of {@code m} groups, {@code x_j = j/(m-1)}, with solvus
 * lines spread between that of the least stable one and the equilibrium line, {@code ln C_ej = (1 -
 * λ x_j) ln C_eB + λ x_j ln C_eE}: in 6061 from 461 to 524 °C, so that the family dissolves
 * gradually with a rising peak temperature. The more stable a group, the rarer: {@code p_j = exp(-σ
 * x_j) / Σ exp(-σ x_k)}. The last population is the equilibrium phase, share 1.
 */
final class CoarsePhases {
  /** Number of groups of the intermediate phases. */
  static final int GROUP_COUNT = (int) GROUPS.value();

  /** Index of the equilibrium phase. */
  static final int EQUILIBRIUM = GROUP_COUNT;

  private static final double[] SHARE = shares();
  private static final double COARSE_SEED_CUBE = Math.pow(COARSE_SEED_RADIUS.value(), 3);
  private static final double EQUILIBRIUM_SEED_CUBE = Math.pow(EQUILIBRIUM_SEED_RADIUS.value(), 3);

  private final double[] flatSolubility = new double[GROUP_COUNT + 1];
  private double coarseLength;
  private double equilibriumLength;
  private double solubilityTemperature = Double.NaN;

  private static double[] shares() {
    double[] shares = new double[GROUP_COUNT + 1];
    double sum = 0;
    for (int j = 0; j < GROUP_COUNT; j++) {
      shares[j] = Math.exp(-GROUP_SHARE_FALL.value() * stability(j));
      sum += shares[j];
    }
    for (int j = 0; j < GROUP_COUNT; j++) {
      shares[j] /= sum;
    }
    shares[EQUILIBRIUM] = 1;
    return shares;
  }

  private static double stability(int j) {
    return j / (GROUP_COUNT - 1.0);
  }

  /** Numbers of all populations in a metal of that site factor before any history, 1/m³. */
  static double[] sites(double siteFactor) {
    double[] sites = new double[GROUP_COUNT + 1];
    for (int j = 0; j < sites.length; j++) {
      double all = j == EQUILIBRIUM ? EQUILIBRIUM_SITES.value() : COARSE_SITES.value();
      sites[j] = SHARE[j] * all * siteFactor;
    }
    return sites;
  }

  /** Share of the sites that population {@code j} has; 1 for the equilibrium phase. */
  static double share(int j) {
    return SHARE[j];
  }

  /** Mean radius cubed of so many formula units per atom in so many particles per m³, m³. */
  static double meanCube(double quantity, double number) {
    return 3 * quantity / (4 * Math.PI * number * SoluteBudget.PURE_PRECIPITATE);
  }

  /** Cube of the radius that a growing particle has at least, m³. */
  static double seedCube(int j) {
    return j == EQUILIBRIUM ? EQUILIBRIUM_SEED_CUBE : COARSE_SEED_CUBE;
  }

  /** Surface energy, J/m². */
  static double surfaceEnergy(int j) {
    return j == EQUILIBRIUM ? EQUILIBRIUM_SURFACE_ENERGY.value() : COARSE_SURFACE_ENERGY.value();
  }

  /** Sets the flat-interface solubilities for a temperature, K. */
  void setTemperature(double temperature) {
    if (temperature == solubilityTemperature) {
      return;
    }
    double lnCoarse = Solvus.lnCoarse(temperature);
    double lnEquilibrium = Solvus.lnEquilibrium(temperature);
    for (int j = 0; j < GROUP_COUNT; j++) {
      double part = GROUP_REACH.value() * stability(j);
      flatSolubility[j] = Math.exp((1 - part) * lnCoarse + part * lnEquilibrium);
    }
    flatSolubility[EQUILIBRIUM] = Math.exp(lnEquilibrium);
    coarseLength = Solvus.capillaryLength(COARSE_SURFACE_ENERGY.value(), temperature);
    equilibriumLength = Solvus.capillaryLength(EQUILIBRIUM_SURFACE_ENERGY.value(), temperature);
    solubilityTemperature = temperature;
  }

  /** Concentration at the interface of a particle, at the temperature set. */
  double solubility(int j, double radius) {
    double length = j == EQUILIBRIUM ? equilibriumLength : coarseLength;
    return flatSolubility[j] * Math.exp(length / radius);
  }
}
