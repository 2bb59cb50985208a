package afterweld.charts;

import afterweld.charts.plot.Axis;
import afterweld.charts.plot.Curve;
import afterweld.charts.plot.Dash;
import afterweld.charts.plot.Ink;
import afterweld.charts.plot.Legend;
import afterweld.charts.plot.LineLook;
import afterweld.charts.plot.MarkerShape;
import afterweld.charts.plot.Page;
import afterweld.charts.plot.Picture;
import afterweld.charts.plot.Plot;
import afterweld.choice.filler.FillerComparison;
import afterweld.choice.filler.FillerOption;
import afterweld.quantity.OutputQuantity;
import afterweld.quantity.UnitSystem;
import afterweld.section.ErrorBand;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Yield of the weld metal against dilution in the state the case ends in, as welded or after its
 * heat treatment: a line for each filler that suits, in the order of choice.
 */
public final class FillerChart {
  private static final int HEIGHT = 1060;
  private static final int MOST_LINES = 6;
  private static final List<LineLook> LOOKS =
      List.of(
          new LineLook(Ink.DEEP_BLUE, 4.5f, Dash.SOLID, MarkerShape.CIRCLE),
          new LineLook(Ink.EMBER, 4.5f, Dash.LONG, MarkerShape.SQUARE),
          new LineLook(Ink.LAGOON, 4, Dash.SHORT, MarkerShape.TRIANGLE),
          new LineLook(Ink.PLUM, 4, Dash.LONG_DOT, MarkerShape.DIAMOND),
          LineLook.plain(Ink.OCHRE, 4, Dash.DOTS),
          LineLook.plain(Ink.PINE, 4, Dash.WIDE));
  private static final LineLook BASE = LineLook.plain(Ink.STONE, 7, Dash.SOLID);
  private static final LineLook DILUTION = LineLook.plain(Ink.TEXT, 2.4f, Dash.SHORT);

  private final FillerComparison comparison;
  private final UnitSystem units;
  private final List<FillerOption> shown;

  private FillerChart(FillerComparison comparison, UnitSystem units) {
    this.comparison = comparison;
    this.units = units;
    this.shown =
        comparison.options().stream()
            .filter(option -> option.allowed() && option.hasFiller())
            .filter(
                option ->
                    !Double.isNaN(comparison.judgedYield(option, comparison.choice().dilution())))
            .limit(MOST_LINES)
            .toList();
  }

  /**
   * The picture.
   *
   * @param subject the case it belongs to
   * @param cautions what must be read with it
   */
  public static Picture of(
      FillerComparison comparison, String subject, List<String> cautions, UnitSystem units) {
    FillerChart chart = new FillerChart(comparison, units);
    Page page =
        new Page(
            HEIGHT,
            "Weld metal " + comparison.judgedState() + ", filler by filler",
            subject,
            new Legend(chart.legend()),
            cautions,
            List.of("The band of one line is " + ErrorBand.WELD_METAL.ofYield() + " either way."));
    return new Picture("fillers", page, chart.description(), chart::draw);
  }

  private List<Legend.Entry> legend() {
    List<Legend.Entry> entries = new ArrayList<>();
    for (int i = 0; i < shown.size(); i++) {
      entries.add(Legend.Entry.line(shown.get(i).filler(), LOOKS.get(i)));
    }
    entries.add(
        Legend.Entry.line(
            comparison.ownTreatment() ? "base after the same treatment" : "base as delivered",
            BASE));
    entries.add(Legend.Entry.line("dilution of this joint, with its band", DILUTION));
    return entries;
  }

  private String description() {
    StringBuilder text =
        new StringBuilder(
            "Yield strength of the weld metal " + comparison.judgedState() + " over dilution.");
    for (FillerOption option : shown) {
      text.append(
          String.format(
              Locale.ROOT,
              " %s: %s at no dilution, %s at this joint's.",
              option.filler(),
              stress(comparison.judgedYield(option, 0)),
              stress(comparison.judgedYield(option, option.dilution()))));
    }
    return text.toString();
  }

  private String stress(double pascal) {
    return OutputQuantity.YIELD.text(units, pascal) + " " + units.stressUnit();
  }

  private void draw(Graphics2D g, Rectangle2D room) {
    List<Curve> curves = curves();
    double top =
        curves.stream()
            .flatMap(curve -> curve.highest().stream())
            .mapToDouble(Curve.Spot::y)
            .max()
            .orElse(1);
    Axis across = new Axis("dilution: share of base in the weld metal (%)", 0, 100);
    Axis up =
        new Axis(OutputQuantity.YIELD.label(units) + " " + comparison.judgedState(), 0, 1.12 * top);
    Plot plot = new Plot(g, room, across, up);
    plot.shade(
        100 * comparison.choice().dilutionLow(),
        100 * comparison.choice().dilutionHigh(),
        Ink.tint(Ink.STONE, 0.25));
    plot.upright(100 * comparison.choice().dilution(), DILUTION);
    curves.forEach(plot::curve);
  }

  /** The base first, so that the fillers lie over it. */
  private List<Curve> curves() {
    double base = units.stress(comparison.judgedBase());
    List<Curve> curves = new ArrayList<>();
    curves.add(new Curve("", List.of(new Curve.Spot(0, base), new Curve.Spot(100, base)), BASE));
    for (int i = 0; i < shown.size(); i++) {
      curves.add(curve(shown.get(i), LOOKS.get(i)));
    }
    return curves;
  }

  private double judged(FillerOption.Point point) {
    return comparison.ownTreatment() ? point.treated() : point.welded();
  }

  private Curve curve(FillerOption option, LineLook look) {
    return new Curve(
        option.filler(),
        option.curve().stream()
            .map(point -> new Curve.Spot(100 * point.dilution(), units.stress(judged(point))))
            .toList(),
        look);
  }
}
