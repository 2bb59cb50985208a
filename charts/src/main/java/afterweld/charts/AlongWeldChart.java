package afterweld.charts;

import afterweld.charts.plot.Axis;
import afterweld.charts.plot.ContourField;
import afterweld.charts.plot.ContourMap;
import afterweld.charts.plot.Curve;
import afterweld.charts.plot.Dash;
import afterweld.charts.plot.Figures;
import afterweld.charts.plot.Ink;
import afterweld.charts.plot.Legend;
import afterweld.charts.plot.LineLook;
import afterweld.charts.plot.MarkerShape;
import afterweld.charts.plot.Page;
import afterweld.charts.plot.Picture;
import afterweld.charts.plot.Plot;
import afterweld.choice.answer.Requirement;
import afterweld.quantity.OutputQuantity;
import afterweld.quantity.UnitSystem;
import afterweld.section.AlongWeld;
import afterweld.section.AlongWeld.AtPlace;
import afterweld.section.AlongWeld.Sections;
import afterweld.section.SectionProfile;
import afterweld.strength.Strength;
import afterweld.thermal.PeakMap;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * A weld that starts and ends, unrolled: above, the peak temperature of the parts along and across
 * the weld; below, the hardness across it near its start, half way and near its end, and what
 * another current at the end would change.
 */
public final class AlongWeldChart {
  private static final int HEIGHT = 1640;
  private static final double GAP = 24;
  private static final double MAP_SHARE = 0.52;
  private static final int LATTICE = 121;
  private static final int AS_WELDED = 1;

  /** Below this peak little happens to the metal, K. */
  private static final double COOL = 215 + UnitSystem.ZERO_CELSIUS;

  /** Nothing is told apart above it, K: the metal has melted. */
  private static final double MOLTEN = 660 + UnitSystem.ZERO_CELSIUS;

  private static final LineLook PLACE = LineLook.plain(Ink.DEEP_BLUE, 2.6f, Dash.SHORT);
  private static final LineLook CENTRE = LineLook.plain(Ink.TEXT, 2, Dash.LONG_DOT);
  private static final LineLook BEFORE = LineLook.plain(Ink.STONE, 8, Dash.SOLID);
  private static final LineLook OTHER =
      new LineLook(Ink.DEEP_BLUE, 3.5f, Dash.LONG_DOT, MarkerShape.TRIANGLE);
  private static final List<LineLook> PLACES =
      List.of(
          LineLook.plain(Ink.LAGOON, 4, Dash.SHORT),
          LineLook.plain(Ink.PLUM, 4, Dash.LONG),
          new LineLook(Ink.EMBER, 4.5f, Dash.SOLID, MarkerShape.SQUARE));

  private final AlongWeld along;
  private final UnitSystem units;

  private AlongWeldChart(AlongWeld along, UnitSystem units) {
    this.along = along;
    this.units = units;
  }

  /** The picture. */
  public static Picture of(AlongWeld along, UnitSystem units) {
    AlongWeldChart chart = new AlongWeldChart(along, units);
    SectionProfile end = along.stated().end().profile().orElseThrow();
    Remarks remarks = new Remarks(new SectionView(end, Requirement.NONE, units));
    Page page =
        new Page(
            HEIGHT,
            along.ring() ? "Once round the tube, unrolled" : "Along the weld, from start to end",
            remarks.subject(),
            new Legend(chart.legend()),
            remarks.caution(),
            List.of(
                "Above: highest temperature of each place, mean through the thickness; left side of"
                    + " the weld below the line. Below: hardness as welded. Power is taken as"
                    + " proportional to the current."));
    return new Picture("along-weld", page, chart.description(), chart::draw);
  }

  private List<Legend.Entry> legend() {
    List<Legend.Entry> entries = new ArrayList<>();
    entries.add(Legend.Entry.line("places shown below", PLACE));
    entries.add(Legend.Entry.line("before welding", BEFORE));
    for (int i = 0; i < PLACES.size(); i++) {
      entries.add(Legend.Entry.line(name(along.stated().places().get(i)), PLACES.get(i)));
    }
    along
        .other()
        .ifPresent(
            other ->
                entries.add(
                    Legend.Entry.line(name(other.end()) + ", current " + fall(other), OTHER)));
    return entries;
  }

  private String name(AtPlace at) {
    return along.label(at.place());
  }

  private static String fall(Sections sections) {
    return sections.endCurrent() == 1
        ? "constant"
        : String.format(Locale.ROOT, "falling to %.0f %%", 100 * sections.endCurrent());
  }

  private String description() {
    List<String> places = new ArrayList<>();
    along.stated().places().forEach(place -> places.add(at(place)));
    return "Peak temperature over the unrolled weld, and hardness at three places. "
        + String.join("; ", places)
        + along
            .other()
            .map(other -> "; with the current " + fall(other) + ", " + at(other.end()))
            .orElse("")
        + ".";
  }

