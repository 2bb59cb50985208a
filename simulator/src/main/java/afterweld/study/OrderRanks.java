package afterweld.study;

import afterweld.quantity.Check;
import org.apache.commons.math3.distribution.BinomialDistribution;

/**
 * How well a quantile is known from a number of runs, whatever the shape of the spread: ranks of
 * the sorted runs between which the quantile lies with 95 % confidence (order statistics; David and
 * Nagaraja, Order Statistics, 2003, section 7.1, from memory). Exact for plain random draws,
 * conservative for a Latin hypercube.
 *
 * @param low rank of the lower end, 1 for the lowest run; 0 if no run is low enough
 * @param high rank of the upper end; one more than the runs if none is high enough
 * @param coverage confidence that the quantile lies between
 */
public record OrderRanks(int low, int high, double coverage) {
  private static final double TAIL = 0.025;

  /** Refuses what it cannot be. */
  public OrderRanks {
    Check.notNegative("rank", low, "");
    Check.rising("ranks", low, high);
    Check.share("coverage", coverage);
  }

  /** The ranks round a quantile. */
  public static OrderRanks around(double share, int runs) {
    BinomialDistribution below = new BinomialDistribution(null, runs, share);
    int low = 0;
    while (low < runs && below.cumulativeProbability(low) <= TAIL) {
      low++;
    }
    int high = low + 1;
    while (high <= runs && 1 - below.cumulativeProbability(high - 1) > TAIL) {
      high++;
    }
    double coverage = below.cumulativeProbability(high - 1) - below.cumulativeProbability(low - 1);
    return new OrderRanks(low, high, coverage);
  }

  /**
   * Plain random runs needed so that a share of all joints exceeds the worst run, with a
   * confidence.
   */
  public static int runsFor(double share, double confidence) {
    return (int) Math.ceil(Math.log(1 - confidence) / Math.log(share) - 1e-9);
  }
}
