package afterweld.study;

import afterweld.quantity.Check;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

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

  /** Indents at one place that differ more are a slip of the pen, HV (assumed). */
  private static final double MOST_APART = 20;

  /** Outermost points of a side that are the base (assumed). */
  private static final int END_POINTS = 3;

  /** Base readings that lie farther apart, HV, are not level (assumed). */
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
  public record Point(double distance, double hardness, double deviation) {
    /** Refuses what it cannot be. */
    public Point {
      Check.finite("distance", distance, "m");
      Check.positive("hardness", hardness, "HV");
      Check.notNegative("deviation", deviation, "HV");
    }
  }

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

  /** What the outermost three points agree on, on the left and on the right, where they do. */
  public List<Level> outerLevels() {
    int size = points.size();
    List<Level> levels = new ArrayList<>();
    if (points.get(0).distance() < 0) {
      level(points.subList(0, END_POINTS)).ifPresent(levels::add);
    }
    if (points.get(size - 1).distance() > 0) {
      level(points.subList(size - END_POINTS, size)).ifPresent(levels::add);
    }
    return levels;
  }

  private static Optional<Level> level(List<Point> some) {
    DoubleSummaryStatistics hardness =
        some.stream().mapToDouble(Point::hardness).summaryStatistics();
    double squares = some.stream().mapToDouble(point -> Math.pow(point.deviation(), 2)).sum();
    return hardness.getMax() - hardness.getMin() > BASE_SCATTER
        ? Optional.empty()
        : Optional.of(
            new Level(
                some.get(0).distance() < 0,
                hardness.getAverage(),
                Math.sqrt(squares) / some.size()));
  }

  /**
   * The mean of three neighbours that agree within 8 HV.
   *
   * @param left whether they lie on the left
   * @param hardness HV
   * @param deviation standard deviation of the mean, HV
   */
  public record Level(boolean left, double hardness, double deviation) {
    /** Refuses what it cannot be. */
    public Level {
      Check.positive("hardness", hardness, "HV");
      Check.notNegative("deviation", deviation, "HV");
    }
  }
}
