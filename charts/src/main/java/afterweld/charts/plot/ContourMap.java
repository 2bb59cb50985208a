package afterweld.charts.plot;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A field over both axes of a plot: darker where it is higher, with lines of equal value that carry
 * their figure. The lattice spans the whole plot.
 */
public final class ContourMap {
  /** Cells reach a little into their neighbours, so that no seam shows. */
  private static final double OVERLAP = 1.6;

  private static final float LABEL = 19;

  /** Shade of a field that is the same everywhere: that of its sample in the legend. */
  private static final double EVEN_SHADE = 0.5;

  /** A line shorter than this many widths of its figure is left without. */
  private static final double SHORTEST_LABELLED = 0.6;

  private static final LineLook CONTOUR = LineLook.plain(Ink.TEXT, 1.8f, Dash.SOLID);

  private final Plot plot;
  private final Axis across;
  private final Axis up;
  private final ContourField field;
  private final List<Double> levels;

  /**
   * A map.
   *
   * @param across horizontal axis of the plot
   * @param up vertical axis of the plot
   * @param levels values whose lines are drawn, rising
   */
  public ContourMap(Plot plot, Axis across, Axis up, ContourField field, List<Double> levels) {
    this.plot = plot;
    this.across = across;
    this.up = up;
    this.field = field;
    this.levels = List.copyOf(levels);
  }

  /**
   * Draws it.
   *
   * @param ink colour that shades it
   * @param unit behind the figures of the lines
   */
  public void draw(Graphics2D g, Color ink, String unit) {
    shade(ink);
    List<Contour> contours = contours();
    contours.forEach(contour -> plot.curve(new Curve("", contour.line(), CONTOUR)));
    figures(contours, unit).forEach(figure -> figure.draw(g));
  }

  /** Every line, the shortest first. */
  List<Contour> contours() {
    return levels.stream()
        .flatMap(
            level -> linked(field.pieces(level)).stream().map(line -> new Contour(level, line)))
        .sorted(Comparator.comparingDouble(this::length))
        .toList();
  }

  /** One line at a level; there may be several at the same. */
  record Contour(double level, List<Curve.Spot> line) {}

  /** A value in figures and the room it takes, pixels. */
  record Figure(Contour contour, Text text, Rectangle2D room) {
    private void draw(Graphics2D g) {
      text.drawOver(g, room.getX() + 6, room.getY() + 4 + text.rise());
    }
  }

  /** Pixels. */
  double length(Contour contour) {
    List<Curve.Spot> line = contour.line();
    double length = 0;
    for (int i = 1; i < line.size(); i++) {
      length +=
          Math.hypot(
              plot.x(line.get(i).x()) - plot.x(line.get(i - 1).x()),
              plot.y(line.get(i).y()) - plot.y(line.get(i - 1).y()));
    }
    return length;
  }

  /** Words in the middle of the map. */
  public void note(Graphics2D g, String words) {
    Curve.Spot middle =
        new Curve.Spot(across.from() + across.span() / 2, up.from() + up.span() / 2);
    Text text = Text.bold(words, LABEL, Ink.TEXT);
    new Figure(new Contour(Double.NaN, List.of()), text, box(text, middle)).draw(g);
  }

  private double wide() {
    return across.span() / (field.side() - 1);
  }

  private double high() {
    return up.span() / (field.side() - 1);
  }

  /** A strip for each run of cells of one shade, row by row. */
  private void shade(Color ink) {
    int cells = field.side() - 1;
    for (int row = 0; row < cells; row++) {
      int from = 0;
      for (int column = 1; column <= cells; column++) {
        if (column == cells || steps(column, row) != steps(from, row)) {
          strip(ink, from, column, row);
          from = column;
        }
      }
    }
  }

  /** How many levels a cell lies above; −1 where nothing is known. */
  private long steps(int column, int row) {
    double middle = field.middle(column, row);
    return Double.isFinite(middle) ? levels.stream().filter(level -> middle >= level).count() : -1;
  }

  private void strip(Color ink, int from, int to, int row) {
    long above = steps(from, row);
    if (above >= 0) {
      double share = levels.isEmpty() ? EVEN_SHADE : 0.08 + 0.55 * above / levels.size();
      plot.shade(
          across.from() + from * wide(),
          Math.min(across.to(), across.from() + (to - 1 + OVERLAP) * wide()),
          up.from() + row * high(),
          Math.min(up.to(), up.from() + (row + OVERLAP) * high()),
          Ink.over(ink, share));
    }
  }

