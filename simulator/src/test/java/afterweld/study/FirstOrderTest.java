package afterweld.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.math3.stat.descriptive.moment.StandardDeviation;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

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

  /** The index of an input over a number of hypercubes. */
  static List<FirstOrder.Index> studies(int input, int runs, int repeats) {
    return IntStream.range(0, repeats)
        .mapToObj(
            seed -> {
              double[][] shares = LatinHypercube.shares(runs, 3, 100 + seed);
              double[][] x =
                  Arrays.stream(shares).map(FirstOrderTest::input).toArray(double[][]::new);
              return new FirstOrder(ishigami(x)).of(x[input]);
            })
        .toList();
  }

  static double meanIndex(int input, int runs, int repeats) {
    return studies(input, runs, repeats).stream()
        .mapToDouble(FirstOrder.Index::value)
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

  @ParameterizedTest
  @CsvSource({"0,200", "1,200", "2,200", "0,1000", "1,1000", "2,1000"})
  void theErrorIsTheScatterOfRepeatedStudies(int input, int runs) {
    List<FirstOrder.Index> studies = studies(input, runs, 200);
    double scatter =
        new StandardDeviation()
            .evaluate(studies.stream().mapToDouble(FirstOrder.Index::value).toArray());
    double told = studies.stream().mapToDouble(FirstOrder.Index::error).average().orElseThrow();
    assertEquals(scatter, told, 0.3 * scatter);
  }

  @Test
  void theErrorOfAGroupIsTheScatterOfRepeatedStudies() {
    List<FirstOrder.Index> studies =
        IntStream.range(0, 200).mapToObj(seed -> groupOfSix(200, seed)).toList();
    double[] values = studies.stream().mapToDouble(FirstOrder.Index::value).toArray();
    double told = studies.stream().mapToDouble(FirstOrder.Index::error).average().orElseThrow();
    double scatter = new StandardDeviation().evaluate(values);
    assertEquals(0.75, Arrays.stream(values).average().orElseThrow(), 0.02);
    assertEquals(scatter, told, 0.3 * scatter);
  }

  /** Six of eight inputs that act alike and add up: together three quarters. */
  private static FirstOrder.Index groupOfSix(int runs, int seed) {
    double[][] shares = LatinHypercube.shares(runs, 8, 500 + seed);
    double[] sum =
        IntStream.range(0, runs)
            .mapToDouble(run -> Arrays.stream(shares).mapToDouble(input -> input[run]).sum())
            .toArray();
    FirstOrder indices = new FirstOrder(sum);
    return Arrays.stream(shares)
        .limit(6)
        .map(indices::of)
        .reduce(FirstOrder.Index::and)
        .orElseThrow();
  }

  @Test
  void anOutputThatDoesNotVaryHasNoIndex() {
    double[] flat = new double[100];
    Arrays.fill(flat, 3);
    double[] input = IntStream.range(0, 100).mapToDouble(i -> i).toArray();
    assertTrue(Double.isNaN(new FirstOrder(flat).of(input).value()));
  }
}
