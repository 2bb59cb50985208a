package afterweld.charts.plot;

/**
 * One axis of a plot.
 *
 * @param label name with unit; empty for an axis that shares the label of a plot below
 * @param from value at the left or lower end
 * @param to value at the other end
 * @param logarithmic whether values are decimal logarithms of what the figures say
 */
public record Axis(String label, double from, double to, boolean logarithmic) {
  /** An axis on which equal steps are equal differences. */
  public Axis(String label, double from, double to) {
    this(label, from, to, false);
  }

  /** An axis of powers of ten: values on it are decimal logarithms, its figures are not. */
  public static Axis logarithmic(String label, double from, double to) {
    return new Axis(label, from, to, true);
  }

  /** What stands at a tick; nothing on a logarithmic axis, whose figures the plot sets itself. */
  String figure(double value) {
    return logarithmic ? "" : Figures.shortest(value);
  }

  /** Checks that it has a length. */
  public Axis {
    if (!(to > from) || Double.isInfinite(to - from)) {
      throw new IllegalArgumentException("axis from " + from + " to " + to);
    }
  }

  /** From one end to the other, in the axis' own unit. */
  public double span() {
    return to - from;
  }

  /** The value, or the end of the axis that it lies beyond. */
  public double clamp(double value) {
    return Math.max(from, Math.min(to, value));
  }

  /** The same axis without its label. */
  public Axis unlabelled() {
    return new Axis("", from, to, logarithmic);
  }
}
