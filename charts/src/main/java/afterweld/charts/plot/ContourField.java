package afterweld.charts.plot;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Values on a square lattice and the lines of equal value through it, in lattice steps. A cell with
 * an unknown corner has no line.
 */
public final class ContourField {
  private static final double FLAT = 0.01;

  private final double[] values;
  private final int side;

  /**
   * A field.
   *
   * @param values row by row, NaN for unknown
   * @param side values in a row
   */
  public ContourField(double[] values, int side) {
    this.values = values.clone();
    this.side = side;
  }

  /** A piece of a line, from one place to another. */
  record Piece(double x1, double y1, double x2, double y2) {}

  int side() {
    return side;
  }

  private double at(int column, int row) {
    return values[row * side + column];
  }

  /** The same field with each step cut into a number of steps, straight in between. */
  public ContourField finer(int cuts) {
    int finer = (side - 1) * cuts + 1;
    double[] all = new double[finer * finer];
    for (int row = 0; row < finer; row++) {
      for (int column = 0; column < finer; column++) {
        all[row * finer + column] = between((double) column / cuts, (double) row / cuts);
      }
    }
    return new ContourField(all, finer);
  }

  private double between(double x, double y) {
    int column = Math.min((int) x, side - 2);
    int row = Math.min((int) y, side - 2);
    double right = x - column;
    double up = y - row;
    double low = mixed(at(column, row), at(column + 1, row), right);
    double high = mixed(at(column, row + 1), at(column + 1, row + 1), right);
    return mixed(low, high, up);
  }

  private static double mixed(double one, double other, double share) {
    return share == 0 ? one : share == 1 ? other : one + share * (other - one);
  }

  /** Mean of the corners of a cell. */
  double middle(int column, int row) {
    return 0.25
        * (at(column, row) + at(column + 1, row) + at(column, row + 1) + at(column + 1, row + 1));
  }

  /**
   * Round values between the extremes, about as many as asked; none where the field varies by less
   * than one percent, which no reader should take for a slope.
   */
  public List<Double> levels(int count) {
    double low = Arrays.stream(values).filter(Double::isFinite).min().orElse(0);
    double high = Arrays.stream(values).filter(Double::isFinite).max().orElse(0);
    List<Double> levels = new ArrayList<>();
    if (high - low > FLAT * Math.abs(high)) {
      double step = roundStep((high - low) / count);
      for (double n = Math.ceil(low / step); n * step <= high; n++) {
        levels.add(n * step);
      }
    }
    return levels;
  }

  private static double roundStep(double step) {
    double power = Math.pow(10, Math.floor(Math.log10(step)));
    double figure = step / power;
    return power * (figure < 1.5 ? 1 : figure < 3.5 ? 2 : figure < 7.5 ? 5 : 10);
  }

  /** The pieces of one line: every cell is cut into two triangles, which leaves no doubt. */
  List<Piece> pieces(double level) {
    List<Piece> pieces = new ArrayList<>();
    for (int row = 0; row + 1 < side; row++) {
      for (int column = 0; column + 1 < side; column++) {
        triangle(pieces, level, new int[][] {{column, row}, {column + 1, row}, {column, row + 1}});
        triangle(
            pieces,
            level,
            new int[][] {{column + 1, row + 1}, {column + 1, row}, {column, row + 1}});
      }
    }
    return pieces;
  }

  private void triangle(List<Piece> pieces, double level, int[][] corners) {
    List<double[]> crossings = new ArrayList<>();
    for (int i = 0; i < 3; i++) {
      int[] from = corners[i];
      int[] to = corners[(i + 1) % 3];
      double a = at(from[0], from[1]);
      double b = at(to[0], to[1]);
      if (a < level && b >= level) {
        crossings.add(crossing(from, to, (level - a) / (b - a)));
      } else if (b < level && a >= level) {
        crossings.add(crossing(to, from, (level - b) / (a - b)));
      }
    }
    if (crossings.size() == 2) {
      double[] one = crossings.get(0);
      double[] other = crossings.get(1);
      if (!Arrays.equals(one, other)) {
        pieces.add(new Piece(one[0], one[1], other[0], other[1]));
      }
    }
  }

  /**
   * Always from the lower end: so both triangles of an edge find the same place to the last bit.
   */
  private static double[] crossing(int[] low, int[] high, double part) {
    return new double[] {low[0] + part * (high[0] - low[0]), low[1] + part * (high[1] - low[1])};
  }
}
