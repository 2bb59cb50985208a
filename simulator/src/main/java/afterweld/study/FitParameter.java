package afterweld.study;

/**
 * One thing a fit may move.
 *
 * @param name such as {@code arc efficiency}
 * @param unit empty if it has none
 * @param start where the fit begins
 * @param low lowest value
 * @param high highest value
 * @param step what counts as one step of it: the scale of the Jacobian
 */
public record FitParameter(
    String name, String unit, double start, double low, double high, double step) {
  /** Checks the order of its values. */
  public FitParameter {
    if (!(low < start && start < high && step > 0)) {
      throw new IllegalArgumentException(name + " " + low + " " + start + " " + high);
    }
  }
}
