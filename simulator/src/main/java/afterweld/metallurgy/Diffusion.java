package afterweld.metallurgy;

import static afterweld.metallurgy.PrecipitationParameters.ACTIVATION_ENERGY;
import static afterweld.metallurgy.PrecipitationParameters.DIFFUSIVITY_AT_175C;
import static afterweld.metallurgy.PrecipitationParameters.GAS_CONSTANT;

/**
 * Diffusion of magnesium and silicon in aluminium.
 *
 * <p>{@code D = D175 exp(-(Q/R)(1/T - 1/448.15))}, one diffusivity for every solute. Validity: an
 * effective value fitted between 25 and 590 °C; {@code Q} is close to that of magnesium in
 * aluminium.
 */
final class Diffusion {
  private static final double AT_175C = 448.15;

  private Diffusion() {}

  /** Diffusivity at so many kelvin, m²/s. */
  static double diffusivity(double temperature) {
    return DIFFUSIVITY_AT_175C.value()
        * Math.exp(
            -ACTIVATION_ENERGY.value() / GAS_CONSTANT.value() * (1 / temperature - 1 / AT_175C));
  }
}
