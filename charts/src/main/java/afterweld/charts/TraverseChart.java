package afterweld.charts;

import afterweld.charts.plot.Axis;
import afterweld.charts.plot.Curve;
import afterweld.charts.plot.Dash;
import afterweld.charts.plot.Ink;
import afterweld.charts.plot.Legend;
import afterweld.charts.plot.LineLook;
import afterweld.charts.plot.Page;
import afterweld.charts.plot.Picture;
import afterweld.charts.plot.Plot;
import afterweld.quantity.OutputQuantity;
import afterweld.quantity.UnitSystem;
import afterweld.study.HardnessTraverse.Point;
import afterweld.study.TraverseFit;
import afterweld.study.TraverseFit.CurvePoint;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;

/** A measured traverse over the prediction before and after fitting, and what is left. */
public final class TraverseChart {
  private static final int HEIGHT = 1320;
  private static final double GAP = 18;
  private static final double SHARE = 0.66;
  private static final LineLook MEASURED = LineLook.plain(Ink.TEXT, 9, Dash.DOTS);
  private static final LineLook BEFORE = LineLook.plain(Ink.STONE, 4, Dash.LONG);
  private static final LineLook AFTER = LineLook.plain(Ink.EMBER, 4.5f, Dash.SOLID);
  private static final LineLook ZERO = LineLook.plain(Ink.AXIS, 2, Dash.SOLID);
  private static final LineLook SCATTER = LineLook.plain(Ink.AXIS, 2, Dash.SHORT);

  private final TraverseFit fit;
  private final UnitSystem units;

  private TraverseChart(TraverseFit fit, UnitSystem units) {
    this.fit = fit;
    this.units = units;
  }

  /**
   * The picture.
   *
   * @param subject the case it belongs to
   * @param caution what must be read with it
   */
  public static Picture of(TraverseFit fit, String subject, String caution, UnitSystem units) {
    TraverseChart chart = new TraverseChart(fit, units);
    Page page =
        new Page(
            HEIGHT,
            "Measured hardness against the prediction",
            subject,
            new Legend(
                List.of(
                    Legend.Entry.line("measured", MEASURED),
                    Legend.Entry.line("case as written", BEFORE),
                    Legend.Entry.line("fitted", AFTER),
                    Legend.Entry.line("twice the scatter of an indent", SCATTER))),
            List.of(caution),
            List.of("Below: measured less fitted. Distance as the traverse counts it."));
    return new Picture("fit", page, chart.description(), chart::draw);
  }

  private String description() {
    return String.format(
        Locale.ROOT,
        "%d measured hardness values across the weld, %.1f HV off the case as written, %.1f HV off"
            + " the fitted one.",
        fit.traverse().points().size(),
        fit.rmsBefore(),
        fit.rmsAfter());
  }

  private void draw(Graphics2D g, Rectangle2D room) {
    double upper = SHARE * (room.getHeight() - GAP);
    double lower = room.getHeight() - GAP - upper;
    overlay(g, new Rectangle2D.Double(room.getX(), room.getY(), room.getWidth(), upper));
    residuals(
        g, new Rectangle2D.Double(room.getX(), room.getY() + upper + GAP, room.getWidth(), lower));
  }

  private Axis across() {
    List<Point> points = fit.traverse().points();
    double first = points.get(0).distance();
    double last = points.get(points.size() - 1).distance();
    double margin = 0.02 * (last - first);
    return new Axis(
        OutputQuantity.DISTANCE.label(units),
        units.length(first - margin),
        units.length(last + margin));
  }

  private void overlay(Graphics2D g, Rectangle2D frame) {
    double top = 1;
    for (Point point : fit.traverse().points()) {
      top = Math.max(top, point.hardness());
    }
    List<Curve> curves =
        List.of(curve(CurvePoint::before, BEFORE), curve(CurvePoint::after, AFTER));
    for (Curve curve : curves) {
      top = Math.max(top, curve.highest().map(Curve.Spot::y).orElse(top));
    }
    Axis up = new Axis(OutputQuantity.HARDNESS.label(units), 0, 1.1 * top);
    Plot plot = new Plot(g, frame, across().unlabelled(), up);
    curves.forEach(plot::curve);
    fit.traverse()
        .points()
        .forEach(point -> dot(plot, units.length(point.distance()), point.hardness()));
  }

  private Curve curve(ToDoubleFunction<CurvePoint> value, LineLook look) {
    return new Curve(
        "",
        fit.curve().stream()
            .map(
                point -> new Curve.Spot(units.length(point.distance()), value.applyAsDouble(point)))
            .toList(),
        look);
  }

  private static void dot(Plot plot, double x, double y) {
    plot.curve(new Curve("", List.of(new Curve.Spot(x, y)), MEASURED));
  }

  private void residuals(Graphics2D g, Rectangle2D frame) {
    List<Point> points = fit.traverse().points();
    double[] left =
        IntStream.range(0, points.size())
            .mapToDouble(i -> points.get(i).hardness() - fit.after().get(i))
            .toArray();
    double scatter = points.stream().mapToDouble(Point::deviation).average().orElse(1);
    double most = 2.5 * scatter;
    for (double one : left) {
      most = Math.max(most, 1.1 * Math.abs(one));
    }
    Axis across = across();
    Plot plot = new Plot(g, frame, across, new Axis("left over (HV)", -most, most));
    plot.level(across.from(), across.to(), 0, ZERO);
    plot.level(across.from(), across.to(), 2 * scatter, SCATTER);
    plot.level(across.from(), across.to(), -2 * scatter, SCATTER);
    for (int i = 0; i < left.length; i++) {
      dot(plot, units.length(points.get(i).distance()), left[i]);
    }
  }
}
