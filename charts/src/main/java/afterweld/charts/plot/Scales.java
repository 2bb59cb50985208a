package afterweld.charts.plot;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.Locale;
import org.knowm.xchart.XYChart;
import org.knowm.xchart.XYSeries;
import org.knowm.xchart.style.XYStyler;
import org.knowm.xchart.style.lines.SeriesLines;
import org.knowm.xchart.style.markers.SeriesMarkers;

/** Two axes with their words and the grid between them, drawn by XChart as an empty chart. */
final class Scales {
  /** Room that the vertical axis with its words takes, so that frames above each other align. */
  private static final int LEFT = 132;

  /** Widens the axes by less than a pixel: XChart leaves out a tick on the very end of one. */
  private static final double HAIR = 1e-6;

  private final Axis across;
  private final Axis up;

  Scales(Axis across, Axis up) {
    this.across = across;
    this.up = up;
  }

  /**
   * Draws the axes.
   *
   * @param frame room for the plot with its axes, pixels
   * @return the inside, between the ends of the axes, pixels
   */
  Rectangle2D draw(Graphics2D g, Rectangle2D frame) {
    XYChart chart = chart(frame);
    Graphics2D inFrame = (Graphics2D) g.create();
    inFrame.translate(frame.getX(), frame.getY());
    chart.paint(inFrame, chart.getWidth(), chart.getHeight());
    inFrame.dispose();
    double left = frame.getX() + chart.getScreenXFromChart(across.from());
    double right = frame.getX() + chart.getScreenXFromChart(across.to());
    double top = frame.getY() + chart.getScreenYFromChart(up.to());
    double bottom = frame.getY() + chart.getScreenYFromChart(up.from());
    return new Rectangle2D.Double(left, top, right - left, bottom - top);
  }

  private XYChart chart(Rectangle2D frame) {
    XYChart chart = new XYChart((int) frame.getWidth(), (int) frame.getHeight(), new FrameTheme());
    chart.setXAxisTitle(across.label());
    chart.setYAxisTitle(up.label());
    setRanges(chart.getStyler());
    addCorners(chart);
    return chart;
  }

  private void setRanges(XYStyler styler) {
    styler.setLocale(Locale.ROOT);
    styler.setYAxisLeftWidthHint(LEFT);
    styler.setXAxisMin(across.from() - HAIR * across.span());
    styler.setXAxisMax(across.to() + HAIR * across.span());
    styler.setYAxisMin(up.from() - HAIR * up.span());
    styler.setYAxisMax(up.to() + HAIR * up.span());
    styler.setXAxisTickLabelsFormattingFunction(across::figure);
    styler.setYAxisTickLabelsFormattingFunction(up::figure);
  }

  /**
   * XChart takes evenly spaced values for categories and puts its ticks there: these are uneven.
   */
  private void addCorners(XYChart chart) {
    double[] x = {across.from(), across.from() + 0.3 * across.span(), across.to()};
    double[] y = {up.from(), up.from() + 0.3 * up.span(), up.to()};
    XYSeries corners = chart.addSeries("corners", x, y);
    corners.setLineStyle(SeriesLines.NONE);
    corners.setMarker(SeriesMarkers.NONE);
  }
}
