package afterweld.charts;

/**
 * One axis of a plot.
 *
 * @param label name with unit; empty for an axis that shares the label of a plot below
 * @param from value at the left or lower end
 * @param to value at the other end
 */
record Axis(String label, double from, double to) {
  /** Checks that it has a length. */
  Axis {
    if (!(to > from) || Double.isInfinite(to - from)) {
      throw new IllegalArgumentException("axis from " + from + " to " + to);
    }
  }

  double span() {
    return to - from;
  }

  double clamp(double value) {
    return Math.max(from, Math.min(to, value));
  }

  /** The same axis without its label. */
  Axis unlabelled() {
    return new Axis("", from, to);
  }
}
