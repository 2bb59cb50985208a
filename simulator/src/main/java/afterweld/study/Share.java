package afterweld.study;

import org.apache.commons.math3.distribution.BetaDistribution;

/**
 * A share of runs with its 95 % interval. For plain random draws; from a Latin hypercube, whose
 * counts scatter less, the interval is a little too wide, so it is conservative.
 *
 * @param count runs that did
 * @param runs all runs, at least 1
 */
public record Share(int count, int runs) {
  private static final double TWO_SIDED = 1.959963984540054;
  private static final double TAIL = 0.025;

  /** Checks that a share is one. */
  public Share {
    if (runs < 1 || count < 0 || count > runs) {
      throw new IllegalArgumentException(count + " of " + runs);
    }
  }

  /** The share itself. */
  public double estimate() {
    return (double) count / runs;
  }

  /** Low end: Clopper-Pearson where none or all did, Wilson otherwise. */
  public double low() {
    return atAnEnd() ? clopperPearsonLow() : wilson(-1);
  }

  /** High end: Clopper-Pearson where none or all did, Wilson otherwise. */
  public double high() {
    return atAnEnd() ? clopperPearsonHigh() : wilson(1);
  }

  /** Whether none or all did. */
  public boolean atAnEnd() {
    return count == 0 || count == runs;
  }

  /** What three divided by the runs leaves of certainty, 95 %, where all or none did. */
  public double ruleOfThree() {
    return 3.0 / runs;
  }

  /** Wilson's score interval (J. Am. Stat. Assoc. 22 (1927) 209). */
  private double wilson(int sign) {
    double square = TWO_SIDED * TWO_SIDED / runs;
    double p = estimate();
    double half = TWO_SIDED * Math.sqrt(p * (1 - p) / runs + square / (4 * runs));
    return (p + square / 2 + sign * half) / (1 + square);
  }

  /** Lower end of the exact interval (Clopper and Pearson, Biometrika 26 (1934) 404). */
  public double clopperPearsonLow() {
    return count == 0 ? 0 : beta(count, runs - count + 1).inverseCumulativeProbability(TAIL);
  }

  /** Upper end of the exact interval. */
  public double clopperPearsonHigh() {
    return count == runs ? 1 : beta(count + 1, runs - count).inverseCumulativeProbability(1 - TAIL);
  }

  private static BetaDistribution beta(double a, double b) {
    return new BetaDistribution(null, a, b, 1e-13);
  }
}
