package afterweld.metallurgy;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class MassBalanceTest {
  /** V(q) = 0.3 (1 - q)^n meets q at a root that bisection finds independently. */
  @ParameterizedTest
  @ValueSource(doubles = {0.1, 1, 3, 50, 3000})
  void findsTheRootOfFallingFunctions(double power) {
    double low = 0;
    double high = 1;
    for (int i = 0; i < 100; i++) {
      double middle = (low + high) / 2;
      boolean below = 0.3 * Math.pow(1 - middle, power) > middle;
      low = below ? middle : low;
      high = below ? high : middle;
    }
    double found = new MassBalance(1).solve(q -> 0.3 * Math.pow(1 - q, power), 0.5);
    assertEquals(low, found, 1e-9);
  }

  /** Dissolution within a tiny change of concentration: steep, but the bracket holds. */
  @ParameterizedTest
  @ValueSource(doubles = {0, 1e-12, 0.4, 1})
  void findsAStepFromAnyGuess(double guess) {
    double found = new MassBalance(1).solve(q -> 0.8 / (1 + Math.exp((q - 0.37) / 1e-6)), guess);
    assertEquals(0.37, found, 1e-5);
  }
}
