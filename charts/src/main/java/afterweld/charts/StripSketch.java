package afterweld.charts;

import afterweld.charts.plot.Ink;
import afterweld.charts.plot.LineLook;
import afterweld.charts.plot.LineThinning;
import afterweld.joint.SliceLine;
import afterweld.joint.bend.StripBend;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.util.List;

/**
 * A bent strip seen from the side, to scale with its thickness: the strip under load as a pale
 * body, its softened metal full, the middle of other shapes as thin lines.
 */
final class StripSketch {
  private static final double PALE = 0.35;

  private final Graphics2D g;
  private final Point2D weldCentre;
  private final double scale;

  /**
   * A place for a strip.
   *
   * @param g where to draw
   * @param weldCentre pixel of the middle of the strip at the weld centre
   * @param scale pixels per metre
   */
  StripSketch(Graphics2D g, Point2D weldCentre, double scale) {
    this.g = g;
    this.weldCentre = weldCentre;
    this.scale = scale;
  }

  /** Draws a strip under load. */
  void body(StripBend bend, double thickness, SliceLine.Band softened, Color color) {
    List<StripBend.Place> shape = bend.shapeUnderLoad();
    float width = (float) (thickness * scale);
    g.setStroke(new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND));
    g.setColor(Ink.tint(color, PALE));
    g.draw(path(shape));
    List<StripBend.Place> soft =
        shape.stream()
            .filter(at -> at.distance() >= softened.low() && at.distance() <= softened.high())
            .toList();
    if (softened.width() > 0 && soft.size() > 1) {
      g.setColor(color);
      g.draw(path(soft));
    }
  }

  /** Draws the middle of a strip. */
  void middle(List<StripBend.Place> shape, LineLook look) {
    g.setColor(look.color());
    g.setStroke(look.stroke());
    g.draw(path(shape));
  }

  private Path2D path(List<StripBend.Place> shape) {
    List<Point2D> pixels = LineThinning.thinned(shape.stream().map(this::pixel).toList());
    Path2D path = new Path2D.Double();
    path.moveTo(pixels.get(0).getX(), pixels.get(0).getY());
    pixels.stream().skip(1).forEach(at -> path.lineTo(at.getX(), at.getY()));
    return path;
  }

  private Point2D pixel(StripBend.Place place) {
    return new Point2D.Double(
        weldCentre.getX() + scale * place.along(), weldCentre.getY() - scale * place.height());
  }
}
