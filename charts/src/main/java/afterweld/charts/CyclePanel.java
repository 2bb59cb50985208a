package afterweld.charts;

import afterweld.section.OutputQuantity;
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

  private final SectionView view;
  private final List<TellingCycle> cycles;

  CyclePanel(SectionView view) {
    this.view = view;
    this.cycles = view.profile().tellingCycles();
  }

  static LineLook look(int cycle) {
    return LOOKS.get(cycle % LOOKS.size());
  }

  /** The letter that marks a cycle here and its place in the plot of peaks. */
  static String letter(int cycle) {
    return String.valueOf((char) ('A' + cycle));
  }

  /** The cycles, time in s. */
  List<Curve> curves() {
    return IntStream.range(0, cycles.size()).mapToObj(this::curve).toList();
  }

  private Curve curve(int index) {
    TellingCycle cycle = cycles.get(index);
    TemperatureHistory history = cycle.history();
    List<Curve.Spot> spots = new ArrayList<>();
    for (int i = 0; i < history.size(); i++) {
      spots.add(new Curve.Spot(history.time(i), view.units().temperature(history.temperature(i))));
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

  /** The horizontal axis: until nothing more happens. */
  Axis timeAxis() {
    double ambient = view.profile().weldCase().ambient();
    double highest =
        cycles.stream().mapToDouble(c -> c.history().peakTemperature()).max().orElse(ambient + 1);
    double cooled = ambient + COOLED_TO * (highest - ambient);
    double end = cycles.stream().mapToDouble(c -> lastAbove(c.history(), cooled)).max().orElse(1);
    return new Axis("time from the first heating at that place (s)", 0, Math.max(1, end));
  }

  private static double lastAbove(TemperatureHistory history, double temperature) {
    for (int i = history.size() - 1; i > 0; i--) {
      if (history.temperature(i - 1) > temperature) {
        return history.time(i);
      }
    }
    return 0;
  }

  /** Draws it. */
  void draw(Graphics2D g, Rectangle2D frame) {
    String label = "temperature (" + view.units().temperatureUnit() + ")";
    Plot plot = new Plot(g, frame, timeAxis(), PeakPanel.axis(view, label));
    List<Curve> curves = curves();
    curves.forEach(plot::curve);
    for (int i = 0; i < curves.size(); i++) {
      Curve.Spot top = curves.get(i).highest().orElseThrow();
      plot.badge(letter(i), top.x(), top.y(), look(i).color());
    }
  }
}
