package afterweld.thermal.shell;

import java.util.Arrays;
import org.apache.commons.math3.special.Erf;

/**
 * Where the arc's heat enters the net: a Gaussian of 1.5 mm, or one spacing if that is more, along
 * and across the weld, each cell taking its integral, shared among the legs by thickness. What
 * falls outside the net is put back in proportion, so that all of the heat enters.
 */
final class ShellSource {
  private static final double SPREAD = 1.5e-3;
  private static final int PARTS = 4;

  private final ShellGrid grid;
  private final double spread;
  private final double[] share;

  /**
   * A source.
   *
   * @param offset of the bead's centre from the weld centre, m; negative to the left
   */
  ShellSource(ShellGrid grid, ShellLines lines, double offset) {
    this.grid = grid;
    this.spread = spread(grid);
    this.share = new double[lines.count()];
    for (int c = 0; c < grid.chains().size(); c++) {
      ShellGrid.Chain chain = grid.chains().get(c);
      double centre = chain.direction() * offset;
      for (int line = 0; line <= chain.last(); line++) {
        double part = within(chain.from(line) - centre, chain.to(line) - centre);
        share[line == 0 ? 0 : lines.first(c) + line - 1] += chain.thickness() * part;
      }
    }
    normalise(share);
  }

  /** Standard deviation of the Gaussian, m. */
  static double spread(ShellGrid grid) {
    return Math.max(SPREAD, grid.spacing());
  }

  private double within(double from, double to) {
    double scale = spread * Math.sqrt(2);
    return Erf.erf(from / scale, to / scale) / 2;
  }

  private static void normalise(double[] shares) {
    double sum = Arrays.stream(shares).sum();
    for (int i = 0; i < shares.length; i++) {
      shares[i] /= sum;
    }
  }

  /** The share of each line. */
  double[] share() {
    return share;
  }

  /**
   * Heat put into each place while the arc goes from one place to another.
   *
   * @param from along the weld, m
   * @param to along the weld, m
   * @param energy J
   */
  double[] along(double from, double to, double energy) {
    double[] parts = new double[grid.places()];
    for (int part = 0; part < PARTS; part++) {
      add(parts, from + (part + 0.5) / PARTS * (to - from));
    }
    normalise(parts);
    for (int i = 0; i < parts.length; i++) {
      parts[i] *= energy;
    }
    return parts;
  }

  private void add(double[] parts, double centre) {
    double spacing = grid.spacing();
    int reach = (int) Math.ceil(5 * spread / spacing);
    long middle = Math.round((centre - grid.along(0)) / spacing);
    for (long i = middle - reach; i <= middle + reach; i++) {
      double away = grid.along(0) + i * spacing - centre;
      double part = within(away - spacing / 2, away + spacing / 2);
      if (grid.ring()) {
        parts[(int) Math.floorMod(i, (long) parts.length)] += part;
      } else if (i >= 0 && i < parts.length) {
        parts[(int) i] += part;
      }
    }
  }
}
