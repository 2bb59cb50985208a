package afterweld.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/**
 * First-order indices of Ishigami's function with a = 7 and b = 0.1, whose exact values are known:
 * 0.3139, 0.4424 and 0 (Ishigami and Homma, 1990).
 */
class FirstOrderTest {
  private static final double[] EXACT = {0.313905, 0.442411, 0};

  static double[] input(double[] shares) {
    return Arrays.stream(shares).map(share -> Math.PI * (2 * share - 1)).toArray();
  }

  static double[] ishigami(double[][] x) {
    return IntStream.range(0, x[0].length)
        .mapToDouble(
            run ->
                Math.sin(x[0][run])
                    + 7 * Math.pow(Math.sin(x[1][run]), 2)
                    + 0.1 * Math.pow(x[2][run], 4) * Math.sin(x[0][run]))
        .toArray();
  }

  /** Mean index of an input over a number of hypercubes. */
  static double meanIndex(int input, int runs, int repeats) {
    return IntStream.range(0, repeats)
        .mapToDouble(
            seed -> {
              double[][] shares = LatinHypercube.shares(runs, 3, 100 + seed);
              double[][] x =
                  Arrays.stream(shares).map(FirstOrderTest::input).toArray(double[][]::new);
              return new FirstOrder(ishigami(x)).of(x[input]);
            })
        .average()
        .orElseThrow();
  }

  @Test
  void aThousandRunsFindTheExactValues() {
    assertEquals(EXACT[0], meanIndex(0, 1000, 20), 0.015);
    assertEquals(EXACT[1], meanIndex(1, 1000, 20), 0.03, "wide bins take 4 % of a curved effect");
    assertEquals(EXACT[2], meanIndex(2, 1000, 20), 0.008);
  }

  @Test
  void narrowerBinsOfMoreRunsComeCloser() {
    double few = Math.abs(meanIndex(1, 1000, 5) - EXACT[1]);
    double many = Math.abs(meanIndex(1, 20_000, 5) - EXACT[1]);
    assertTrue(many < few, few + " " + many);
    assertEquals(EXACT[1], meanIndex(1, 20_000, 5), 0.008);
  }

  @Test
  void theBootstrapErrorIsThatOfRepeatedStudies() {
    double[][] shares = LatinHypercube.shares(1000, 3, 5);
    double[][] x = Arrays.stream(shares).map(FirstOrderTest::input).toArray(double[][]::new);
    double[] samples = new FirstOrder(ishigami(x)).samples(x[0], 3);
    double mean = Arrays.stream(samples).average().orElseThrow();
    double variance =
        Arrays.stream(samples).map(s -> (s - mean) * (s - mean)).sum() / (samples.length - 1);
    assertTrue(Math.sqrt(variance) > 0.008 && Math.sqrt(variance) < 0.04, "sd " + variance);
  }

  @Test
  void anOutputThatDoesNotVaryHasNoIndex() {
    double[] flat = new double[100];
    Arrays.fill(flat, 3);
    double[] input = IntStream.range(0, 100).mapToDouble(i -> i).toArray();
    assertTrue(Double.isNaN(new FirstOrder(flat).of(input)));
  }
}
