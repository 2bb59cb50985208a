package afterweld.thermal;

import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.analysis.solvers.BrentSolver;

/** Finds where a function changes its sign. */
public final class Root {
  private static final int MOST_STEPS = 200;

  private Root() {}

  /** The root between two places where the function has different signs. */
  public static double between(
      DoubleUnaryOperator function, double from, double to, double accuracy) {
    BrentSolver solver = new BrentSolver(1e-14, accuracy, Double.MIN_VALUE);
    return solver.solve(
        MOST_STEPS, function::applyAsDouble, Math.min(from, to), Math.max(from, to));
  }
}
