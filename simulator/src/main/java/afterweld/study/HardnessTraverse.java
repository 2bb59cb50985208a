package afterweld.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/**
 * A hardness traverse as measured across the weld.
 *
 * @param points by increasing distance
 */
public record HardnessTraverse(List<Point> points) {
  /** Fewest points that a fit is made from. */
  public static final int FEWEST = 8;

  /** Scatter of one indent where the file does not say, HV (common practice). */
  public static final double USUAL_DEVIATION = 3;

  private static final double MOST_APART = 20;
  private static final int END_POINTS = 3;
  private static final double BASE_SCATTER = 8;

  /** Sorts the points. */
  public HardnessTraverse {
    points = points.stream().sorted(Comparator.comparingDouble(Point::distance)).toList();
  }

  /**
   * One indent.
   *
   * @param distance m, negative on the left
   * @param hardness HV
   * @param deviation standard deviation, HV
   */
  public record Point(double distance, double hardness, double deviation) {}

  /** What speaks against a fit, in sentences; empty if nothing does. */
  public List<String> faults() {
    List<String> faults = new ArrayList<>();
    if (points.size() < FEWEST) {
      faults.add(points.size() + " points; expected at least " + FEWEST);
    }
    for (int i = 1; i < points.size(); i++) {
      Point before = points.get(i - 1);
      Point here = points.get(i);
      if (here.distance() - before.distance() < 1e-9
          && Math.abs(here.hardness() - before.hardness()) > MOST_APART) {
        faults.add(
            String.format(
                Locale.ROOT,
                "two points at %.3f mm differ by over 20 HV; expected one of them",
                here.distance() * 1e3));
      }
    }
    return faults;
  }

  /** Whether the points lie on both sides of the weld centre. */
  public boolean twoSided() {
    return points.get(0).distance() < 0 && points.get(points.size() - 1).distance() > 0;
  }

  /** Whether the last three points on either side agree within 8 HV, as base metal does. */
  public boolean reachesBase() {
    int size = points.size();
    return even(points.subList(0, END_POINTS)) || even(points.subList(size - END_POINTS, size));
  }

  private static boolean even(List<Point> some) {
    double low = some.stream().mapToDouble(Point::hardness).min().orElseThrow();
    double high = some.stream().mapToDouble(Point::hardness).max().orElseThrow();
    return high - low <= BASE_SCATTER;
  }
}
