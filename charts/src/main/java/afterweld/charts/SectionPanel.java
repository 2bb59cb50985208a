package afterweld.charts;

import afterweld.charts.plot.Axis;
import afterweld.charts.plot.Curve;
import afterweld.charts.plot.Dash;
import afterweld.charts.plot.Figures;
import afterweld.charts.plot.Ink;
import afterweld.charts.plot.LineLook;
import afterweld.charts.plot.Plot;
import afterweld.charts.plot.Text;
import afterweld.quantity.OutputQuantity;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** One strength quantity across the section, in all states, against what is asked. */
final class SectionPanel {
  /** How a requirement is drawn. */
  static final LineLook LIMIT = LineLook.plain(Ink.LIMIT, 3, Dash.WIDE);

  private static final float LABEL = 21;
  private static final float SMALL = 18;

  private final SectionView view;
  private final OutputQuantity quantity;
  private final Axis across;

  SectionPanel(SectionView view, OutputQuantity quantity) {
    this.view = view;
    this.quantity = quantity;
    this.across = view.distanceAxis();
  }

  /** The curves in the order of the states. */
  List<Curve> curves() {
    return Stream.iterate(0, state -> state < view.states(), state -> state + 1)
        .map(this::curve)
        .toList();
  }

  private Curve curve(int state) {
    return view.curve(quantity, state);
  }

  private Curve shown(int state) {
    return curve(state).between(across.from(), across.to());
  }

  /** The vertical axis: from nothing, so that a loss looks as large as it is. */
  Axis axis() {
    double top = view.required(quantity).orElse(0);
    for (int state : view.mainStates()) {
      top = Math.max(top, view.band(quantity, state).top());
    }
    for (Curve curve : curves()) {
      top = Math.max(top, curve.highest().map(Curve.Spot::y).orElse(0.0));
    }
    return new Axis(quantity.label(view.units()), 0, top > 0 ? 1.08 * top : 1);
  }

  /**
   * Draws it.
   *
   * @param frame room with the axes, pixels
   * @param labelled whether it names its horizontal axis
   * @return the plot, for what stands above it
   */
  Plot draw(Graphics2D g, Rectangle2D frame, boolean labelled) {
    Plot plot = new Plot(g, frame, labelled ? across : across.unlabelled(), axis());
    new ZoneStrip(view).shade(plot);
    view.mainStates().forEach(state -> plot.band(view.band(quantity, state)));
    plot.curve(curve(0));
    view.stageStates().forEach(state -> plot.curve(curve(state)));
    view.mainStates().stream().skip(1).forEach(state -> plot.curve(curve(state)));
    OptionalDouble required = view.required(quantity);
    required.ifPresent(value -> plot.level(across.from(), across.to(), value, LIMIT));
    ringLowest(plot);
    required.ifPresent(value -> labelRequired(plot, value));
    labelStates(plot);
    labelGaps(plot);
    return plot;
  }

  private void ringLowest(Plot plot) {
    for (int state : view.mainStates().subList(1, view.mainStates().size())) {
      lowest(state).ifPresent(spot -> plot.ring(spot.x(), spot.y(), look(state).color()));
    }
  }

  /** The lowest place of a state; empty where there is no such place. */
  private Optional<Curve.Spot> lowest(int state) {
    Curve curve = shown(state);
    return curve.even() ? Optional.empty() : curve.lowest();
  }

  private LineLook look(int state) {
    return StateLooks.of(state, view.states());
  }

  private void labelRequired(Plot plot, double value) {
    Text text = Text.bold("required " + figure(value), LABEL, LIMIT.color());
    plot.label(text, across.from() + 0.93 * across.span(), value);
  }

  private void labelStates(Plot plot) {
    for (int state : view.mainStates()) {
      if (state > 0 && lowest(state).isPresent()) {
        labelLowest(plot, state, lowest(state).get());
      } else {
        labelSomewhere(plot, state, state == 0 ? 0.10 : 0.80, LABEL);
      }
    }
    double share = 0.2;
    for (int state : view.stageStates()) {
      labelSomewhere(plot, state, share, SMALL);
      share = share > 0.7 ? 0.15 : share + 0.17;
    }
  }

  private void labelLowest(Plot plot, int state, Curve.Spot lowest) {
    String words =
        name(state)
            + ": "
            + shown(state).lowestInWords()
            + " "
            + figure(lowest.y())
            + " at "
            + Figures.shown(OutputQuantity.DISTANCE, view.units(), lowest.x());
    plot.label(ink(words, state, LABEL), lowest.x(), lowest.y());
  }

  private void labelSomewhere(Plot plot, int state, double share, float size) {
    Curve curve = shown(state);
    List<Curve.Spot> known = curve.spots().stream().filter(Curve.Spot::known).toList();
    if (known.isEmpty()) {
      return;
    }
    Curve.Spot spot = known.get((int) (share * (known.size() - 1)));
    String value = curve.even() ? ": " + figure(spot.y()) : "";
    plot.label(ink(name(state) + value, state, size), spot.x(), spot.y());
  }

  /** One label for all states that lack a value, over the middle of the first gap. */
  private void labelGaps(Plot plot) {
    List<Integer> gapped =
        view.mainStates().stream().filter(state -> !gap(state).isEmpty()).toList();
    if (!gapped.isEmpty()) {
      List<Curve.Spot> gap = gap(gapped.get(0));
      String names = gapped.stream().map(this::name).collect(Collectors.joining(", "));
      Text text = Text.bold("not predicted here: " + names, SMALL, Ink.SOFT_TEXT);
      plot.label(text, gap.get(gap.size() / 2).x(), 0.2 * axis().to());
    }
  }

  private List<Curve.Spot> gap(int state) {
    return shown(state).spots().stream().filter(spot -> !spot.known()).toList();
  }

  private Text ink(String words, int state, float size) {
    return Text.bold(words, size, Ink.forWords(look(state).color()));
  }

  private String name(int state) {
    return view.profile().states().get(state);
  }

  private String figure(double value) {
    return Figures.shown(quantity, view.units(), value);
  }
}
