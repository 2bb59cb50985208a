package afterweld.joint;

/**
 * Principal branch of the Lambert function, the w at or above -1 that solves {@code w exp(w) = x}.
 * It closes both the law's exponent and the way back from a stress to a strain, so neither needs a
 * search. Halley's step after a start that is good to about 2 %; a series in the distance from the
 * branch point where the slope is lost. Accuracy: 1e-13 relative away from the branch point, the
 * square root of the rounding of x next to it. Source: Corless, Gonnet, Hare, Jeffrey, Knuth, Adv.
 * Comput. Math. 5 (1996) 329, equations 4.22 and 5.9 (from memory).
 */
final class LambertW {
  private static final double NEAR_BRANCH_POINT = 0.01;

  private LambertW() {}

  /** The function of x; x below -1/e (by rounding) counts as -1/e. */
  static double of(double x) {
    double p = Math.sqrt(Math.max(0, 2 * (1 + Math.E * x)));
    if (p < NEAR_BRANCH_POINT) {
      return nearBranchPoint(p);
    }
    return refined(x < -0.25 ? nearBranchPoint(p) : start(x), x);
  }

  private static double nearBranchPoint(double p) {
    return -1
        + p * (1 + p * (-1.0 / 3 + p * (11.0 / 72 + p * (-43.0 / 540 + p * (769.0 / 17280)))));
  }

  private static double start(double x) {
    double log = Math.log1p(x);
    return log * (1 - Math.log1p(log) / (2 + log));
  }

  private static double refined(double start, double x) {
    double w = start;
    for (int step = 0; step < 8; step++) {
      double power = Math.exp(w);
      double miss = w * power - x;
      double change = miss / (power * (w + 1) - (w + 2) * miss / (2 * w + 2));
      w -= change;
      if (Math.abs(change) <= 1e-6 * Math.abs(w)) {
        break;
      }
    }
    return w;
  }
}
