package afterweld.metallurgy;

import static afterweld.metallurgy.PrecipitationParameters.CLUSTERING_DECAY;
import static afterweld.metallurgy.PrecipitationParameters.CLUSTERING_ENERGY;
import static afterweld.metallurgy.PrecipitationParameters.CLUSTER_LENGTH;
import static afterweld.metallurgy.PrecipitationParameters.CLUSTER_SOLVUS;
import static afterweld.metallurgy.PrecipitationParameters.CLUSTER_SOLVUS_WIDTH;
import static afterweld.metallurgy.PrecipitationParameters.GAS_CONSTANT;

/**
 * Clusters of solute, which natural ageing makes and heat takes apart: degree {@code y} from 0 to
 * 1.
 *
 * <p>{@code y_e = 1 / (1 + exp((T - 383) / 10))}. Below it clusters form at a rate that slows down
 * with every cluster, {@code dy/dt = k exp(-B y)}, {@code k = exp(-(65000/R)(1/T - 1/298.15)) /
 * 3600 s}; above it they dissolve, {@code d(y - y_e)/dt = -(D/L²)(y - y_e)}.
 *
 * <p>Validity: hours to years at room temperature and short times up to 590 °C; no memory of
 * quenched-in vacancies, so the rate does not depend on the quench. Source: logarithmic law of
 * natural ageing, constants fitted or set by hand.
 */
final class Clusters {
  private static final double ROOM_TEMPERATURE = 298.15;
  private static final double HOUR = 3600;

  private Clusters() {}

  /** Degree of clustering after one step of time. */
  static double after(Interval step, double y) {
    double stable = stableDegree(step.temperature());
    return y < stable
        ? Math.min(stable, formed(step, y))
        : stable
            + (y - stable)
                * Math.exp(
                    -step.diffusivity()
                        * step.duration()
                        / (CLUSTER_LENGTH.value() * CLUSTER_LENGTH.value()));
  }

  private static double stableDegree(double temperature) {
    double excess = (temperature - CLUSTER_SOLVUS.value()) / CLUSTER_SOLVUS_WIDTH.value();
    return 1 / (1 + Math.exp(excess));
  }

  private static double formed(Interval step, double y) {
    double decay = CLUSTERING_DECAY.value();
    double amount = decay * rate(step.temperature()) * Math.exp(-decay * y) * step.duration();
    return y + Math.log(1 + amount) / decay;
  }

  private static double rate(double temperature) {
    double exponent =
        -CLUSTERING_ENERGY.value()
            / GAS_CONSTANT.value()
            * (1 / temperature - 1 / ROOM_TEMPERATURE);
    return Math.exp(exponent) / HOUR;
  }
}
