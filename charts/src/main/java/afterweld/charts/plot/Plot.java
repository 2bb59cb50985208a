package afterweld.charts.plot;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * A frame with two axes and what is drawn in it, layer upon layer, clipped to the frame.
 *
 * <p>Lines and areas are drawn here and not by XChart, which strokes every segment of a line on its
 * own: a dash pattern would start anew at each point and an SVG would hold an element per segment.
 */
public final class Plot {
  /** Room round the axes, pixels. */
  public static final int PADDING = 24;

  private static final BasicStroke LEADER = new BasicStroke(1.5f);
  private static final LineLook DECADE = LineLook.plain(Ink.GRID, 1.5f, Dash.SOLID);
  private static final float DECADE_SIZE = 21;
  private static final float TITLE_SIZE = 23;
  private static final double TITLE_DROP = 64;
  private static final double TITLE_ROOM = 38;
  private static final double BADGE = 34;
  private static final double LEADER_FROM = 26;

  private final Graphics2D g;
  private final Axis across;
  private final Axis up;
  private final Rectangle2D area;
  private final FreeSpace space;

  /**
   * Draws an empty plot.
   *
   * @param g where to draw
   * @param frame room for the plot with its axes, pixels
   * @param across horizontal axis
   * @param up vertical axis
   */
  public Plot(Graphics2D g, Rectangle2D frame, Axis across, Axis up) {
    this.g = g;
    this.across = across;
    this.up = up;
    this.area = area(g, frame);
    this.space = new FreeSpace(area);
    if (across.logarithmic()) {
      drawDecades();
    }
  }

  /** The library draws the axes; the title of a logarithmic one is left to {@link #drawDecades}. */
  private Rectangle2D area(Graphics2D g, Rectangle2D frame) {
    if (!across.logarithmic() || across.label().isEmpty()) {
      return new Scales(across, up).draw(g, frame);
    }
    double height = frame.getHeight() - TITLE_ROOM;
    Rectangle2D above =
        new Rectangle2D.Double(frame.getX(), frame.getY(), frame.getWidth(), height);
    return new Scales(across.unlabelled(), up).draw(g, above);
  }

  /**
   * Lines and figures at the powers of ten, which the axes' library would not hit, and under them
   * the title: the library knows nothing of these figures and would set it over them.
   */
  private void drawDecades() {
    g.setFont(Typeface.plain(DECADE_SIZE));
    for (int power = (int) Math.ceil(across.from()); power <= across.to(); power++) {
      upright(power, DECADE);
      String figure = Figures.shortest(Math.pow(10, power));
      double width = g.getFontMetrics().stringWidth(figure);
      g.setColor(Ink.TEXT);
      g.drawString(figure, (float) (x(power) - width / 2), (float) (area.getMaxY() + 30));
    }
    Text title = Text.bold(across.label(), TITLE_SIZE, Ink.TEXT);
    title.draw(g, area.getCenterX() - title.width() / 2, area.getMaxY() + TITLE_DROP);
  }

  /** The inside of the frame, pixels. */
  public Rectangle2D area() {
    return area;
  }

  /** Pixel of a value on the horizontal axis, also outside it. */
  public double x(double value) {
    return area.getMinX() + area.getWidth() * (value - across.from()) / across.span();
  }

  /** Pixel of a value on the vertical axis, also outside it. */
  public double y(double value) {
    return area.getMaxY() - area.getHeight() * (value - up.from()) / up.span();
  }

  /** Shades a strip from bottom to top. */
  public void shade(double from, double to, Color color) {
    shade(from, to, up.from(), up.to(), color);
  }

  /** Shades a rectangle. */
  public void shade(double from, double to, double low, double high, Color color) {
    double left = x(across.clamp(from));
    double top = y(up.clamp(high));
    g.setColor(color);
    g.fill(new Rectangle2D.Double(left, top, x(across.clamp(to)) - left, y(up.clamp(low)) - top));
  }

  /** Draws an upright line over the whole height. */
  public void upright(double at, LineLook look) {
    g.setColor(look.color());
    g.setStroke(look.stroke());
    g.draw(new Line2D.Double(x(at), area.getMinY(), x(at), area.getMaxY()));
  }

  /** Draws a level line. */
  public void level(double from, double to, double value, LineLook look) {
    Curve.Spot left = new Curve.Spot(across.clamp(from), value);
    Curve.Spot right = new Curve.Spot(across.clamp(to), value);
    curve(new Curve("", List.of(left, right), look));
  }

