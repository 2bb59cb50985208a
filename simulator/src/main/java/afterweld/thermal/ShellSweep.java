package afterweld.thermal;

/**
 * Solves one line along the weld: a tridiagonal system, closed on itself for a ring.
 *
 * <p>The ring's corner terms are taken as a change of rank one to an open line (Sherman and
 * Morrison, Ann. Math. Stat. 21 (1950) 124), whose second right side is solved together with the
 * first.
 */
final class ShellSweep {
  private final int count;
  private final boolean ring;
  private final double[] diagonal;
  private final double[] link;
  private final double[] upper;
  private final double[] corner;

  ShellSweep(int count, boolean ring) {
    this.count = count;
    this.ring = ring;
    this.diagonal = new double[count];
    this.link = new double[count];
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
      eliminate(values, null);
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
    java.util.Arrays.fill(corner, 0);
    corner[0] = split;
    corner[end] = closing;
    diagonal[0] -= split;
    diagonal[end] -= closing * closing / split;
    eliminate(values, corner);
    double ratio = closing / split;
    double share = (values[0] + ratio * values[end]) / (1 + corner[0] + ratio * corner[end]);
    for (int i = 0; i < count; i++) {
      values[i] -= share * corner[i];
    }
  }

  private void eliminate(double[] first, double[] second) {
    double inverse = 1 / diagonal[0];
    first[0] *= inverse;
    if (second != null) {
      second[0] *= inverse;
    }
    for (int i = 1; i < count; i++) {
      double coupling = link[i - 1];
      upper[i] = -coupling * inverse;
      inverse = 1 / (diagonal[i] + coupling * upper[i]);
      first[i] = (first[i] + coupling * first[i - 1]) * inverse;
      if (second != null) {
        second[i] = (second[i] + coupling * second[i - 1]) * inverse;
      }
    }
    back(first);
    if (second != null) {
      back(second);
    }
  }

  private void back(double[] values) {
    for (int i = count - 2; i >= 0; i--) {
      values[i] -= upper[i + 1] * values[i + 1];
    }
  }
}
