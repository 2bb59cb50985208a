package afterweld.charts;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A field over both axes of a plot: darker where it is higher, with lines of equal value that carry
 * their figure. The lattice spans the whole plot.
 */
final class ContourMap {
  /** Cells reach a little into their neighbours, so that no seam shows. */
  private static final double OVERLAP = 1.6;

  private static final float LABEL = 19;
  private static final LineLook CONTOUR = LineLook.plain(Ink.TEXT, 1.8f, Dash.SOLID);

  private final Plot plot;
  private final Axis across;
  private final Axis up;
  private final ContourField field;
  private final List<Double> levels;
  private final List<Rectangle2D> taken = new ArrayList<>();

  /**
   * A map.
   *
   * @param across horizontal axis of the plot
   * @param up vertical axis of the plot
   * @param levels values whose lines are drawn, rising
   */
  ContourMap(Plot plot, Axis across, Axis up, ContourField field, List<Double> levels) {
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
  void draw(Graphics2D g, Color ink, String unit) {
    shade(ink);
    levels.forEach(level -> contour(g, level, unit));
  }

  /** Words in the middle of the map. */
  void note(Graphics2D g, String words) {
    Curve.Spot middle =
        new Curve.Spot(across.from() + across.span() / 2, up.from() + up.span() / 2);
    label(g, Text.bold(words, LABEL, Ink.TEXT), List.of(middle));
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
      double share = 0.08 + 0.55 * above / Math.max(1, levels.size());
      plot.shade(
          across.from() + from * wide(),
          Math.min(across.to(), across.from() + (to - 1 + OVERLAP) * wide()),
          up.from() + row * high(),
          Math.min(up.to(), up.from() + (row + OVERLAP) * high()),
          Ink.over(ink, share));
    }
  }

  private void contour(Graphics2D g, double level, String unit) {
    List<Curve.Spot> longest = List.of();
    for (List<Curve.Spot> line : linked(field.pieces(level))) {
      plot.curve(new Curve("", line, CONTOUR));
      longest = line.size() > longest.size() ? line : longest;
    }
    label(g, Text.bold(Figures.shortest(level) + " " + unit, LABEL, Ink.TEXT), longest);
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

  /** Sets the value on its line, at the first place from the middle on that is still free. */
  private void label(Graphics2D g, Text text, List<Curve.Spot> line) {
    for (int i = 0; i < line.size(); i++) {
      int away = (i + 1) / 2 * (i % 2 == 0 ? 1 : -1);
      Curve.Spot spot = line.get(Math.floorMod(line.size() / 2 + away, line.size()));
      double left = plot.x(spot.x()) - text.width() / 2;
      double top = plot.y(spot.y()) - text.height() / 2;
      Rectangle2D box =
          new Rectangle2D.Double(left - 6, top - 4, text.width() + 12, text.height() + 8);
      if (plot.area().contains(box) && taken.stream().noneMatch(box::intersects)) {
        taken.add(box);
        text.drawOver(g, left, top + text.rise());
        return;
      }
    }
  }
}
