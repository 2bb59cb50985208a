package afterweld.study;

import afterweld.quantity.Check;
import java.util.Arrays;

/**
 * What 5, 50 and 95 % of the runs stay below; NaN where nothing is predicted.
 *
 * @param p5 low
 * @param p50 middle
 * @param p95 high
 */
public record Quantiles(double p5, double p50, double p95) {
  /** Refuses what it cannot be. */
  public Quantiles {
    if (!Double.isNaN(p5)) {
      Check.rising("quantiles", p5, p50, p95);
    }
  }

  /** Of values, those that are not finite left out. */
  static Quantiles of(double[] values) {
    double[] sorted = Arrays.stream(values).filter(Double::isFinite).sorted().toArray();
    return new Quantiles(at(sorted, 0.05), at(sorted, 0.5), at(sorted, 0.95));
  }

  /** Straight between the middles of the runs' own shares. */
  private static double at(double[] sorted, double share) {
    if (sorted.length == 0) {
      return Double.NaN;
    }
    double place = Math.max(0, Math.min(sorted.length - 1.0, share * sorted.length - 0.5));
    int below = (int) place;
    int above = Math.min(below + 1, sorted.length - 1);
    return sorted[below] + (place - below) * (sorted[above] - sorted[below]);
  }
}
