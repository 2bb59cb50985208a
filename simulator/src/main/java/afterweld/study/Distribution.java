package afterweld.study;

import org.apache.commons.math3.distribution.NormalDistribution;

/**
 * How an input spreads: its value at any share of the draws below it.
 *
 * @param shape such as {@code uniform}
 * @param quantile the value that a share of the draws stays below
 */
public record Distribution(String shape, Quantile quantile) {
  private static final NormalDistribution NORMAL = new NormalDistribution(null, 0, 1);

  /** The value that a share (0 to 1) of the draws stays below. */
  @FunctionalInterface
  public interface Quantile {
    /** The value under which that share of all draws lies, 0 to 1. */
    double at(double share);
  }

  /** Equally likely from {@code low} to {@code high}. */
  public static Distribution uniform(double low, double high) {
    return new Distribution("uniform", share -> low + share * (high - low));
  }

  /** Most likely at {@code mode}, falling straight to nothing at both ends. */
  public static Distribution triangular(double low, double mode, double high) {
    double rising = high > low ? (mode - low) / (high - low) : 0;
    return new Distribution(
        "triangular",
        share ->
            share < rising
                ? low + Math.sqrt(share * (high - low) * (mode - low))
                : high - Math.sqrt((1 - share) * (high - low) * (high - mode)));
  }

  /** Normal, cut off at both ends and the rest stretched to make it whole. */
  public static Distribution truncatedNormal(
      double mean, double deviation, double low, double high) {
    if (!(deviation > 0)) {
      return uniform(mean, mean);
    }
    double below = NORMAL.cumulativeProbability((low - mean) / deviation);
    double upTo = NORMAL.cumulativeProbability((high - mean) / deviation);
    return new Distribution(
        "normal, cut off", share -> mean + deviation * normal(below + share * (upTo - below)));
  }

  /** Normal with mean 0 and standard deviation 1. */
  public static Distribution standardNormal() {
    return new Distribution("normal", Distribution::normal);
  }

  private static double normal(double share) {
    return NORMAL.inverseCumulativeProbability(share);
  }
}
