package afterweld.study;

import java.util.SplittableRandom;

/**
 * Latin hypercube: for every input the range of shares from 0 to 1 is cut into as many strata as
 * there are runs, each stratum is used once, and its place in the order of runs is random. A mean
 * over the runs then scatters less than with plain random draws.
 *
 * <p>Source: McKay, Beckman, Conover, Technometrics 21 (1979) 239. One more input at the end
 * changes none of the draws before it.
 */
public final class LatinHypercube {
  private LatinHypercube() {}

  /**
   * Shares between 0 and 1, never at either end.
   *
   * @param runs number of runs, at least 1
   * @param inputs number of inputs
   * @return shares by input, then by run
   */
  public static double[][] shares(int runs, int inputs, long seed) {
    double[][] shares = new double[inputs][];
    SplittableRandom root = new SplittableRandom(seed);
    for (int input = 0; input < inputs; input++) {
      shares[input] = column(runs, root.split());
    }
    return shares;
  }

  private static double[] column(int runs, SplittableRandom random) {
    double[] column = new double[runs];
    for (int run = 0; run < runs; run++) {
      double inside = Math.max(random.nextDouble(), Double.MIN_NORMAL);
      int other = random.nextInt(run + 1);
      column[run] = column[other];
      column[other] = (run + inside) / runs;
    }
    return column;
  }
}
