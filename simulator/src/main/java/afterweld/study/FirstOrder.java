package afterweld.study;

import java.util.Arrays;
import java.util.Comparator;
import java.util.stream.IntStream;

/**
 * Which part of an output's variance an input explains on its own, from the runs at hand.
 *
 * <p>The N runs are sorted by the input and cut into M = 2 N^(1/3) bins of equal count; with B the
 * sum of squares between the bins, W that within them and T both,
 *
 * <pre>
 * S = [B - (M - 1) W/(N - M)] / T
 * </pre>
 *
 * Corrected so that an input without effect gives 0 on average; single values may be below. Wide
 * bins cost a strongly curved effect some per cent. Source: correlation ratio, McKay 1995; Plischke
 * et al., Eur. J. Oper. Res. 226 (2013) 536 (form from memory).
 *
 * <p>The standard error is that of the analysis of variance with normal scatter s^2 = (1 - S) T/N
 * within the bins, carried through the formula above:
 *
 * <pre>
 * var B = 2 (M - 1) s^4 + 4 s^2 S T      var W = 2 (N - M) s^4
 * </pre>
 *
 * Drawing the runs again with repeats would call it twice as large: repeats are alike, and so seem
 * to be explained by any input.
 *
 * <p>Inputs must be independent.
 */
public final class FirstOrder {
  private final double[] output;
  private final int bins;

  /**
   * An index.
   *
   * @param value part of the variance; NaN if the output does not vary
   * @param error its standard error; NaN if the output does not vary
   */
  public record Index(double value, double error) {
    /** The index of both inputs together, as far as they act each on its own. */
    public Index and(Index other) {
      return new Index(value + other.value, Math.hypot(error, other.error));
    }
  }

  /** The indices of one output, a value for each run, all finite. */
  public FirstOrder(double[] output) {
    this.output = output.clone();
    this.bins = (int) Math.max(2, Math.round(2 * Math.cbrt(output.length)));
  }

  /** The index of an input, a value for each run. */
  public Index of(double[] input) {
    int runs = output.length;
    double mean = Arrays.stream(output).average().orElseThrow();
    double[] sums = new double[bins];
    int[] counts = new int[bins];
    double total = 0;
    int passed = 0;
    for (int run : order(input)) {
      double away = output[run] - mean;
      int bin = (int) ((long) passed++ * bins / runs);
      sums[bin] += away;
      counts[bin]++;
      total += away * away;
    }
    if (!(total > 1e-12 * runs * mean * mean)) {
      return new Index(Double.NaN, Double.NaN);
    }
    double between = between(sums, counts);
    double value = (between - (bins - 1) * (total - between) / (runs - bins)) / total;
    return new Index(value, error(Math.max(0, Math.min(1, value))));
  }

  private static int[] order(double[] input) {
    return IntStream.range(0, input.length)
        .boxed()
        .sorted(Comparator.comparingDouble(run -> input[run]))
        .mapToInt(Integer::intValue)
        .toArray();
  }

  private static double between(double[] sums, int[] counts) {
    double between = 0;
    for (int bin = 0; bin < sums.length; bin++) {
      between += counts[bin] > 0 ? sums[bin] * sums[bin] / counts[bin] : 0;
    }
    return between;
  }

  /** All sums of squares as parts of T. */
  private double error(double index) {
    double runs = output.length;
    double scatter = (1 - index) / runs;
    double ofBetween = 2 * (bins - 1) * scatter * scatter + 4 * scatter * index;
    double ofWithin = 2 * (runs - bins) * scatter * scatter;
    double byBetween = 1 - index;
    double byWithin = index + (bins - 1) / (runs - bins);
    return Math.sqrt(byBetween * byBetween * ofBetween + byWithin * byWithin * ofWithin);
  }
}
