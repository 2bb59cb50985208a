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
import afterweld.charts.plot.Text;
import afterweld.quantity.OutputQuantity;
import afterweld.quantity.UnitSystem;
import afterweld.study.GridStudy;
import afterweld.study.GridStudy.Node;
import afterweld.study.Ranking;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import java.util.function.DoubleFunction;
import java.util.function.DoubleUnaryOperator;
import java.util.function.ToDoubleFunction;
import java.util.stream.DoubleStream;

/**
 * The joint over one or two inputs: what its places are ranked by, with the best one ringed, and
 * how wide the metal is that lies over 2 % below the base; as lines over one input or as contours
 * over two. Places of which nothing is claimed stay blank.
 */
public final class GridChart {
  private static final double GAP = 24;
  private static final int HEIGHT = 1560;
  private static final int LINES = 8;
  private static final int FINE = 16;
  private static final float SMALL = 20;
  private static final int LONGEST_HEAD = 16;
  private static final String NOT_GIVEN = "Not given";

  private static final LineLook STRENGTH =
      new LineLook(Ink.DEEP_BLUE, 4.5f, Dash.SOLID, MarkerShape.CIRCLE);
  private static final LineLook WIDTH =
      new LineLook(Ink.EMBER, 4.5f, Dash.LONG, MarkerShape.SQUARE);
  private static final LineLook ASKED = LineLook.plain(Ink.TEXT, 2.4f, Dash.SHORT);
  private static final Color AS_GOOD = Ink.tint(Ink.LAGOON, 0.25);

  private final GridStudy study;
  private final Ranking ranking;
  private final UnitSystem units;

  GridChart(GridStudy study, UnitSystem units) {
    this.study = study;
    this.ranking = study.ranking();
    this.units = units;
  }

  /** One quantity of the places: its name, its value in the unit shown, and how that is written. */
  record Shown(
      String name,
      String unit,
      ToDoubleFunction<Node> value,
      DoubleUnaryOperator in,
      DoubleFunction<String> text) {
    private double of(Node node) {
      return in.applyAsDouble(value.applyAsDouble(node));
    }
  }

  Shown strength() {
    return new Shown(
        study.aim().name(),
        study.aim().unit(units),
        Node::value,
        si -> study.aim().in(units, si),
        si -> Double.isFinite(si) ? study.aim().text(units, si) : "not predicted");
  }

  Shown width() {
    return new Shown(
        "width of the metal over 2 % below the base",
        OutputQuantity.DISTANCE.unit(units),
        Node::softenedWidth,
        si -> OutputQuantity.DISTANCE.in(units, si),
        si ->
            Double.isFinite(si) ? Figures.of(OutputQuantity.DISTANCE, units, si) : "not predicted");
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
    String name = chart.strength().name();
    Page page =
        new Page(
            HEIGHT,
            name.substring(0, 1).toUpperCase(Locale.ROOT)
                + name.substring(1)
                + " and width below the base "
                + over,
            subject,
            new Legend(chart.legend()),
            List.of(caution),
            chart.notes());
    return new Picture("map", page, chart.description(), chart::draw);
  }

  List<String> notes() {
    List<String> notes = new ArrayList<>();
    boolean varies = study.axes().size() == 1 || !meaning(strength(), "").isEmpty();
    if (varies && ranking.insideError()) {
      notes.add(
          "All ranked places lie inside the model's own error of the best: they show which way it"
              + " tends, not that one place is stronger.");
    }
    notes.add(
        (study.axes().size() == 1 ? "No line: " : "No colour: ")
            + "no weld, not sound, or not predicted. Bead by the arc efficiency of the case.");
    if (study.nodes().stream().anyMatch(node -> !node.joint().objections().isEmpty())) {
      notes.add("Crosses: something speaks against the place; it is not ranked.");
    }
    notes.add(
        "Width: from the first to the last metal, base or weld, with a yield over 2 % below that of"
            + " its base before welding.");
    return notes;
  }

