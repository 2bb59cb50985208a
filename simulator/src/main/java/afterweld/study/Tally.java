package afterweld.study;

import java.util.concurrent.atomic.AtomicIntegerArray;

/**
 * Counts of a quantity in narrow steps, so that quantiles at many places of a section cost the same
 * memory for any number of runs. Counting commutes: the result does not depend on the order of
 * runs.
 */
final class Tally {
  private final double step;
  private final int bins;
  private final AtomicIntegerArray counts;

  /**
   * An empty tally.
   *
   * @param places number of places
   * @param highest values above count as this
   * @param step width of a count
   */
  Tally(int places, double highest, double step) {
    this.step = step;
    this.bins = (int) Math.ceil(highest / step);
    this.counts = new AtomicIntegerArray(places * bins);
  }

  /** Counts a value at a place; a value that is not predicted is left out. */
  void add(int place, double value) {
    if (Double.isFinite(value)) {
      int bin = (int) Math.max(0, Math.min(bins - 1, Math.floor(value / step)));
      counts.incrementAndGet(place * bins + bin);
    }
  }

  /** Counts a value at every place. */
  void addAll(double[] values) {
    for (int place = 0; place < values.length; place++) {
      add(place, values[place]);
    }
  }

  /** The quantile at a place, to within the step; NaN if nothing was counted there. */
  double quantile(int place, double share) {
    long total = 0;
    for (int bin = 0; bin < bins; bin++) {
      total += counts.get(place * bins + bin);
    }
    double wanted = share * total;
    long below = 0;
    for (int bin = 0; bin < bins && total > 0; bin++) {
      int here = counts.get(place * bins + bin);
      if (here > 0 && below + here >= wanted) {
        return step * (bin + (wanted - below) / here);
      }
      below += here;
    }
    return Double.NaN;
  }

  /** The three quantiles that a band is drawn with. */
  Quantiles quantiles(int place) {
    return new Quantiles(quantile(place, 0.05), quantile(place, 0.5), quantile(place, 0.95));
  }
}
