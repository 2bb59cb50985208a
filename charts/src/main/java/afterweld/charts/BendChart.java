package afterweld.charts;

import afterweld.charts.plot.Axis;
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
import afterweld.joint.JointSettings.BendLoad;
import afterweld.joint.bend.BendReport;
import afterweld.joint.bend.BentState;
import afterweld.joint.bend.StripBend;
import afterweld.quantity.UnitSystem;
import java.awt.Graphics2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * A strip across the weld under one load, in every state: its shape from the side, to scale, above
 * its curvature along the strip.
 */
public final class BendChart {
  private static final double AROUND = 300;
  private static final double CURVATURE = 600;
  private static final double CELLS = 1560;
  private static final double TALLEST = 420;
  private static final double MARGIN = 30;
  private static final double NAME_ROOM = 104;
  private static final float NAME_SIZE = 24;
  private static final float FIGURE_SIZE = 20;
  private static final LineLook RELEASED = LineLook.plain(Ink.TEXT, 2.6f, Dash.SHORT);
  private static final LineLook UNWELDED = LineLook.plain(Ink.SOFT_TEXT, 2.6f, Dash.DOTS);

  private final BendReport report;
  private final List<String> names;
  private final BendLoad load;
  private final UnitSystem units;

  private BendChart(BendReport report, List<String> names, BendLoad load, UnitSystem units) {
    this.report = report;
    this.names = names;
    this.load = load;
    this.units = units;
  }

  /**
   * A picture for each load, the one of the case first.
   *
   * @param report a report with at least one state
   * @param names of the states of the profile
   * @param subject the case it belongs to
   * @param caution what must be read with it
   */
  public static List<Picture> of(
      BendReport report, List<String> names, String subject, String caution, UnitSystem units) {
    return report.loads().stream()
        .map(load -> new BendChart(report, names, load, units).picture(subject, caution))
        .toList();
  }

  private Picture picture(String subject, String caution) {
    Page page =
        new Page(
            (int) (AROUND + shapesHeight() + CURVATURE),
            title(),
            subject,
            new Legend(legend()),
            List.of(caution),
            List.of(loadNote(), "Sharpest radii are means over one thickness."));
    return new Picture("bend-" + load.label(), page, description(), this::draw);
  }

  private String title() {
    return String.format(
        Locale.ROOT,
        "Strip bent by %.0f degrees %s",
        Math.toDegrees(report.strip().angle()),
        load == BendLoad.COUPLES ? "by end couples" : "over an edge");
  }

  private String loadNote() {
    return load == BendLoad.EDGE
        ? BendReport.EDGE_NOTE
        : "Shapes are to scale, drawn as thick as the thinner side, the weld centre level in each.";
  }

  private List<Legend.Entry> legend() {
    List<Legend.Entry> entries = new ArrayList<>();
    for (BentState bent : report.states()) {
      entries.add(Legend.Entry.line(name(bent), look(bent)));
    }
    entries.add(
        Legend.Entry.area(
            "softened by more than 2 %, in the colour of its state", look(last()).color()));
    entries.add(Legend.Entry.line("after release", RELEASED));
    entries.add(Legend.Entry.line("unwelded strip, for comparison", UNWELDED));
    return entries;
  }

  private BentState last() {
    return report.states().get(report.states().size() - 1);
  }

  private String name(BentState bent) {
    return names.get(bent.state());
  }

  private LineLook look(BentState bent) {
    return StateLooks.of(bent.state(), names.size());
  }

  private String description() {
    StringBuilder text = new StringBuilder(title()).append('.');
    for (BentState bent : report.states()) {
      StripBend bend = bent.by(load);
      text.append(
          String.format(
              Locale.ROOT,
              " %s: %s; springs back %.1f degrees.",
              name(bent),
              figures(bend),
              Math.toDegrees(bend.springback())));
    }
    return text.append(' ').append(BendReport.EDGE_NOTE).toString();
  }

  private String figures(StripBend bend) {
    return String.format(
        Locale.ROOT,
        "kink factor %.1f, outer strain %.1f %%",
        bend.averagedKinkFactor(),
        100 * bend.averagedOuterStrain());
  }

  private void draw(Graphics2D g, Rectangle2D room) {
    double split = shapesHeight();
    drawShapes(g, new Rectangle2D.Double(room.getX(), room.getY(), room.getWidth(), split));
    drawCurvature(
        g,
        new Rectangle2D.Double(
            room.getX(), room.getY() + split, room.getWidth(), room.getHeight() - split));
  }

