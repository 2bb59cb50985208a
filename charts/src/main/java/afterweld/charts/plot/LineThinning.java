package afterweld.charts.plot;

import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.List;

/**
 * Leaves out points of a line that the eye does not miss: what remains is nowhere further from the
 * line than the tolerance. The farthest point from the chord is kept and both halves are treated
 * alike (Douglas and Peucker, Cartographica 10, 1973).
 */
public final class LineThinning {
  private static final double TOLERANCE = 0.12;

  private LineThinning() {}

  /** The points that matter, in order; first and last always. Pixels. */
  public static List<Point2D> thinned(List<Point2D> line) {
    if (line.size() < 3) {
      return line;
    }
    List<Point2D> kept = new ArrayList<>();
    kept.add(line.get(0));
    keep(line, 0, line.size() - 1, kept);
    return kept;
  }

  private static void keep(List<Point2D> line, int first, int last, List<Point2D> kept) {
    int farthest = farthest(line, first, last);
    if (farthest > first) {
      keep(line, first, farthest, kept);
      keep(line, farthest, last, kept);
    } else {
      kept.add(line.get(last));
    }
  }

  /** The point farthest from the chord, or {@code first} if all are within the tolerance. */
  private static int farthest(List<Point2D> line, int first, int last) {
    Line2D chord = new Line2D.Double(line.get(first), line.get(last));
    int farthest = first;
    double distance = TOLERANCE;
    for (int i = first + 1; i < last; i++) {
      double away = chord.ptSegDist(line.get(i));
      if (away > distance) {
        distance = away;
        farthest = i;
      }
    }
    return farthest;
  }
}
