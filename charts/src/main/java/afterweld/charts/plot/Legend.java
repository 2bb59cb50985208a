package afterweld.charts.plot;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Samples of the lines and areas of a chart with their names, in rows.
 *
 * @param entries in reading order
 */
public record Legend(List<Entry> entries) {
  private static final double SAMPLE = 84;
  private static final double ROW = 34;
  private static final float SIZE = 21;

  /** Copies the list. */
  public Legend {
    entries = List.copyOf(entries);
  }

  /**
   * One name with its sample.
   *
   * @param name words
   * @param line look of a line, or
   * @param area colour of an area
   */
  public record Entry(String name, Optional<LineLook> line, Optional<Color> area) {
    /** A line and what it is. */
    public static Entry line(String name, LineLook look) {
      return new Entry(name, Optional.of(look), Optional.empty());
    }

    /** A coloured area and what it is. */
    public static Entry area(String name, Color color) {
      return new Entry(name, Optional.empty(), Optional.of(color));
    }

    private Text text() {
      return Text.plain(name, SIZE, Ink.TEXT);
    }

    private double width() {
      return SAMPLE + 12 + text().width() + 36;
    }
  }

  /** Height of all rows, pixels. */
  public double height(double width) {
    return ROW * rows(width).size();
  }

  private List<List<Entry>> rows(double width) {
    List<List<Entry>> rows = new ArrayList<>();
    double left = Double.MAX_VALUE;
    for (Entry entry : entries) {
      if (left + entry.width() > width + 36) {
        rows.add(new ArrayList<>());
        left = 0;
      }
      rows.get(rows.size() - 1).add(entry);
      left += entry.width();
    }
    return rows;
  }

  /** Draws the rows from a corner. */
  public void draw(Graphics2D g, double left, double top, double width) {
    double middle = top + ROW / 2;
    for (List<Entry> row : rows(width)) {
      double x = left;
      for (Entry entry : row) {
        drawEntry(g, entry, x, middle);
        x += entry.width();
      }
      middle += ROW;
    }
  }

  private static void drawEntry(Graphics2D g, Entry entry, double x, double middle) {
    entry.area().ifPresent(color -> drawArea(g, color, x, middle));
    entry.line().ifPresent(look -> drawLine(g, look, x, middle));
    entry.text().draw(g, x + SAMPLE + 12, middle + 0.36 * SIZE);
  }

  private static void drawArea(Graphics2D g, Color color, double x, double middle) {
    g.setColor(color);
    g.fill(new Rectangle2D.Double(x, middle - 9, SAMPLE, 18));
  }

  private static void drawLine(Graphics2D g, LineLook look, double x, double middle) {
    g.setColor(look.color());
    g.setStroke(look.stroke());
    g.draw(new Line2D.Double(x, middle, x + SAMPLE, middle));
    look.drawMarker(g, x + SAMPLE / 2, middle);
  }
}
