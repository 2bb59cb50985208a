package afterweld.thermal.shell;

import java.util.Arrays;

/**
 * Solves one line along the weld: a tridiagonal system, closed on itself for a ring.
 *
 * <p>The ring's corner terms are taken as a change of rank one to an open line (Sherman and
 * Morrison, Ann. Math. Stat. 21 (1950) 124), whose second right side is solved together with the
 * first.
 */
final class ShellSweep {
  private static final double FADED = 1e-20;

  private final int count;
  private final boolean ring;
  private final double[] diagonal;
  private final double[] link;
  private final double[] inverse;
  private final double[] upper;
  private final double[] corner;

  ShellSweep(int count, boolean ring) {
    this.count = count;
    this.ring = ring;
    this.diagonal = new double[count];
    this.link = new double[count];
    this.inverse = new double[count];
    this.upper = new double[count];
    this.corner = new double[count];
  }

  /**
   * Replaces the heat gained by the change of temperature it makes.
   *
   * @param capacity of every cell, J/K
   * @param conductivity of every cell, W/(m K)
   * @param factor from conductivity to heat exchanged per kelvin, s m
   * @param values heat in J on entry, kelvin on return
   */
  void solve(double[] capacity, double[] conductivity, double factor, double[] values) {
    links(conductivity, factor);
    for (int i = 0; i < count; i++) {
      diagonal[i] = capacity[i] + link[i] + link[(i == 0 ? count : i) - 1];
    }
    if (ring) {
      solveRing(values);
    } else {
      factor();
      substitute(values);
    }
  }

  /** Heat exchanged between each cell and the next; 0 at the end of an open line. */
  private void links(double[] conductivity, double factor) {
    for (int i = 0; i < count - 1; i++) {
      link[i] = factor * (conductivity[i] + conductivity[i + 1]) / 2;
    }
    int end = count - 1;
    link[end] = ring ? factor * (conductivity[end] + conductivity[0]) / 2 : 0;
  }

  private void solveRing(double[] values) {
    int end = count - 1;
    double closing = -link[end];
    double split = -diagonal[0];
    diagonal[0] -= split;
    diagonal[end] -= closing * closing / split;
    factor();
    substitute(values);
    int reach = corner(split, closing);
    double ratio = closing / split;
    double share = (values[0] + ratio * values[end]) / (1 + corner[0] + ratio * corner[end]);
    for (int i = 0; i < reach; i++) {
      values[i] -= share * corner[i];
    }
    for (int i = Math.max(reach, count - reach); i < count; i++) {
      values[i] -= share * corner[i];
    }
  }

  /** Inverse pivots and the upper factors. */
  private void factor() {
    double above = 1 / diagonal[0];
    inverse[0] = above;
    for (int i = 1; i < count; i++) {
      double coupling = link[i - 1];
      double share = coupling * above;
      above = 1 / (diagonal[i] - coupling * share);
      upper[i] = share;
      inverse[i] = above;
    }
  }

  private void substitute(double[] values) {
    double last = values[0] * inverse[0];
    values[0] = last;
    for (int i = 1; i < count; i++) {
      last = (values[i] + link[i - 1] * last) * inverse[i];
      values[i] = last;
    }
    for (int i = count - 2; i >= 0; i--) {
      last = values[i] + upper[i + 1] * last;
      values[i] = last;
    }
  }

  /**
   * Solves for the corner's own right side: {@code split} at the start, {@code closing} at the end.
   * It fades from both ends inwards, and is left at nothing where no bit of the answer would
   * change.
   *
   * @return how many cells from either end it reaches
   */
  private int corner(double split, double closing) {
    Arrays.fill(corner, 0);
    int end = count - 1;
    corner[0] = split * inverse[0];
    double least = FADED * Math.abs(corner[0]);
    int reach = 1;
    while (reach < end && Math.abs(corner[reach - 1]) > least) {
      corner[reach] = link[reach - 1] * corner[reach - 1] * inverse[reach];
      reach++;
    }
    corner[end] = (closing + link[end - 1] * corner[end - 1]) * inverse[end];
    double leastBack = FADED * Math.abs(corner[end]);
    int from = end;
    while (from > 0 && Math.abs(corner[from]) > leastBack) {
      from--;
      corner[from] += upper[from + 1] * corner[from + 1];
    }
    for (int i = Math.min(from, reach) - 1; i >= 0; i--) {
      corner[i] += upper[i + 1] * corner[i + 1];
    }
    return Math.min(count, Math.max(reach, count - from));
  }
}
