package afterweld.charts.plot;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What stands round the plots of a picture: what it shows, for which case, the legend above and the
 * cautions below. Pixels.
 *
 * @param height of the whole picture
 * @param title what the picture shows
 * @param subject the case it belongs to
 * @param legend samples of what is drawn
 * @param caution what must be read with it
 * @param notes further remarks
 */
public record Page(
    int height,
    String title,
    String subject,
    Legend legend,
    List<String> caution,
    List<String> notes) {
  /** Width of every picture, pixels. */
  static final int WIDTH = 1600;

  private static final double SIDE = 44;
  private static final double INNER = WIDTH - 2 * SIDE;
  private static final float FOOT_SIZE = 19;
  private static final double FOOT_LINE = 26;
  private static final double FOOT_MARGIN = 14;

  /** Copies the lists. */
  public Page {
    caution = List.copyOf(caution);
    notes = List.copyOf(notes);
  }

  /**
   * Draws it.
   *
   * @return the room for plots
   */
  Rectangle2D draw(Graphics2D g) {
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    g.setColor(Ink.PAPER);
    g.fill(new Rectangle2D.Double(0, 0, WIDTH, height));
    Text.bold(title, 35, Ink.TEXT).fitting(INNER).draw(g, SIDE, 58);
    double legendTop = drawSubject(g) + 20;
    legend.draw(g, SIDE, legendTop, INNER);
    double footTop = drawFoot(g);
    double bodyTop = legendTop + legend.height(INNER) + 6;
    return new Rectangle2D.Double(SIDE - 24, bodyTop, INNER + 48, footTop - bodyTop);
  }

  /** Draws the case in one line or two and returns the last baseline. */
  private double drawSubject(Graphics2D g) {
    List<Text> lines = Text.plain(subject, 23, Ink.SOFT_TEXT).wrapped(INNER);
    double baseline = 96;
    lines.get(0).fitting(INNER).draw(g, SIDE, baseline);
    if (lines.size() > 1) {
      String rest = lines.stream().skip(1).map(Text::words).collect(Collectors.joining(" "));
      baseline += 31;
      Text.plain(rest, 23, Ink.SOFT_TEXT).fitting(INNER).draw(g, SIDE, baseline);
    }
    return baseline;
  }

  private double drawFoot(Graphics2D g) {
    List<Text> lines =
        Stream.concat(
                caution.stream().flatMap(words -> foot(words, true)),
                notes.stream().flatMap(words -> foot(words, false)))
            .toList();
    double top = height - FOOT_MARGIN - FOOT_LINE * lines.size() - 10;
    g.setColor(Ink.AXIS);
    g.setStroke(new BasicStroke(1.5f));
    g.draw(new Line2D.Double(SIDE, top, WIDTH - SIDE, top));
    double baseline = top + FOOT_LINE;
    for (Text line : lines) {
      line.draw(g, SIDE, baseline);
      baseline += FOOT_LINE;
    }
    return top;
  }

  private static Stream<Text> foot(String words, boolean heavy) {
    Text text =
        heavy ? Text.bold(words, FOOT_SIZE, Ink.TEXT) : Text.plain(words, FOOT_SIZE, Ink.SOFT_TEXT);
    return text.wrapped(INNER).stream();
  }
}