  private void drawShapes(Graphics2D g, Rectangle2D room) {
    double cell = cell();
    double scale = scale();
    double foot = room.getMaxY() - NAME_ROOM - scale * report.thickness();
    for (int i = 0; i < report.states().size(); i++) {
      BentState bent = report.states().get(i);
      Point2D centre = new Point2D.Double(room.getX() + (i + 0.5) * cell, foot);
      drawStrip(new StripSketch(g, centre, scale), bent);
      double baseline = room.getMaxY() - NAME_ROOM + 46;
      centred(
          g, Text.bold(name(bent), NAME_SIZE, Ink.forWords(look(bent).color())), centre, baseline);
      centred(
          g,
          Text.plain(figures(bent.by(load)), FIGURE_SIZE, Ink.TEXT),
          centre,
          baseline + 1.5 * FIGURE_SIZE);
    }
  }

  private static void centred(Graphics2D g, Text text, Point2D centre, double baseline) {
    text.draw(g, centre.getX() - text.width() / 2, baseline);
  }

  private void drawStrip(StripSketch sketch, BentState bent) {
    StripBend bend = bent.by(load);
    sketch.body(bend, report.thickness(), bent.softened(), look(bent).color());
    sketch.middle(bend.shapeReleased(), RELEASED);
    report
        .unwelded()
        .filter(unwelded -> bent.state() > 0)
        .ifPresent(unwelded -> sketch.middle(unwelded.by(load).shapeUnderLoad(), UNWELDED));
  }

  private double cell() {
    return CELLS / report.states().size();
  }

  /** Room for the shapes with their names, pixels. */
  private double shapesHeight() {
    return scale() * (rise() + 2 * report.thickness()) + NAME_ROOM + MARGIN;
  }

  /** Pixels per metre with which every shape fits its cell. */
  private double scale() {
    double across = (cell() - 2 * MARGIN) / (2 * reach() + report.thickness());
    return Math.min(across, TALLEST / (rise() + 2 * report.thickness()));
  }

  /** Farthest that a shape goes to a side, m. */
  private double reach() {
    return places(StripBend::shapeReleased)
        .mapToDouble(place -> Math.abs(place.along()))
        .max()
        .orElseThrow();
  }

  /** Highest that a shape goes, m. */
  private double rise() {
    return places(StripBend::shapeUnderLoad)
        .mapToDouble(StripBend.Place::height)
        .max()
        .orElseThrow();
  }

  private Stream<StripBend.Place> places(Function<StripBend, List<StripBend.Place>> shape) {
    return report.states().stream().flatMap(bent -> shape.apply(bent.by(load)).stream());
  }

  private void drawCurvature(Graphics2D g, Rectangle2D frame) {
    double half = units.length(report.strip().length()) / 2;
    Axis across =
        new Axis(
            "distance along the strip from weld centre (" + units.lengthUnit() + ")", -half, half);
    Axis up = new Axis("curvature under load (1/" + units.lengthUnit() + ")", 0, 1.12 * highest());
    Plot plot = new Plot(g, frame, across, up);
    report.states().forEach(bent -> plot.curve(curve(bent)));
    report.states().forEach(bent -> label(plot, bent));
  }

  private double highest() {
    return report.states().stream()
        .mapToDouble(bent -> perLength(bent.by(load).peakCurvature()))
        .max()
        .orElse(1);
  }

  private double perLength(double perMetre) {
    return perMetre / units.length(1);
  }

  private Curve curve(BentState bent) {
    List<Curve.Spot> spots =
        bent.by(load).line().stream()
            .map(
                slice ->
                    new Curve.Spot(units.length(slice.position()), perLength(slice.curvature())))
            .toList();
    return new Curve(name(bent), spots, look(bent));
  }

  private void label(Plot plot, BentState bent) {
    Curve.Spot top = curve(bent).highest().orElseThrow();
    Curve curve = curve(bent);
    Curve.Spot at = curve.even() ? curve.spots().get(curve.spots().size() / 8) : top;
    double sharpest = units.length(1 / bent.by(load).averagedPeakCurvature());
    String radius =
        Figures.rounded(sharpest, units == UnitSystem.METRIC ? 1 : 2) + " " + units.lengthUnit();
    String words = name(bent) + (curve.even() ? ": radius " : ": sharpest radius ") + radius;
    plot.label(Text.bold(words, 21, Ink.forWords(look(bent).color())), at.x(), at.y());
  }
}