  /** The pieces of a line joined end to end. */
  private List<List<Curve.Spot>> linked(List<ContourField.Piece> pieces) {
    Map<Curve.Spot, List<Curve.Spot>> neighbours = new LinkedHashMap<>();
    for (ContourField.Piece piece : pieces) {
      Curve.Spot from = spot(piece.x1(), piece.y1());
      Curve.Spot to = spot(piece.x2(), piece.y2());
      neighbours.computeIfAbsent(from, unused -> new ArrayList<>()).add(to);
      neighbours.computeIfAbsent(to, unused -> new ArrayList<>()).add(from);
    }
    List<List<Curve.Spot>> lines = new ArrayList<>();
    List<Curve.Spot> ends =
        neighbours.keySet().stream().filter(spot -> neighbours.get(spot).size() == 1).toList();
    ends.forEach(end -> addLine(lines, neighbours, end));
    List.copyOf(neighbours.keySet()).forEach(spot -> addLine(lines, neighbours, spot));
    return lines;
  }

  /** Walks on until there is no way that was not taken. */
  private static void addLine(
      List<List<Curve.Spot>> lines,
      Map<Curve.Spot, List<Curve.Spot>> neighbours,
      Curve.Spot start) {
    List<Curve.Spot> line = new ArrayList<>(List.of(start));
    Curve.Spot here = start;
    while (!neighbours.get(here).isEmpty()) {
      Curve.Spot next = neighbours.get(here).remove(0);
      neighbours.get(next).remove(here);
      line.add(next);
      here = next;
    }
    if (line.size() > 1) {
      lines.add(line);
    }
  }

  private Curve.Spot spot(double column, double row) {
    return new Curve.Spot(across.from() + column * wide(), up.from() + row * high());
  }

  /**
   * A figure for every line that is long enough, as near to its middle as it is free there: best
   * where it covers no other line, else where it covers no other figure. Short lines choose first.
   */
  List<Figure> figures(List<Contour> contours, String unit) {
    List<Figure> figures = new ArrayList<>();
    for (Contour contour : contours) {
      Text text = Text.bold(Figures.shortest(contour.level()) + " " + unit, LABEL, Ink.TEXT);
      if (length(contour) >= SHORTEST_LABELLED * text.width()) {
        room(text, contour, contours, figures)
            .ifPresent(box -> figures.add(new Figure(contour, text, box)));
      }
    }
    return figures;
  }

  private Optional<Rectangle2D> room(
      Text text, Contour contour, List<Contour> all, List<Figure> figures) {
    List<Rectangle2D> free =
        fromTheMiddle(contour.line()).stream()
            .map(spot -> box(text, spot))
            .filter(box -> figures.stream().noneMatch(figure -> box.intersects(figure.room())))
            .toList();
    return free.stream()
        .filter(
            box -> all.stream().noneMatch(other -> !other.equals(contour) && covers(box, other)))
        .findFirst()
        .or(() -> free.stream().findFirst());
  }

  private static List<Curve.Spot> fromTheMiddle(List<Curve.Spot> line) {
    List<Curve.Spot> order = new ArrayList<>();
    for (int i = 0; i < line.size(); i++) {
      int away = (i + 1) / 2 * (i % 2 == 0 ? 1 : -1);
      order.add(line.get(Math.floorMod(line.size() / 2 + away, line.size())));
    }
    return order;
  }

  private boolean covers(Rectangle2D box, Contour contour) {
    return contour.line().stream()
        .anyMatch(spot -> box.contains(plot.x(spot.x()), plot.y(spot.y())));
  }

  /** Around a spot, moved inwards where it would reach over the edge of the map. */
  private Rectangle2D box(Text text, Curve.Spot spot) {
    Rectangle2D area = plot.area();
    double width = text.width() + 12;
    double height = text.height() + 8;
    double left = plot.x(spot.x()) - width / 2;
    double top = plot.y(spot.y()) - height / 2;
    return new Rectangle2D.Double(
        Math.max(area.getMinX(), Math.min(area.getMaxX() - width, left)),
        Math.max(area.getMinY(), Math.min(area.getMaxY() - height, top)),
        width,
        height);
  }
}
