package afterweld.study;

import afterweld.quantity.Check;
import java.util.List;

/**
 * From when to when a computed curve lies over a level, between its points by straight lines over
 * the logarithm of time.
 *
 * @param from first time, h
 * @param to last time, h
 */
record HeldTime(double from, double to) {
  /** Refuses what it cannot be. */
  HeldTime {
    Check.rising("held time", from, to);
  }

  /**
   * The time over a level that the curve reaches somewhere.
   *
   * @param hours rising, h
   * @param values one for each time
   */
  static HeldTime of(List<Double> hours, double[] values, double level) {
    int first = 0;
    while (values[first] < level) {
      first++;
    }
    int last = values.length - 1;
    while (values[last] < level) {
      last--;
    }
    double from = first == 0 ? hours.get(0) : crossing(hours, values, first - 1, level);
    boolean held = last == values.length - 1;
    return new HeldTime(from, held ? hours.get(last) : crossing(hours, values, last, level));
  }

  private static double crossing(List<Double> hours, double[] values, int before, double level) {
    double share = (level - values[before]) / (values[before + 1] - values[before]);
    double ratio = hours.get(before + 1) / hours.get(before);
    return hours.get(before) * Math.pow(ratio, share);
  }
}
