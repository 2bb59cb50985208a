package afterweld.study;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.apache.commons.math3.analysis.interpolation.AkimaSplineInterpolator;
import org.apache.commons.math3.analysis.polynomials.PolynomialSplineFunction;

/**
 * Traverses made up from a table of hardness over peak temperature, with a peak that falls with the
 * distance: T = 20 + efficiency B / |y|. 50 points, 3 HV of noise; the truth is known.
 */
public final class SyntheticTraverse {
  static final double[] TRUTH = {0.75, 105, 62, 0.4e-3};
  static final double NOISE = 3;
  private static final int POINTS = 50;
  private static final double B = 4.64;
  private static final PolynomialSplineFunction SOFTNESS = softness();
  private static final double[] DISTANCES = places();
  private static final List<FitParameter> PARAMETERS =
      List.of(
          new FitParameter("arc efficiency", "", 0.68, 0.3, 0.95, 0.1),
          new FitParameter("base hardness", "HV", 100, 60, 150, 10),
          new FitParameter("lowest hardness", "HV", 70, 30, 100, 10),
          new FitParameter("centre offset", "m", 0, -5e-3, 5e-3, 1e-3));

  private SyntheticTraverse() {}

  /** From 0 in the base to 1 at the softest place, over the peak temperature in °C. */
  private static PolynomialSplineFunction softness() {
    List<double[]> rows = rows();
    double base = rows.get(0)[1];
    double least = rows.stream().mapToDouble(row -> row[1]).min().orElseThrow();
    double[] peaks = rows.stream().mapToDouble(row -> row[0]).toArray();
    double[] soft = rows.stream().mapToDouble(row -> (base - row[1]) / (base - least)).toArray();
    return new AkimaSplineInterpolator().interpolate(peaks, soft);
  }

  private static List<double[]> rows() {
    try (BufferedReader lines =
        new BufferedReader(
            new InputStreamReader(
                SyntheticTraverse.class.getResourceAsStream("/afterweld/strength/haz_curves.csv"),
                StandardCharsets.UTF_8))) {
      return lines
          .lines()
          .filter(line -> line.startsWith("T6,10,"))
          .map(line -> line.split(",", -1))
          .map(cells -> new double[] {Double.parseDouble(cells[2]), Double.parseDouble(cells[4])})
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static double[] places() {
    return IntStream.range(0, POINTS).mapToDouble(i -> -25e-3 + 50e-3 * i / (POINTS - 1)).toArray();
  }

  static double[] hardness(double[] values) {
    double[] knots = SOFTNESS.getKnots();
    double last = knots[knots.length - 1];
    return IntStream.range(0, POINTS)
        .mapToDouble(
            i -> {
              double away = Math.max(1e-4, Math.abs(DISTANCES[i] - values[3]));
              double peak = Math.max(knots[0], Math.min(last, 20 + values[0] * B / away));
              return values[1] - (values[1] - values[2]) * SOFTNESS.value(peak);
            })
        .toArray();
  }

  /** A fit to one noisy traverse. */
  static RobustFit fit(long seed) {
    Random noise = new Random(seed);
    double[] measured = hardness(TRUTH);
    for (int i = 0; i < POINTS; i++) {
      measured[i] += NOISE * noise.nextGaussian();
    }
    return RobustFit.of(
        PARAMETERS,
        values -> {
          double[] predicted = hardness(values);
          return IntStream.range(0, POINTS)
              .mapToDouble(i -> (predicted[i] - measured[i]) / NOISE)
              .toArray();
        },
        1e-3);
  }

  /** How many of a number of fits hold each true value in their 95 % interval. */
  public static int[] covered(int seeds) {
    return covered(IntStream.range(0, seeds).mapToObj(SyntheticTraverse::fit).toList());
  }

  static int[] covered(List<RobustFit> fits) {
    int[] covered = new int[TRUTH.length];
    for (RobustFit fit : fits) {
      for (int p = 0; p < TRUTH.length; p++) {
        RobustFit.Estimate one = fit.estimates().get(p);
        covered[p] += one.low() <= TRUTH[p] && TRUTH[p] <= one.high() ? 1 : 0;
      }
    }
    return covered;
  }
}
