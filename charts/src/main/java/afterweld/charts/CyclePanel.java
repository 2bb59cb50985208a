package afterweld.charts;

import afterweld.charts.plot.Axis;
import afterweld.charts.plot.Curve;
import afterweld.charts.plot.Dash;
import afterweld.charts.plot.Figures;
import afterweld.charts.plot.Ink;
import afterweld.charts.plot.LineLook;
import afterweld.charts.plot.Plot;
import afterweld.quantity.OutputQuantity;
import afterweld.section.SectionProfile.TellingCycle;
import afterweld.thermal.TemperatureHistory;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** The weld's thermal cycle at the telling places, temperature against time. */
final class CyclePanel {
  private static final List<LineLook> LOOKS =
      List.of(
          LineLook.plain(Ink.EMBER, 5, Dash.SOLID),
          LineLook.plain(Ink.DEEP_BLUE, 4, Dash.LONG),
          LineLook.plain(Ink.LAGOON, 3, Dash.SOLID),
          LineLook.plain(Ink.PLUM, 4, Dash.DOTS),
          LineLook.plain(Ink.OCHRE, 4, Dash.LONG_DOT),
          LineLook.plain(Ink.PINE, 3, Dash.SHORT));

  /**
   * The drawing ends when all places have come down to this share of the highest rise over ambient.
   */
  private static final double COOLED_TO = 0.2;

  /** Share of the drawn time before the heating. */
  private static final double LEAD = 0.04;

  private final SectionView view;
  private final List<TellingCycle> cycles;
  private final TemperatureHistory hottest;
  private final double highest;

  /** Begin of the heating drawn, s. */
  private final double heating;

  /** When all places have cooled, s. */
  private final double cooled;

  CyclePanel(SectionView view) {
    this.view = view;
    this.cycles = view.profile().tellingCycles();
    this.hottest = hottest(cycles);
    this.highest = hottest.peakTemperature();
    int top = topIndex();
    this.heating = heating(top);
    this.cooled = cooled(top);
  }

  static LineLook look(int cycle) {
    return LOOKS.get(cycle % LOOKS.size());
  }

  /** The letter that marks a cycle here and its place in the plot of peaks. */
  static String letter(int cycle) {
    return String.valueOf((char) ('A' + cycle));
  }

  /** The cycles, time in s on the axis drawn. */
  List<Curve> curves() {
    return IntStream.range(0, cycles.size()).mapToObj(this::curve).toList();
  }

  private Curve curve(int index) {
    TellingCycle cycle = cycles.get(index);
    TemperatureHistory history = cycle.history();
    List<Curve.Spot> spots = new ArrayList<>();
    for (int i = 0; i < history.size(); i++) {
      spots.add(
          new Curve.Spot(
              history.time(i) - start(), view.units().temperature(history.temperature(i))));
    }
    return new Curve(name(index, cycle), spots, look(index));
  }

  private String name(int index, TellingCycle cycle) {
    String place = Figures.of(OutputQuantity.DISTANCE, view.units(), cycle.distance());
    String peak =
        Figures.of(
            OutputQuantity.PEAK_TEMPERATURE, view.units(), cycle.history().peakTemperature());
    return letter(index) + " at " + place + ", " + cycle.zone().label() + ", peak " + peak;
  }

  /**
   * The horizontal axis: the pass that made the hottest place hottest, from before the heating
   * until all places have cooled. With the waits between passes each cycle would be a needle.
   */
  Axis timeAxis() {
    return new Axis(timeLabel(), 0, heating - start() + length());
  }

  /** Where the axis has its zero: shortly before the heating shown, s. */
  private double start() {
    return Math.max(0, heating - LEAD * length());
  }

  private double length() {
    return Math.max(1, cooled - heating);
  }

  private double heating(int top) {
    int first = top;
    while (first > 0 && anyHot(hottest.time(first))) {
      first--;
    }
    return hottest.time(first);
  }

  private double cooled(int top) {
    int last = top;
    while (last < hottest.size() - 1 && (last == top || anyHot(hottest.time(last)))) {
      last++;
    }
    return hottest.time(last);
  }

  private String timeLabel() {
    boolean several = view.profile().weldCase().passes().size() > 1;
    return "time from shortly before the heating (s)" + (several ? ", hottest pass" : "");
  }

  private static TemperatureHistory hottest(List<TellingCycle> cycles) {
    return cycles.stream()
        .map(TellingCycle::history)
        .reduce((a, b) -> b.peakTemperature() > a.peakTemperature() ? b : a)
        .orElseThrow();
  }

  private int topIndex() {
    int top = 0;
    while (hottest.temperature(top) < highest) {
      top++;
    }
    return top;
  }

  private boolean anyHot(double time) {
    double ambient = view.profile().weldCase().ambient();
    double limit = ambient + COOLED_TO * (highest - ambient);
    return cycles.stream().anyMatch(cycle -> cycle.history().at(time) > limit);
  }

  /** Draws it. */
  void draw(Graphics2D g, Rectangle2D frame) {
    String label = "temperature (" + view.units().temperatureUnit() + ")";
    Axis across = timeAxis();
    Plot plot = new Plot(g, frame, across, PeakPanel.axis(view, label));
    List<Curve> curves = curves();
    curves.forEach(plot::curve);
    for (int i = 0; i < curves.size(); i++) {
      markTop(plot, i, curves.get(i).between(across.from(), across.to()));
    }
  }

  private static void markTop(Plot plot, int cycle, Curve shown) {
    shown
        .highest()
        .ifPresent(top -> plot.badge(letter(cycle), top.x(), top.y(), look(cycle).color()));
  }
}
