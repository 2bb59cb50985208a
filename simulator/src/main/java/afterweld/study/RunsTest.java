package afterweld.study;

import afterweld.quantity.Check;
import org.apache.commons.math3.distribution.NormalDistribution;

/**
 * Whether residuals change sign as often as chance would have it (Wald and Wolfowitz, Ann. Math.
 * Stat. 11 (1940) 147, normal approximation).
 *
 * @param runs stretches of one sign
 * @param expected stretches by chance
 * @param chance of a number this far from what is expected; 1 if all have one sign or are too few
 */
public record RunsTest(int runs, double expected, double chance) {
  /** Chance under which runs are held to be no chance (convention). */
  private static final double UNLIKELY = 0.05;

  /** Refuses what it cannot be. */
  public RunsTest {
    Check.notNegative("runs", runs, "");
    Check.notNegative("expected runs", expected, "");
    Check.share("chance", chance);
  }

  /** Whether neighbours lie on one side of the line more often than by chance. */
  public boolean clustered() {
    return runs < expected && chance < UNLIKELY;
  }

  /** The test of residuals in their order along the section. */
  public static RunsTest of(double[] residuals) {
    int positive = 0;
    int runs = residuals.length > 0 ? 1 : 0;
    for (int i = 0; i < residuals.length; i++) {
      positive += residuals[i] > 0 ? 1 : 0;
      runs += i > 0 && residuals[i] > 0 != residuals[i - 1] > 0 ? 1 : 0;
    }
    double n = residuals.length;
    double product = 2.0 * positive * (n - positive);
    double expected = product / n + 1;
    double variance = product * (product - n) / (n * n * (n - 1));
    if (!(variance > 0)) {
      return new RunsTest(runs, expected, 1);
    }
    double away = Math.abs(runs - expected) / Math.sqrt(variance);
    double chance = 2 * (1 - new NormalDistribution(null, 0, 1).cumulativeProbability(away));
    return new RunsTest(runs, expected, chance);
  }
}