  private String at(AtPlace place) {
    return String.format(
        Locale.ROOT,
        "%s: bead %s wide, lowest hardness %.0f HV",
        name(place),
        Figures.of(OutputQuantity.DISTANCE, units, place.beadWidth()),
        place.lowest(Strength::hardness));
  }

  private void draw(Graphics2D g, Rectangle2D room) {
    double split = MAP_SHARE * (room.getHeight() - GAP);
    double rest = room.getHeight() - GAP - split;
    map(g, new Rectangle2D.Double(room.getX(), room.getY(), room.getWidth(), split));
    curves(
        g, new Rectangle2D.Double(room.getX(), room.getY() + split + GAP, room.getWidth(), rest));
  }

  private void map(Graphics2D g, Rectangle2D frame) {
    PeakMap peaks = along.stated().peaks();
    double[] places = peaks.along();
    double first = peaks.ring() ? 0 : places[0];
    double last = peaks.ring() ? peaks.length() : places[places.length - 1];
    double left = -reach(0);
    double right = reach(peaks.legs() - 1);
    Axis across =
        new Axis(
            "distance from the start of the weld (" + units.lengthUnit() + ")",
            units.length(first),
            units.length(last));
    Axis up =
        new Axis(OutputQuantity.DISTANCE.label(units), units.length(left), units.length(right));
    Plot plot = new Plot(g, frame, across, up);
    new ContourMap(plot, across, up, field(first, last, left, right), levels())
        .draw(g, Ink.EMBER, units.temperatureUnit());
    plot.level(across.from(), across.to(), 0, CENTRE);
    along.stated().places().forEach(place -> plot.upright(units.length(place.fromStart()), PLACE));
  }

  private List<Double> levels() {
    return units == UnitSystem.METRIC
        ? List.of(200.0, 250.0, 300.0, 350.0, 400.0, 500.0, 600.0)
        : List.of(400.0, 500.0, 600.0, 700.0, 900.0, 1100.0);
  }

  private ContourField field(double first, double last, double left, double right) {
    double[] values = new double[LATTICE * LATTICE];
    for (int row = 0; row < LATTICE; row++) {
      double y = left + (right - left) * row / (LATTICE - 1);
      int leg = y < 0 ? 0 : along.stated().peaks().legs() - 1;
      for (int column = 0; column < LATTICE; column++) {
        double x = first + (last - first) * column / (LATTICE - 1);
        double peak = Math.min(MOLTEN, along.stated().peaks().peak(leg, x, Math.abs(y)));
        values[row * LATTICE + column] = units.temperature(peak);
      }
    }
    return new ContourField(values, LATTICE);
  }

  /** How far a leg is drawn, m: to where the peaks no longer matter. */
  private double reach(int leg) {
    double[] distances = along.stated().peaks().across(leg);
    int line = distances.length - 1;
    while (line > 1 && hottest(leg, line) < COOL) {
      line--;
    }
    return distances[line];
  }

  private double hottest(int leg, int line) {
    double highest = 0;
    for (int place = 0; place < along.stated().peaks().along().length; place++) {
      highest = Math.max(highest, along.stated().peaks().peak(leg, place, line));
    }
    return highest;
  }

  private void curves(Graphics2D g, Rectangle2D frame) {
    SectionProfile end = along.stated().end().profile().orElseThrow();
    Axis across = window().axis(units);
    double top =
        end.stations().stream()
            .mapToDouble(station -> station.estimates().get(0).middle().hardness())
            .max()
            .orElseThrow();
    Plot plot =
        new Plot(g, frame, across, new Axis(OutputQuantity.HARDNESS.label(units), 0, 1.15 * top));
    plot.curve(curve(end, 0, BEFORE));
    for (int i = 0; i < PLACES.size(); i++) {
      plot.curve(
          curve(along.stated().places().get(i).profile().orElseThrow(), AS_WELDED, PLACES.get(i)));
    }
    along
        .other()
        .ifPresent(
            other -> plot.curve(curve(other.end().profile().orElseThrow(), AS_WELDED, OTHER)));
  }

  /** What the weld changed at any of the places. */
  private SectionWindow window() {
    return along.stated().places().stream()
        .map(at -> SectionWindow.of(at.profile().orElseThrow()))
        .reduce(
            (one, other) ->
                new SectionWindow(
                    Math.min(one.from(), other.from()), Math.max(one.to(), other.to())))
        .orElseThrow();
  }

  private Curve curve(SectionProfile profile, int state, LineLook look) {
    List<Curve.Spot> spots =
        profile.stations().stream()
            .map(
                station ->
                    new Curve.Spot(
                        units.length(station.distance()),
                        station.estimates().get(state).middle().hardness()))
            .toList();
    return new Curve("", spots, look);
  }
}
