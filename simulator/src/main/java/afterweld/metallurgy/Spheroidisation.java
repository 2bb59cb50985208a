package afterweld.metallurgy;

import static afterweld.metallurgy.PrecipitationParameters.GAS_CONSTANT;
import static afterweld.metallurgy.PrecipitationParameters.SPHEROIDISATION_ENERGY;
import static afterweld.metallurgy.PrecipitationParameters.SPHEROIDISATION_TEMPERATURE;
import static afterweld.metallurgy.PrecipitationParameters.SPHEROIDISATION_TIME;

/**
 * How far the eutectic silicon of cast metal has changed from plates to round particles: 0 to 1.
 *
 * <p>{@code dX/dt = (1 - X)/1800 s · exp(-(250000/R)(1/T - 1/803.15))}. Wrought metal starts and
 * stays at 1. Validity: modified or finely solidified metal such as welds and permanent-mould
 * castings. Source: set by hand; 87 % after one hour at 530 °C.
 */
final class Spheroidisation {
  private Spheroidisation() {}

  /** Spheroidisation after one step of time. */
  static double after(Interval step, double x) {
    double exponent =
        -SPHEROIDISATION_ENERGY.value()
            / GAS_CONSTANT.value()
            * (1 / step.temperature() - 1 / SPHEROIDISATION_TEMPERATURE.value());
    double progress = step.duration() / SPHEROIDISATION_TIME.value() * Math.exp(exponent);
    return x + (1 - x) * (1 - Math.exp(-progress));
  }
}