  /** Draws a pale area. */
  public void band(Band band) {
    Graphics2D inside = inside();
    inside.setColor(Ink.tint(band.color(), 0.14));
    List<Band.Slice> piece = new ArrayList<>();
    for (Band.Slice slice : band.slices()) {
      if (slice.known()) {
        piece.add(slice);
      } else {
        fill(inside, piece);
        piece.clear();
      }
    }
    fill(inside, piece);
    inside.dispose();
  }

  private void fill(Graphics2D inside, List<Band.Slice> piece) {
    List<Point2D> outline = new ArrayList<>();
    piece.forEach(slice -> outline.add(pixel(slice.x(), slice.high())));
    Collections.reverse(outline);
    piece.forEach(slice -> outline.add(pixel(slice.x(), slice.low())));
    inside.fill(path(outline));
  }

  /** Draws a line, with its markers. */
  public void curve(Curve curve) {
    Graphics2D inside = inside();
    for (List<Curve.Spot> piece : curve.around(across.from(), across.to()).pieces()) {
      drawPiece(
          inside, piece.stream().map(spot -> pixel(spot.x(), spot.y())).toList(), curve.look());
    }
    inside.dispose();
  }

  private void drawPiece(Graphics2D inside, List<Point2D> line, LineLook look) {
    inside.setColor(look.color());
    inside.setStroke(look.stroke());
    inside.draw(path(line));
    if (line.size() == 1) {
      inside.fill(dot(line.get(0), look.width() + 3));
    }
    LineWalk.every(FreeSpace.GRAIN, 0, line).forEach(space::addLinePoint);
    for (Point2D at : LineWalk.every(150, 40 * look.marker().ordinal(), line)) {
      look.drawMarker(inside, at.getX(), at.getY());
    }
  }

  /** A ring round a point, noted as full so that no words cover it. */
  public void ring(double x, double y, Color color) {
    Shape ring = dot(new Point2D.Double(x(x), y(y)), 20);
    g.setColor(Ink.PAPER);
    g.fill(ring);
    g.setColor(color);
    g.setStroke(new BasicStroke(4));
    g.draw(ring);
    g.fill(dot(new Point2D.Double(x(x), y(y)), 6));
    space.take(ring.getBounds2D());
  }

  /** A letter in a disc on a point, or beside it where another disc is in the way. */
  public void badge(String letter, double x, double y, Color color) {
    Point2D point =
        new Point2D.Double(x(across.clamp(x)), Math.max(y(y), area.getMinY() + BADGE / 2));
    Rectangle2D box = space.onOrNear(point, BADGE, BADGE);
    draw(FreeSpace.leader(point, box), color);
    Shape disc = dot(new Point2D.Double(box.getCenterX(), box.getCenterY()), BADGE);
    g.setColor(color);
    g.fill(disc);
    g.setColor(Ink.PAPER);
    g.setStroke(new BasicStroke(2.5f));
    g.draw(disc);
    Text text = Text.bold(letter, 22, Ink.PAPER);
    text.draw(g, box.getCenterX() - text.width() / 2, box.getCenterY() + text.rise() / 2);
  }

  /** Sets words near a point, with a leader if they end up away from it. */
  public void label(Text text, double x, double y) {
    Point2D point = new Point2D.Double(x(across.clamp(x)), y(up.clamp(y)));
    Rectangle2D box = space.near(point, text.width(), text.height());
    Line2D leader = FreeSpace.leader(point, box);
    if (leader.getP1().distance(leader.getP2()) > LEADER_FROM) {
      draw(leader, text.color());
    }
    text.drawOver(g, box.getX(), box.getY() + text.rise());
  }

  private void draw(Line2D leader, Color color) {
    g.setColor(color);
    g.setStroke(LEADER);
    g.draw(leader);
  }

  private Graphics2D inside() {
    Graphics2D inside = (Graphics2D) g.create();
    inside.clip(area);
    return inside;
  }

  private Point2D pixel(double x, double y) {
    return new Point2D.Double(x(x), y(y));
  }

  private static Ellipse2D dot(Point2D at, double size) {
    return new Ellipse2D.Double(at.getX() - size / 2, at.getY() - size / 2, size, size);
  }

  private static Path2D path(List<Point2D> line) {
    Path2D path = new Path2D.Double();
    for (Point2D point : LineThinning.thinned(line)) {
      if (path.getCurrentPoint() == null) {
        path.moveTo(point.getX(), point.getY());
      }
      path.lineTo(point.getX(), point.getY());
    }
    return path;
  }
}
