package afterweld.metallurgy;

import static afterweld.metallurgy.PrecipitationParameters.COARSE_SOLVUS;
import static afterweld.metallurgy.PrecipitationParameters.COARSE_SOLVUS_SLOPE;
import static afterweld.metallurgy.PrecipitationParameters.EQUILIBRIUM_SOLVUS;
import static afterweld.metallurgy.PrecipitationParameters.EQUILIBRIUM_SOLVUS_SLOPE;
import static afterweld.metallurgy.PrecipitationParameters.GAS_CONSTANT;
import static afterweld.metallurgy.PrecipitationParameters.NEEDLE_SOLVUS;
import static afterweld.metallurgy.PrecipitationParameters.NEEDLE_SOLVUS_SLOPE;
import static afterweld.metallurgy.PrecipitationParameters.PRECIPITATE_MOLAR_VOLUME;
import static afterweld.metallurgy.PrecipitationParameters.SOLVUS_PRODUCT;

/**
 * How much the matrix dissolves beside each phase, and how curvature raises it.
 *
 * <p>Flat interface: {@code C_e = (K/4)^(1/3)} formula units per atom, with {@code ln K = -14.45 -
 * B (1/T - 1/T_s)} for the needles and the least stable coarse phase ({@code T_s} is the solvus
 * temperature in 6061) and {@code ln K = 0.4995 - 12001/T} for the equilibrium phase Mg2Si. Around
 * a particle of radius {@code r} the concentration is {@code C_e exp(2 γ V_m / (R T r))}
 * (Gibbs-Thomson).
 *
 * <p>Validity: 25 to 590 °C. The equilibrium line lies 14 % above the handbook line, on purpose:
 * 6061 is then just dissolved at 530 °C, as its temper asks. Because of curvature needles of 4 to 5
 * nm dissolve far below their flat-interface solvus. Source: solubility product of Mg2Si in
 * aluminium, from memory; the other lines are fitted.
 */
final class Solvus {
  private static final double LN_4 = Math.log(4);

  private Solvus() {}

  /** ln of the concentration beside flat needles at so many kelvin. */
  static double lnNeedles(double temperature) {
    return metastable(NEEDLE_SOLVUS.value(), NEEDLE_SOLVUS_SLOPE.value(), temperature);
  }

  /** ln of the concentration beside the least stable coarse phase at so many kelvin. */
  static double lnCoarse(double temperature) {
    return metastable(COARSE_SOLVUS.value(), COARSE_SOLVUS_SLOPE.value(), temperature);
  }

  /** ln of the concentration beside the equilibrium phase at so many kelvin. */
  static double lnEquilibrium(double temperature) {
    double lnProduct = EQUILIBRIUM_SOLVUS.value() - EQUILIBRIUM_SOLVUS_SLOPE.value() / temperature;
    return (lnProduct - LN_4) / 3;
  }

  /** {@code 2 γ V_m / (R T)}, m: the radius at which curvature raises the solubility e times. */
  static double capillaryLength(double surfaceEnergy, double temperature) {
    return 2
        * surfaceEnergy
        * PRECIPITATE_MOLAR_VOLUME.value()
        / (GAS_CONSTANT.value() * temperature);
  }

  private static double metastable(double solvus, double slope, double temperature) {
    double lnProduct = SOLVUS_PRODUCT.value() - slope * (1 / temperature - 1 / solvus);
    return (lnProduct - LN_4) / 3;
  }
}
