package afterweld.study;

import java.util.Arrays;
import java.util.Comparator;
import java.util.SplittableRandom;
import java.util.stream.IntStream;

/**
 * Which part of an output's variance an input explains on its own, from the runs at hand.
 *
 * <p>The runs are sorted by the input and cut into M = 2 N^(1/3) bins of equal count; with SSB the
 * sum of squares between the bins and SST that of all runs,
 *
 * <pre>
 * S = [SSB - (M - 1)(SST - SSB)/(N - M)] / SST
 * </pre>
 *
 * Corrected so that an input without effect gives 0 on average; single values may be below. Wide
 * bins cost a strongly curved effect some per cent. Source: correlation ratio, McKay 1995; Plischke
 * et al., Eur. J. Oper. Res. 226 (2013) 536 (form from memory). Scatter by 200 bootstrap samples.
 *
 * <p>Inputs must be independent. With 200 runs only inputs more than 0.1 apart may be ranked, with
 * 1,000 those more than 0.04 apart.
 */
public final class FirstOrder {
  private static final int REPEATS = 200;

  private final double[] output;
  private final int bins;

  /** The indices of one output, a value for each run, all finite. */
  public FirstOrder(double[] output) {
    this.output = output.clone();
    this.bins = (int) Math.max(2, Math.round(2 * Math.cbrt(output.length)));
  }

  /** The index of an input, a value for each run. NaN if the output does not vary. */
  public double of(double[] input) {
    int[] all = new int[output.length];
    Arrays.fill(all, 1);
    return index(order(input), all);
  }

  /**
   * Bootstrap samples of the indices, drawn alike for every input, so that those of a group may be
   * added.
   *
   * @param input a value for each run
   */
  public double[] samples(double[] input, long seed) {
    int[] order = order(input);
    SplittableRandom random = new SplittableRandom(seed);
    double[] samples = new double[REPEATS];
    for (int repeat = 0; repeat < REPEATS; repeat++) {
      int[] weights = new int[output.length];
      for (int draw = 0; draw < output.length; draw++) {
        weights[random.nextInt(output.length)]++;
      }
      samples[repeat] = index(order, weights);
    }
    return samples;
  }

  private static int[] order(double[] input) {
    return IntStream.range(0, input.length)
        .boxed()
        .sorted(Comparator.comparingDouble(run -> input[run]))
        .mapToInt(Integer::intValue)
        .toArray();
  }

  private double index(int[] order, int[] weights) {
    int runs = output.length;
    double mean = 0;
    for (int run = 0; run < runs; run++) {
      mean += weights[run] * output[run] / runs;
    }
    double[] sums = new double[bins];
    int[] counts = new int[bins];
    double total = 0;
    int passed = 0;
    for (int run : order) {
      double away = output[run] - mean;
      total += weights[run] * away * away;
      for (int copy = 0; copy < weights[run]; copy++) {
        int bin = (int) ((long) passed++ * bins / runs);
        sums[bin] += away;
        counts[bin]++;
      }
    }
    double between = between(sums, counts);
    double biased = (bins - 1) * (total - between) / (runs - bins);
    return total > 1e-12 * runs * mean * mean ? (between - biased) / total : Double.NaN;
  }

  private static double between(double[] sums, int[] counts) {
    double between = 0;
    for (int bin = 0; bin < sums.length; bin++) {
      between += counts[bin] > 0 ? sums[bin] * sums[bin] / counts[bin] : 0;
    }
    return between;
  }
}
