package afterweld.charts.plot;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import org.knowm.xchart.style.theme.AbstractBaseTheme;

/** How the frame of a plot looks: scales, their words and a light horizontal grid. */
final class FrameTheme extends AbstractBaseTheme {
  private static final Font AXIS_TITLE = Typeface.bold(23);
  private static final Font TICK = Typeface.plain(22);

  private static final BasicStroke THIN = new BasicStroke(1.5f);

  @Override
  public Font getBaseFont() {
    return TICK;
  }

  @Override
  public Font getAxisTitleFont() {
    return AXIS_TITLE;
  }

  @Override
  public Font getAxisTickLabelsFont() {
    return TICK;
  }

  @Override
  public Color getChartBackgroundColor() {
    return Ink.NOTHING;
  }

  @Override
  public Color getPlotBackgroundColor() {
    return Ink.NOTHING;
  }

  @Override
  public Color getChartFontColor() {
    return Ink.TEXT;
  }

  @Override
  public Color getAxisTickLabelsColor() {
    return Ink.TEXT;
  }

  @Override
  public Color getAxisTickMarksColor() {
    return Ink.AXIS;
  }

  @Override
  public BasicStroke getAxisTickMarksStroke() {
    return THIN;
  }

  @Override
  public int getAxisTickMarkLength() {
    return 8;
  }

  @Override
  public int getAxisTickPadding() {
    return 8;
  }

  @Override
  public int getAxisTitlePadding() {
    return 12;
  }

  @Override
  public int getXAxisTickMarkSpacingHint() {
    return 110;
  }

  @Override
  public int getYAxisTickMarkSpacingHint() {
    return 70;
  }

  @Override
  public int getChartPadding() {
    return Plot.PADDING;
  }

  @Override
  public int getPlotMargin() {
    return 0;
  }

  @Override
  public double getPlotContentSize() {
    return 1;
  }

  @Override
  public boolean isLegendVisible() {
    return false;
  }

  @Override
  public boolean isChartTitleVisible() {
    return false;
  }

  @Override
  public boolean isPlotBorderVisible() {
    return false;
  }

  @Override
  public boolean isPlotTicksMarksVisible() {
    return false;
  }

  @Override
  public boolean isPlotGridVerticalLinesVisible() {
    return false;
  }

  @Override
  public Color getPlotGridLinesColor() {
    return Ink.GRID;
  }

  @Override
  public BasicStroke getPlotGridLinesStroke() {
    return THIN;
  }
}
