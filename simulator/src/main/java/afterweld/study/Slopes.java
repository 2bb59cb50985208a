package afterweld.study;

import java.util.List;
import java.util.function.UnaryOperator;

/**
 * How residuals change with the values of a fit.
 *
 * <p>A predicted line may have a step, as at the fusion line. A point that lies at one gives a
 * difference as large as you like, by nothing but how close it happens to lie, although it is level
 * on either side: such a slope would tell a value far better than anybody can place an indent. What
 * a point tells is therefore limited by a wider look, which must find the change on both sides.
 *
 * @param parameters what is moved
 * @param model residuals of values
 * @param difference half the distance between the two places of a difference, in steps
 */
record Slopes(List<FitParameter> parameters, UnaryOperator<double[]> model, double difference) {
  /** The wider look, in differences. */
  private static final double WIDE = 10;

  /** A slope is at most so many times that of the wider look: a bend is no step. */
  private static final double STEEPEST = 2;

  /** Change of every residual with every value, by central differences. */
  double[][] jacobian(double[] values) {
    double[][] rows = new double[model.apply(values).length][values.length];
    for (int p = 0; p < values.length; p++) {
      double by = difference * parameters.get(p).step();
      double[] above = moved(values, p, by);
      double[] below = moved(values, p, -by);
      for (int k = 0; k < rows.length; k++) {
        rows[k][p] = (above[k] - below[k]) / (2 * by);
      }
    }
    return rows;
  }

  /** The same as far as a point can tell it, in steps of the parameters. */
  double[][] told(double[] values) {
    double[][] rows = jacobian(values);
    for (int p = 0; p < values.length; p++) {
      double[] wide = wide(values, p);
      for (int k = 0; k < rows.length; k++) {
        double most = STEEPEST * Math.abs(wide[k]);
        rows[k][p] = parameters.get(p).step() * Math.max(-most, Math.min(most, rows[k][p]));
      }
    }
    return rows;
  }

  /** By what each residual changes on both sides of a place, which keeps within the limits. */
  private double[] wide(double[] values, int p) {
    FitParameter one = parameters.get(p);
    double by = Math.min(WIDE * difference * one.step(), (one.high() - one.low()) / 4);
    double[] middle = values.clone();
    middle[p] = Math.max(one.low() + by, Math.min(one.high() - by, values[p]));
    double[] changes =
        onBothSides(moved(middle, p, -by), model.apply(middle), moved(middle, p, by));
    for (int k = 0; k < changes.length; k++) {
      changes[k] /= by;
    }
    return changes;
  }

  private double[] moved(double[] values, int p, double by) {
    double[] moved = values.clone();
    moved[p] += by;
    return model.apply(moved);
  }

  /** The lesser of two changes that go on in one direction; none where the second turns back. */
  static double[] onBothSides(double[] before, double[] here, double[] after) {
    double[] changes = new double[here.length];
    for (int k = 0; k < changes.length; k++) {
      double first = here[k] - before[k];
      double second = after[k] - here[k];
      double lesser = Math.min(Math.abs(first), Math.abs(second));
      changes[k] = first * second > 0 ? Math.copySign(lesser, first) : 0;
    }
    return changes;
  }
}
