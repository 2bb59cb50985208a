package afterweld.metallurgy;

import java.util.function.DoubleUnaryOperator;

/**
 * Solves {@code q = V(q)}: the precipitates after a step grow in the matrix that they leave behind.
 *
 * <p>{@code V(q) - q} falls with {@code q} and changes sign between 0 and the hardening solute, so
 * the secant method inside that bracket, halved when it stalls, always arrives.
 */
final class MassBalance {
  private static final double TOLERANCE = 1e-9;
  private static final int SECANT_EVALUATIONS = 40;
  private static final int MOST_EVALUATIONS = 120;

  private final double largest;

  /**
   * @param largest upper end of the bracket, formula units per atom
   */
  MassBalance(double largest) {
    this.largest = largest;
  }

  /**
   * The precipitates after the step, formula units per atom, to 1e-9 of the bracket.
   *
   * @param precipitates V; its last evaluation is the one whose value is returned
   * @param guess those before the step
   */
  double solve(DoubleUnaryOperator precipitates, double guess) {
    double low = 0;
    double high = largest;
    double q = Math.min(high, Math.max(low, guess));
    double misfit = precipitates.applyAsDouble(q) - q;
    double next = q + misfit;
    for (int i = 0; i < MOST_EVALUATIONS && Math.abs(misfit) > TOLERANCE * largest; i++) {
      low = misfit > 0 ? q : low;
      high = misfit > 0 ? high : q;
      boolean halve = i > SECANT_EVALUATIONS || !(next > low && next < high);
      double tried = halve ? (low + high) / 2 : next;
      double triedMisfit = precipitates.applyAsDouble(tried) - tried;
      next = tried - triedMisfit * (tried - q) / (triedMisfit - misfit);
      q = tried;
      misfit = triedMisfit;
    }
    return q + misfit;
  }
}
