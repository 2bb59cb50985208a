package afterweld.charts;

import afterweld.section.OutputQuantity;
import afterweld.section.UnitSystem;
import afterweld.study.GridStudy;
import afterweld.study.GridStudy.Node;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;

/**
 * The joint over one or two inputs: lowest yield, and how wide the metal is that lies over 2 %
 * below the base, as lines over one input or as contours over two.
 */
public final class GridChart {
  private static final double GAP = 24;
  private static final int HEIGHT = 1560;
  private static final int LINES = 8;
  private static final int FINE = 16;
  private static final String YIELD_NAME = "lowest local yield";
  private static final String WIDTH_NAME = "width of the metal over 2 % below the base";

  private static final LineLook STRENGTH =
      new LineLook(Ink.DEEP_BLUE, 4.5f, Dash.SOLID, MarkerShape.CIRCLE);
  private static final LineLook WIDTH =
      new LineLook(Ink.EMBER, 4.5f, Dash.LONG, MarkerShape.SQUARE);

  private final GridStudy study;
  private final UnitSystem units;

  GridChart(GridStudy study, UnitSystem units) {
    this.study = study;
    this.units = units;
  }

  /**
   * The picture.
   *
   * @param subject the case it belongs to
   * @param caution what must be read with it
   */
  public static Picture of(GridStudy study, String subject, String caution, UnitSystem units) {
    GridChart chart = new GridChart(study, units);
    String over = study.axes().size() == 1 ? "over one input" : "over two inputs";
    Page page =
        new Page(
            HEIGHT,
            "Lowest yield and width below the base " + over,
            subject,
            new Legend(chart.legend()),
            List.of(caution),
            chart.notes());
    return new Picture("map", page, chart.description(), chart::draw);
  }

  List<String> notes() {
    List<String> notes = new ArrayList<>();
    boolean varies = study.axes().size() == 1 || !meaning(Node::lowestYield, "").isEmpty();
    if (varies && study.insideErrorBand()) {
      notes.add(
          "All differences in yield over this map lie inside the model's own error band: they show"
              + " which way it tends, not that one place is stronger.");
    }
    notes.add(
        "Arc efficiency of the case as written; the bead follows."
            + (study.axes().size() == 1 ? " No line: " : " No colour: ")
            + "no weld, or not predicted.");
    notes.add(
        "Width: from the first to the last metal, base or weld, with a yield over 2 % below that of"
            + " its base before welding.");
    return notes;
  }

  List<Legend.Entry> legend() {
    return study.axes().size() == 1
        ? List.of(Legend.Entry.line(YIELD_NAME, STRENGTH), Legend.Entry.line(WIDTH_NAME, WIDTH))
        : List.of(
            Legend.Entry.area(
                YIELD_NAME + meaning(Node::lowestYield, "stronger"), Ink.tint(Ink.DEEP_BLUE, 0.5)),
            Legend.Entry.area(
                WIDTH_NAME + meaning(Node::softenedWidth, "wider"), Ink.tint(Ink.EMBER, 0.5)));
  }

  /** What the shade says, where it says anything. */
  private String meaning(ToDoubleFunction<Node> value, String darker) {
    return field(OutputQuantity.YIELD, value).levels(LINES).isEmpty()
        ? ""
        : ": darker is " + darker;
  }

  private String description() {
    return String.format(
        Locale.ROOT,
        "Lowest yield from %s to %s and width of the metal over 2 %% below the base from %s to %s"
            + " over %s.",
        shown(OutputQuantity.YIELD, least(Node::lowestYield)),
        shown(OutputQuantity.YIELD, most(Node::lowestYield)),
        shown(OutputQuantity.DISTANCE, least(Node::softenedWidth)),
        shown(OutputQuantity.DISTANCE, most(Node::softenedWidth)),
        String.join(
            " and ", study.axes().stream().map(axis -> axis.input().label(units)).toList()));
  }

  private String shown(OutputQuantity quantity, double si) {
    return Double.isFinite(si) ? Figures.of(quantity, units, si) : "not predicted";
  }

