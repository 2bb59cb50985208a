package afterweld.metallurgy;

import static afterweld.metallurgy.Treatments.DAY;
import static afterweld.metallurgy.Treatments.HOUR;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class ClustersTest {
  /** At 25 °C one per hour, slowing down: ln(1 + 8.697 · 24) / 8.697 by hand. */
  @Test
  void oneDayOnTheShelf() {
    assertEquals(0.6146, Clusters.after(Interval.of(298.15, DAY), 0), 1e-4);
  }

  /** Logarithmic law: the tenth day adds less than the second. */
  @Test
  void naturalAgeingSlowsDown() {
    double[] degree = new double[11];
    for (int day = 1; day <= 10; day++) {
      degree[day] = Clusters.after(Interval.of(298.15, day * DAY), 0);
    }
    assertTrue(degree[10] - degree[9] < 0.3 * (degree[2] - degree[1]));
  }

  /** 1 / (1 + exp((423.15 - 383) / 10)) by hand. */
  @Test
  void heatTakesClustersApart() {
    assertEquals(0.01772, Clusters.after(Interval.of(423.15, 1000 * HOUR), 1), 1e-5);
  }

  @Property
  void twoStepsAreAsGoodAsOne(
      @ForAll @DoubleRange(min = 290, max = 800) double temperature,
      @ForAll @DoubleRange(min = 0.1, max = 1e6) double time,
      @ForAll @DoubleRange(min = 0, max = 1) double share,
      @ForAll @DoubleRange(min = 0, max = 1) double y) {
    double once = Clusters.after(Interval.of(temperature, time), y);
    double first = Clusters.after(Interval.of(temperature, share * time), y);
    assertEquals(once, Clusters.after(Interval.of(temperature, (1 - share) * time), first), 1e-9);
  }
}