  List<Legend.Entry> legend() {
    List<Legend.Entry> entries = new ArrayList<>();
    if (study.axes().size() == 1) {
      entries.add(Legend.Entry.line(strength().name(), STRENGTH));
      entries.add(Legend.Entry.line(width().name(), WIDTH));
      if (ranking.asGood().stream().anyMatch(place -> ranking.asGood().contains(place + 1))) {
        entries.add(Legend.Entry.area("as good as the best within 1 %", AS_GOOD));
      }
      if (study.aim().asked().isPresent()) {
        entries.add(Legend.Entry.line("required", ASKED));
      }
    } else {
      entries.add(
          Legend.Entry.area(
              strength().name() + meaning(strength(), "stronger"), Ink.tint(Ink.DEEP_BLUE, 0.5)));
      entries.add(
          Legend.Entry.area(width().name() + meaning(width(), "wider"), Ink.tint(Ink.EMBER, 0.5)));
    }
    return entries;
  }

  /** What the shade says, where it says anything. */
  private String meaning(Shown shown, String darker) {
    return field(shown).levels(LINES).isEmpty() ? "" : ": darker is " + darker;
  }

  private String description() {
    return String.format(
        Locale.ROOT,
        "%s from %s to %s and %s from %s to %s over %s.",
        strength().name(),
        strength().text().apply(least(strength())),
        strength().text().apply(most(strength())),
        width().name(),
        width().text().apply(least(width())),
        width().text().apply(most(width())),
        String.join(
            " and ", study.axes().stream().map(axis -> axis.input().label(units)).toList()));
  }

  private double least(Shown shown) {
    return known(shown).min().orElse(Double.NaN);
  }

  private double most(Shown shown) {
    return known(shown).max().orElse(Double.NaN);
  }

  private DoubleStream known(Shown shown) {
    return study.nodes().stream().mapToDouble(shown.value()).filter(Double::isFinite);
  }

  private void draw(Graphics2D g, Rectangle2D room) {
    double height = (room.getHeight() - GAP) / 2;
    Rectangle2D upper = new Rectangle2D.Double(room.getX(), room.getY(), room.getWidth(), height);
    Rectangle2D lower =
        new Rectangle2D.Double(room.getX(), room.getY() + height + GAP, room.getWidth(), height);
    if (study.axes().size() == 1) {
      ranked(line(g, upper, strength(), STRENGTH));
      line(g, lower, width(), WIDTH);
    } else {
      ranked(map(g, upper, strength(), Ink.DEEP_BLUE));
      map(g, lower, width(), Ink.EMBER);
    }
  }

  private Axis axis(int which) {
    GridStudy.Axis axis = study.axes().get(which);
    return new Axis(
        axis.input().label(units),
        axis.input().kind().in(units, axis.low()),
        axis.input().kind().in(units, axis.high()));
  }

  /** In the middle of every run of blank places over one input why they are. */
  private void nameBlanks(Plot plot, double height) {
    List<Node> run = new ArrayList<>();
    for (Node node : study.nodes()) {
      if (!run.isEmpty() && !word(run.get(0)).equals(word(node))) {
        nameBlank(plot, run, height);
        run.clear();
      }
      run.add(node);
    }
    nameBlank(plot, run, height);
  }

  private void nameBlank(Plot plot, List<Node> run, double height) {
    String word = word(run.get(0));
    if (!word.isEmpty()) {
      double middle = (across(run.get(0), 0) + across(run.get(run.size() - 1), 0)) / 2;
      plot.label(Text.plain(word, SMALL, Ink.TEXT), middle, height);
    }
  }

  /** The head of the reason: {@code Not sound}; empty where there is a value. */
  private static String word(Node node) {
    String blank = node.joint().blank();
    int head = blank.indexOf(':');
    return head > 0 && head < LONGEST_HEAD
        ? blank.substring(0, head)
        : blank.isEmpty() ? "" : NOT_GIVEN;
  }

