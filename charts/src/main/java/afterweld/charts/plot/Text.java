package afterweld.charts.plot;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.font.FontRenderContext;
import java.awt.font.GlyphVector;
import java.util.ArrayList;
import java.util.List;

/**
 * A line of words. Letters are drawn as outlines, so that a picture looks the same whether it is
 * pixels or SVG and needs no typeface where it is shown.
 *
 * @param words what it says
 * @param font typeface and size
 * @param color ink
 */
public record Text(String words, Font font, Color color) {
  private static final FontRenderContext CONTEXT = new FontRenderContext(null, true, true);
  private static final Color HALO = new Color(255, 255, 255, 225);
  private static final BasicStroke HALO_STROKE =
      new BasicStroke(6, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND);

  /** Words in the common weight. */
  public static Text plain(String words, float size, Color color) {
    return new Text(words, Typeface.plain(size), color);
  }

  /** Words in the heavy weight. */
  public static Text bold(String words, float size, Color color) {
    return new Text(words, Typeface.bold(size), color);
  }

  /** Length, pixels. */
  public double width() {
    return glyphs().getLogicalBounds().getWidth();
  }

  /** Height of capitals and ascenders over the baseline, pixels. */
  double rise() {
    return 0.74 * font.getSize2D();
  }

  /** From the top of an ascender to the foot of a descender, pixels. */
  double height() {
    return rise() + 0.22 * font.getSize2D();
  }

  /** Draws it from a point on the baseline. */
  public void draw(Graphics2D g, double x, double baseline) {
    g.setColor(color);
    g.fill(outline(x, baseline));
  }

  /** Draws it with a rim of paper round the letters, so that it reads on top of lines. */
  void drawOver(Graphics2D g, double x, double baseline) {
    g.setColor(HALO);
    g.setStroke(HALO_STROKE);
    g.draw(outline(x, baseline));
    draw(g, x, baseline);
  }

  private Shape outline(double x, double baseline) {
    return glyphs().getOutline((float) x, (float) baseline);
  }

  private GlyphVector glyphs() {
    return font.createGlyphVector(CONTEXT, words);
  }

  /** This text, cut at its end to fit a width; the cut shows as three dots. */
  Text fitting(double width) {
    Text text = this;
    for (int length = words.length(); text.width() > width && length > 1; length--) {
      text = new Text(words.substring(0, length - 1).stripTrailing() + "…", font, color);
    }
    return text;
  }

  /** This text broken between words into lines of at most {@code width} pixels. */
  List<Text> wrapped(double width) {
    List<Text> lines = new ArrayList<>();
    Text line = new Text("", font, color);
    for (String word : words.strip().split("\\s+", -1)) {
      Text longer = line.words.isEmpty() ? line.with(word) : line.with(line.words + " " + word);
      if (longer.width() > width && !line.words.isEmpty()) {
        lines.add(line);
        longer = line.with(word);
      }
      line = longer;
    }
    lines.add(line);
    return lines;
  }

  private Text with(String otherWords) {
    return new Text(otherWords, font, color);
  }
}
