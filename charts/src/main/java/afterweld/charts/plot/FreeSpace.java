package afterweld.charts.plot;

import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

/**
 * Finds places for words in a plot: near what they name, off other words, off lines. Pixels.
 *
 * <p>Every candidate place round the anchor gets a cost: its distance, plus a charge for each piece
 * of a line under it, a high one for a leader across words and a prohibitive one for words under
 * it. The cheapest wins.
 */
final class FreeSpace {
  /** Distance at which points of a line are noted, pixels. */
  static final double GRAIN = 9;

  private static final double NEAREST = 14;
  private static final double REACH = 420;
  private static final double MARGIN = 8;
  private static final double STEP = 9;
  private static final int DIRECTIONS = 16;
  private static final double ROOM_ACROSS = 16;
  private static final double ROOM_UP = 6;
  private static final double LINE_COST = 21;
  private static final double LEADER_COST = 400;
  private static final double WORDS_COST = 5000;

  private final Rectangle2D area;
  private final List<Point2D> linePoints = new ArrayList<>();
  private final List<Rectangle2D> taken = new ArrayList<>();

  FreeSpace(Rectangle2D area) {
    this.area =
        new Rectangle2D.Double(
            area.getX() + MARGIN, area.getY(), area.getWidth() - 2 * MARGIN, area.getHeight());
  }

  /** Notes that a line passes through a point. */
  void addLinePoint(Point2D point) {
    linePoints.add(point);
  }

  /** Notes that a rectangle is full. */
  void take(Rectangle2D rectangle) {
    taken.add(rectangle);
  }

  /**
   * The best place for a box near a point, which is then taken.
   *
   * @return the place; if nothing is free, the least bad one
   */
  Rectangle2D near(Point2D point, double width, double height) {
    Rectangle2D best = clamped(point, width, height);
    double lowest = Double.MAX_VALUE;
    for (double reach = NEAREST; reach < Math.min(REACH, lowest); reach += STEP) {
      for (int i = 0; i < DIRECTIONS; i++) {
        Rectangle2D box = box(point, width, height, reach, i);
        double cost = area.contains(box) ? reach + cost(point, box) : Double.MAX_VALUE;
        if (cost < lowest) {
          lowest = cost;
          best = box;
        }
      }
    }
    take(best);
    return best;
  }

  /** The place with its middle on a point if that is free of words, else the best one near it. */
  Rectangle2D onOrNear(Point2D point, double width, double height) {
    Rectangle2D box = clamped(point, width, height);
    if (taken.stream().anyMatch(box::intersects)) {
      return near(point, width, height);
    }
    take(box);
    return box;
  }

  /** The line from a point to the nearest point of a box. */
  static Line2D leader(Point2D point, Rectangle2D box) {
    double nearX = Math.max(box.getMinX(), Math.min(box.getMaxX(), point.getX()));
    double nearY = Math.max(box.getMinY(), Math.min(box.getMaxY(), point.getY()));
    return new Line2D.Double(point, new Point2D.Double(nearX, nearY));
  }

  private static Rectangle2D box(
      Point2D point, double width, double height, double reach, int direction) {
    double angle = Math.PI / 2 + 2 * Math.PI * direction / DIRECTIONS;
    double centreX = point.getX() + Math.cos(angle) * (reach + width / 2);
    double centreY = point.getY() + Math.sin(angle) * (reach + height / 2);
    return new Rectangle2D.Double(centreX - width / 2, centreY - height / 2, width, height);
  }

  private Rectangle2D clamped(Point2D point, double width, double height) {
    double left = point.getX() - width / 2;
    double top = point.getY() - height / 2;
    return new Rectangle2D.Double(
        Math.max(area.getMinX(), Math.min(area.getMaxX() - width, left)),
        Math.max(area.getMinY(), Math.min(area.getMaxY() - height, top)),
        width,
        height);
  }

  private double cost(Point2D point, Rectangle2D box) {
    Rectangle2D roomy =
        new Rectangle2D.Double(
            box.getX() - ROOM_ACROSS,
            box.getY() - ROOM_UP,
            box.getWidth() + 2 * ROOM_ACROSS,
            box.getHeight() + 2 * ROOM_UP);
    Line2D leader = leader(point, box);
    double cost = 0;
    for (Rectangle2D words : taken) {
      boolean crossed = leader.intersects(words) && !words.contains(point);
      cost += (crossed ? LEADER_COST : 0) + (roomy.intersects(words) ? WORDS_COST : 0);
    }
    for (Point2D line : linePoints) {
      cost += roomy.contains(line) ? LINE_COST : 0;
    }
    return cost;
  }
}