  private Plot line(Graphics2D g, Rectangle2D frame, Shown shown, LineLook look) {
    double top = shown.in().applyAsDouble(most(shown));
    boolean strength = look.equals(STRENGTH);
    String name = strength ? shown.name() : "width";
    Axis up = new Axis(name + " (" + shown.unit() + ")", 0, top > 0 ? 1.12 * top : 1);
    Plot plot = new Plot(g, frame, axis(0), up);
    if (strength) {
      shadeAsGood(plot);
      study
          .aim()
          .asked()
          .ifPresent(
              asked ->
                  plot.level(
                      axis(0).from(), axis(0).to(), study.aim().in(units, asked.value()), ASKED));
    }
    List<Curve.Spot> spots =
        study.nodes().stream()
            .map(node -> new Curve.Spot(across(node, 0), shown.of(node)))
            .toList();
    plot.curve(new Curve(shown.name(), spots, look));
    nameBlanks(plot, up.to() / 3);
    return plot;
  }

  /** Between neighbours that are both as good as the best. */
  private void shadeAsGood(Plot plot) {
    List<Integer> good = ranking.asGood();
    for (int place : good) {
      if (good.contains(place + 1)) {
        plot.shade(
            across(study.nodes().get(place), 0), across(study.nodes().get(place + 1), 0), AS_GOOD);
      }
    }
  }

  private double across(Node node, int axis) {
    return study.axes().get(axis).input().kind().in(units, node.values().get(axis));
  }

  /** A ring on the best place unless all are as good, a cross on those that are objected to. */
  private void ranked(Plot plot) {
    boolean alone = study.axes().size() == 1;
    for (Node node : study.nodes()) {
      if (!node.joint().objections().isEmpty() && node.joint().blank().isEmpty()) {
        plot.label(Text.bold("×", SMALL, Ink.TEXT), across(node, 0), height(node, alone));
      }
    }
    OptionalInt best = ranking.best();
    if (best.isPresent() && !ranking.even()) {
      Node node = study.nodes().get(best.getAsInt());
      plot.ring(across(node, 0), height(node, alone), Ink.PLUM);
      String words = "best: " + strength().text().apply(node.value());
      plot.label(Text.bold(words, SMALL, Ink.PLUM), across(node, 0), height(node, alone));
    }
  }

  private double height(Node node, boolean alone) {
    return alone ? strength().of(node) : across(node, 1);
  }

  private Plot map(Graphics2D g, Rectangle2D frame, Shown shown, Color ink) {
    Axis across = axis(0);
    Axis up = axis(1);
    Plot plot = new Plot(g, frame, across, up);
    ContourField field = field(shown);
    List<Double> levels = field.levels(LINES);
    ContourMap map = new ContourMap(plot, across, up, field, levels);
    map.draw(g, ink, shown.unit());
    if (levels.isEmpty() && Double.isFinite(most(shown))) {
      map.note(g, even(shown));
    }
    return plot;
  }

  private ContourField field(Shown shown) {
    double[] values = study.nodes().stream().mapToDouble(shown::of).toArray();
    return new ContourField(values, GridStudy.steps(2)).finer(FINE);
  }

  /** What a map says whose values no line parts. */
  String even(Shown shown) {
    String low = shown.text().apply(least(shown));
    String high = shown.text().apply(most(shown));
    boolean everywhere =
        study.nodes().stream().allMatch(n -> Double.isFinite(shown.value().applyAsDouble(n)));
    String where = everywhere ? "the same everywhere" : "the same wherever there is a value";
    if (shown.unit().equals(OutputQuantity.DISTANCE.unit(units)) && most(shown) == 0) {
      return "no metal over 2 % below the base";
    }
    return low.equals(high) ? where + ": " + low : where + " within 1 %: " + low + " to " + high;
  }
}
