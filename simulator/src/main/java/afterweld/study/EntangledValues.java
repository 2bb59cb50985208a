package afterweld.study;

import java.util.List;
import java.util.stream.IntStream;

/**
 * Two values of a fit that its points cannot tell apart: correlation over 0.95 or condition number
 * over 30 (common practice). One of them must be fixed: the later in the list, so the arc
 * efficiency goes on before the base hardness, and that before the centre. A value that by itself
 * changes hardly anything stands alone.
 *
 * @param kept goes on; the same as {@code fixed} if that stands alone
 * @param fixed number of the value to fix
 * @param fit the fit they are entangled in
 */
record EntangledValues(int kept, int fixed, RobustFit fit) {
  private static final double MOST_CORRELATION = 0.95;
  private static final double WORST_CONDITION = 30;

  /** A part of the weakest direction under this share of its largest is no partner. */
  private static final double PARTNER = 0.1;

  /** Whether some values of a fit are entangled. */
  static boolean in(RobustFit fit) {
    return fit.condition() > WORST_CONDITION || fit.strongestCorrelation() > MOST_CORRELATION;
  }

  /** The two that are entangled most. */
  static EntangledValues of(RobustFit fit) {
    return fit.strongestCorrelation() > MOST_CORRELATION ? correlated(fit) : weakest(fit);
  }

  private static EntangledValues correlated(RobustFit fit) {
    List<List<Double>> rows = fit.correlation();
    EntangledValues most = new EntangledValues(0, 1, fit);
    for (int i = 0; i < rows.size(); i++) {
      for (int j = i + 1; j < rows.size(); j++) {
        EntangledValues one = new EntangledValues(i, j, fit);
        most = Math.abs(one.correlation()) > Math.abs(most.correlation()) ? one : most;
      }
    }
    return most;
  }

  /** Where no correlation is known or none is strong: what the residuals tell least. */
  private static EntangledValues weakest(RobustFit fit) {
    List<Integer> order =
        IntStream.range(0, fit.weakest().size())
            .boxed()
            .sorted((i, j) -> Double.compare(size(fit, j), size(fit, i)))
            .toList();
    int first = order.get(0);
    int second = order.get(1);
    boolean alone = size(fit, second) < PARTNER * size(fit, first);
    return alone
        ? new EntangledValues(first, first, fit)
        : new EntangledValues(Math.min(first, second), Math.max(first, second), fit);
  }

  private static double size(RobustFit fit, int value) {
    return Math.abs(fit.weakest().get(value));
  }

  private double correlation() {
    return fit.correlation().get(kept).get(fixed);
  }

  private String name(int value) {
    return fit.estimates().get(value).parameter().name();
  }

  /** A sentence. */
  String words() {
    String head = FitParameter.capital(name(fixed)) + " stays as it is: ";
    if (kept == fixed) {
      return head + "it changes hardly anything here.";
    }
    return head + "these points cannot tell it from the " + name(kept) + ".";
  }
}
