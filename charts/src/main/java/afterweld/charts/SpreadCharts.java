package afterweld.charts;

import afterweld.charts.plot.Axis;
import afterweld.charts.plot.Band;
import afterweld.charts.plot.Curve;
import afterweld.charts.plot.Dash;
import afterweld.charts.plot.Figures;
import afterweld.charts.plot.Ink;
import afterweld.charts.plot.Legend;
import afterweld.charts.plot.LineLook;
import afterweld.charts.plot.Page;
import afterweld.charts.plot.Picture;
import afterweld.charts.plot.Plot;
import afterweld.charts.plot.Text;
import afterweld.choice.answer.Requirement;
import afterweld.quantity.OutputQuantity;
import afterweld.quantity.UnitSystem;
import afterweld.study.Quantiles;
import afterweld.study.SpreadStudy;
import afterweld.study.SpreadStudy.StationBand;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/** How far hardness and yield may lie apart along the section: bands of 90 % of the runs. */
public final class SpreadCharts {
  private static final int HEIGHT = 1420;
  private static final double GAP = 18;
  private static final double BASE_MARGIN = 1.15;
  private static final LineLook MEDIAN = LineLook.plain(Ink.DEEP_BLUE, 4.5f, Dash.SOLID);
  private static final LineLook EDGE = LineLook.plain(Ink.DEEP_BLUE, 2, Dash.SHORT);
  private static final LineLook PROCESS = LineLook.plain(Ink.EMBER, 2.4f, Dash.LONG);

  private final SpreadStudy study;
  private final UnitSystem units;

  private SpreadCharts(SpreadStudy study, UnitSystem units) {
    this.study = study;
    this.units = units;
  }

  /**
   * The bands along the section and the bars of what matters.
   *
   * @param subject the case it belongs to
   * @param caution what must be read with it
   */
  public static List<Picture> of(
      SpreadStudy study, String subject, String caution, UnitSystem units) {
    Picture bands = new SpreadCharts(study, units).bands(subject, caution);
    return study.total().firstOrder().isEmpty()
        ? List.of(bands)
        : List.of(bands, InfluenceChart.of(study, subject, caution));
  }

  private Picture bands(String subject, String caution) {
    String runs = study.runs() - study.leftOut() + " computed joints.";
    Page page =
        new Page(
            HEIGHT,
            "How far the finished joint may lie apart",
            subject,
            legend(),
            List.of(caution),
            List.of(runs + " Each place is read on its own: no single joint follows an edge."));
    return new Picture("spread", page, description(), this::draw);
  }

  private Legend legend() {
    List<Legend.Entry> entries = new ArrayList<>();
    entries.add(Legend.Entry.line("half of the joints below", MEDIAN));
    entries.add(Legend.Entry.line("5 and 95 % below, with the error of the computation", EDGE));
    entries.add(Legend.Entry.line("5 and 95 % below, inputs only", PROCESS));
    Requirement asked = study.requirement();
    if (asked.hardness().isPresent() || asked.yield().isPresent()) {
      entries.add(Legend.Entry.line("required", SectionPanel.LIMIT));
    }
    return new Legend(entries);
  }

  private String description() {
    Quantiles tensile = study.total().tensile();
    return "Bands of hardness and yield strength across the weld in the last state over "
        + (study.runs() - study.leftOut())
        + " computed joints. Joint tensile strength: 5 % of the joints below "
        + stress(tensile.p5())
        + ", half below "
        + stress(tensile.p50())
        + ", 95 % below "
        + stress(tensile.p95())
        + ".";
  }

  private String stress(double pascal) {
    return Double.isFinite(pascal)
        ? Figures.of(OutputQuantity.TENSILE, units, pascal)
        : "not predicted";
  }

  private void draw(Graphics2D g, Rectangle2D room) {
    double height = (room.getHeight() - GAP) / 2;
    Rectangle2D upper = new Rectangle2D.Double(room.getX(), room.getY(), room.getWidth(), height);
    Rectangle2D lower =
        new Rectangle2D.Double(room.getX(), room.getY() + height + GAP, room.getWidth(), height);
    panel(
        g,
        upper,
        across().unlabelled(),
        OutputQuantity.HARDNESS,
        StationBand::hardness,
        StationBand::hardnessProcess,
        study.requirement().hardness());
    panel(
        g,
        lower,
        across(),
        OutputQuantity.YIELD,
        StationBand::yield,
        StationBand::yieldProcess,
        study.requirement().yield());
  }

  private Axis across() {
    List<StationBand> stations = study.stations();
    return new Axis(
        OutputQuantity.DISTANCE.label(units),
        units.length(stations.get(0).distance() / BASE_MARGIN),
        units.length(stations.get(stations.size() - 1).distance() / BASE_MARGIN));
  }

  private void panel(
      Graphics2D g,
      Rectangle2D frame,
      Axis across,
      OutputQuantity quantity,
      Function<StationBand, Quantiles> total,
      Function<StationBand, Quantiles> process,
      OptionalDouble required) {
    double asked = required.isPresent() ? quantity.in(units, required.getAsDouble()) : 0;
    double top = Math.max(asked, highest(quantity, total));
    Plot plot = new Plot(g, frame, across, new Axis(quantity.label(units), 0, 1.12 * top));
    plot.band(band(quantity, total, Ink.DEEP_BLUE));
    plot.band(band(quantity, process, Ink.EMBER));
    plot.curve(curve(quantity, band -> total.apply(band).p5(), EDGE));
    plot.curve(curve(quantity, band -> total.apply(band).p95(), EDGE));
    plot.curve(curve(quantity, band -> process.apply(band).p5(), PROCESS));
    plot.curve(curve(quantity, band -> process.apply(band).p95(), PROCESS));
    plot.curve(curve(quantity, band -> total.apply(band).p50(), MEDIAN));
    if (required.isPresent()) {
      plot.level(across.from(), across.to(), asked, SectionPanel.LIMIT);
      Text words = Text.bold("required " + Figures.shown(quantity, units, asked), 21, Ink.LIMIT);
      plot.label(words, across.from() + 0.93 * across.span(), asked);
    }
  }

  private double highest(OutputQuantity quantity, Function<StationBand, Quantiles> band) {
    return study.stations().stream()
        .mapToDouble(station -> quantity.in(units, band.apply(station).p95()))
        .filter(Double::isFinite)
        .max()
        .orElse(1);
  }

  private Curve curve(OutputQuantity quantity, ToDoubleFunction<StationBand> value, LineLook look) {
    return new Curve(
        "",
        study.stations().stream()
            .map(
                band ->
                    new Curve.Spot(
                        units.length(band.distance()),
                        quantity.in(units, value.applyAsDouble(band))))
            .toList(),
        look);
  }

  private Band band(
      OutputQuantity quantity, Function<StationBand, Quantiles> band, java.awt.Color color) {
    return new Band(
        study.stations().stream()
            .map(
                station ->
                    new Band.Slice(
                        units.length(station.distance()),
                        quantity.in(units, band.apply(station).p5()),
                        quantity.in(units, band.apply(station).p95())))
            .toList(),
        color);
  }
}