  private double least(ToDoubleFunction<Node> value) {
    return study.nodes().stream()
        .mapToDouble(value)
        .filter(Double::isFinite)
        .min()
        .orElse(Double.NaN);
  }

  private double most(ToDoubleFunction<Node> value) {
    return study.nodes().stream()
        .mapToDouble(value)
        .filter(Double::isFinite)
        .max()
        .orElse(Double.NaN);
  }

  private void draw(Graphics2D g, Rectangle2D room) {
    double height = (room.getHeight() - GAP) / 2;
    Rectangle2D upper = new Rectangle2D.Double(room.getX(), room.getY(), room.getWidth(), height);
    Rectangle2D lower =
        new Rectangle2D.Double(room.getX(), room.getY() + height + GAP, room.getWidth(), height);
    if (study.axes().size() == 1) {
      line(g, upper, OutputQuantity.YIELD, "lowest yield", Node::lowestYield, STRENGTH);
      line(g, lower, OutputQuantity.DISTANCE, "width", Node::softenedWidth, WIDTH);
    } else {
      map(g, upper, OutputQuantity.YIELD, Node::lowestYield, Ink.DEEP_BLUE);
      map(g, lower, OutputQuantity.DISTANCE, Node::softenedWidth, Ink.EMBER);
    }
  }

  private Axis axis(int which) {
    GridStudy.Axis axis = study.axes().get(which);
    return new Axis(
        axis.input().label(units),
        axis.input().kind().in(units, axis.low()),
        axis.input().kind().in(units, axis.high()));
  }

  private void line(
      Graphics2D g,
      Rectangle2D frame,
      OutputQuantity quantity,
      String name,
      ToDoubleFunction<Node> value,
      LineLook look) {
    double top = quantity.in(units, most(value));
    Axis up = new Axis(name + " (" + quantity.unit(units) + ")", 0, top > 0 ? 1.12 * top : 1);
    Plot plot = new Plot(g, frame, axis(0), up);
    List<Curve.Spot> spots =
        study.nodes().stream()
            .map(
                node ->
                    new Curve.Spot(
                        study.axes().get(0).input().kind().in(units, node.values().get(0)),
                        quantity.in(units, value.applyAsDouble(node))))
            .toList();
    plot.curve(new Curve(name, spots, look));
  }

  private void map(
      Graphics2D g,
      Rectangle2D frame,
      OutputQuantity quantity,
      ToDoubleFunction<Node> value,
      Color ink) {
    Axis across = axis(0);
    Axis up = axis(1);
    Plot plot = new Plot(g, frame, across, up);
    ContourField field = field(quantity, value);
    List<Double> levels = field.levels(LINES);
    ContourMap map = new ContourMap(plot, across, up, field, levels);
    map.draw(g, ink, quantity.unit(units));
    if (levels.isEmpty() && Double.isFinite(most(value))) {
      map.note(g, even(quantity, value));
    }
  }

  private ContourField field(OutputQuantity quantity, ToDoubleFunction<Node> value) {
    double[] values =
        study.nodes().stream()
            .mapToDouble(node -> quantity.in(units, value.applyAsDouble(node)))
            .toArray();
    return new ContourField(values, GridStudy.steps(2)).finer(FINE);
  }

  /** What a map says whose values no line parts. */
  String even(OutputQuantity quantity, ToDoubleFunction<Node> value) {
    String low = Figures.of(quantity, units, least(value));
    String high = Figures.of(quantity, units, most(value));
    boolean everywhere =
        study.nodes().stream().allMatch(n -> Double.isFinite(value.applyAsDouble(n)));
    String where = everywhere ? "the same everywhere" : "the same wherever there is a value";
    if (quantity == OutputQuantity.DISTANCE && most(value) == 0) {
      return "no metal over 2 % below the base";
    }
    return low.equals(high) ? where + ": " + low : where + " within 1 %: " + low + " to " + high;
  }
}
