package afterweld.charts.plot;

import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.List;

/** Points at equal distances along a line of straight pieces. */
final class LineWalk {
  private LineWalk() {}

  /**
   * The points.
   *
   * @param distance from one to the next along the line
   * @param lead from the start of the line to the first
   */
  static List<Point2D> every(double distance, double lead, List<Point2D> line) {
    List<Point2D> points = new ArrayList<>();
    double due = lead;
    for (int i = 1; i < line.size(); i++) {
      Point2D start = line.get(i - 1);
      double length = start.distance(line.get(i));
      for (; due < length; due += distance) {
        points.add(between(start, line.get(i), due / length));
      }
      due -= length;
    }
    return points;
  }

  private static Point2D between(Point2D start, Point2D end, double share) {
    return new Point2D.Double(
        start.getX() + share * (end.getX() - start.getX()),
        start.getY() + share * (end.getY() - start.getY()));
  }
}
