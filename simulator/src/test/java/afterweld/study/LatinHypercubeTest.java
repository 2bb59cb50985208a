package afterweld.study;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.apache.commons.math3.stat.correlation.PearsonsCorrelation;
import org.junit.jupiter.api.Test;

/** Laws of a Latin hypercube, for any size and seed. */
class LatinHypercubeTest {
  @Property(tries = 100)
  void everyStratumIsUsedOnce(
      @ForAll @IntRange(min = 1, max = 300) int runs,
      @ForAll @IntRange(min = 1, max = 6) int inputs,
      @ForAll long seed) {
    for (double[] column : LatinHypercube.shares(runs, inputs, seed)) {
      int[] used = new int[runs];
      for (double share : column) {
        assertTrue(share > 0 && share < 1);
        used[(int) (share * runs)]++;
      }
      assertTrue(Arrays.stream(used).allMatch(count -> count == 1));
    }
  }

  @Property(tries = 20)
  void oneMoreInputChangesNoneBefore(@ForAll long seed) {
    double[][] three = LatinHypercube.shares(50, 3, seed);
    double[][] four = LatinHypercube.shares(50, 4, seed);
    for (int input = 0; input < 3; input++) {
      assertArrayEquals(three[input], four[input]);
    }
  }

  @Test
  void inputsAreNotTiedToEachOther() {
    double[][] shares = LatinHypercube.shares(2000, 5, 11);
    for (int one = 0; one < 5; one++) {
      for (int other = 0; other < one; other++) {
        double correlation = new PearsonsCorrelation().correlation(shares[one], shares[other]);
        assertEquals(0, correlation, 0.08, "three and a half standard errors of 2000 draws");
      }
    }
  }
}
