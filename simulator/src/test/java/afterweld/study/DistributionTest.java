package afterweld.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.function.DoubleUnaryOperator;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.apache.commons.math3.distribution.TriangularDistribution;
import org.junit.jupiter.api.Test;

class DistributionTest {
  private static double mean(DoubleUnaryOperator quantile) {
    double sum = 0;
    for (int i = 0; i < 100_000; i++) {
      sum += quantile.applyAsDouble((i + 0.5) / 100_000);
    }
    return sum / 100_000;
  }

  @Property(tries = 200)
  void aTriangleIsThatOfTheStatisticsLibrary(
      @ForAll @DoubleRange(min = 0.01, max = 0.99) double share,
      @ForAll @DoubleRange(min = 3, max = 15) double mode) {
    double ours = Distribution.triangular(3, mode, 15).quantile().at(share);
    double theirs =
        new TriangularDistribution(null, 3, mode, 15).inverseCumulativeProbability(share);
    assertEquals(theirs, ours, 1e-9);
  }

  @Test
  void aCutOffNormalStaysInside() {
    Distribution dilution = Distribution.truncatedNormal(0.05, 0.05, 0, 1);
    assertTrue(dilution.quantile().at(1e-12) >= 0);
    assertTrue(dilution.quantile().at(1 - 1e-12) <= 1);
    double tail = Math.exp(-0.5) / Math.sqrt(2 * Math.PI) / 0.841344746;
    assertEquals(0.05 + 0.05 * tail, mean(dilution.quantile()::at), 1e-4, "closed form");
  }

  @Test
  void noSpreadIsNoSpread() {
    assertEquals(7, Distribution.triangular(7, 7, 7).quantile().at(0.3));
    assertEquals(0.4, Distribution.truncatedNormal(0.4, 0, 0, 1).quantile().at(0.9));
  }
}
