package afterweld.charts.plot;

import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;

/** Small figures on a line that tell it apart. */
public enum MarkerShape {
  NONE,
  CIRCLE,
  SQUARE,
  DIAMOND,
  TRIANGLE;

  /** The figure round a point, {@code size} pixels across. */
  Shape at(double x, double y, double size) {
    double half = size / 2;
    return switch (this) {
      case NONE -> new Path2D.Double();
      case CIRCLE -> new Ellipse2D.Double(x - half, y - half, size, size);
      case SQUARE -> new Rectangle2D.Double(x - half, y - half, size, size);
      case DIAMOND -> polygon(x, y - half, x + half, y, x, y + half, x - half, y);
      case TRIANGLE -> polygon(x, y - half, x + half, y + half, x - half, y + half);
    };
  }

  private static Shape polygon(double... corners) {
    Path2D path = new Path2D.Double();
    path.moveTo(corners[0], corners[1]);
    for (int i = 2; i < corners.length; i += 2) {
      path.lineTo(corners[i], corners[i + 1]);
    }
    path.closePath();
    return path;
  }
}
