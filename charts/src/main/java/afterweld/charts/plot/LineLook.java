package afterweld.charts.plot;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;

/**
 * How a line is drawn. Colour alone never tells two lines apart: width, dash or marker differs too.
 *
 * @param color opaque
 * @param width pixels
 * @param dash dash pattern
 * @param marker figure repeated along the line
 */
public record LineLook(Color color, float width, Dash dash, MarkerShape marker) {
  /** A line without markers. */
  public static LineLook plain(Color color, float width, Dash dash) {
    return new LineLook(color, width, dash, MarkerShape.NONE);
  }

  /** The stroke to draw with. */
  public BasicStroke stroke() {
    return dash.stroke(width);
  }

  /** Draws the marker round a point, if there is one. */
  void drawMarker(Graphics2D g, double x, double y) {
    if (marker != MarkerShape.NONE) {
      Shape figure = marker.at(x, y, 8 + 1.4 * width);
      g.setColor(Ink.PAPER);
      g.fill(figure);
      g.setColor(color);
      g.setStroke(new BasicStroke(0.7f * width));
      g.draw(figure);
    }
  }
}
