package afterweld.charts;

import afterweld.charts.plot.Axis;
import afterweld.charts.plot.Curve;
import afterweld.charts.plot.Dash;
import afterweld.charts.plot.Ink;
import afterweld.charts.plot.LineLook;
import afterweld.charts.plot.Plot;
import afterweld.charts.plot.Text;
import afterweld.quantity.OutputQuantity;
import afterweld.section.SectionProfile.TellingCycle;
import afterweld.section.Softening;
import afterweld.weld.Side;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.List;

/**
 * The highest temperature across the section, with the temperatures that decide: where the metals
 * of the two sides melt and from where they soften.
 */
final class PeakPanel {
  /** How the peak is drawn. */
  static final LineLook PEAK = LineLook.plain(Ink.EMBER, 5, Dash.SOLID);

  /** The range in which the base softens. */
  static final Color SOFTENS = Ink.tint(Ink.DEEP_BLUE, 0.1);

  private static final LineLook MELTING = LineLook.plain(Ink.TEXT, 2, Dash.SOLID);
  private static final LineLook SOFTENING = LineLook.plain(Ink.DEEP_BLUE, 2.4f, Dash.SHORT);
  private static final double POOL_ROOM = 250;
  private static final float LABEL = 20;

  private final SectionView view;
  private final Axis across;

  PeakPanel(SectionView view) {
    this.view = view;
    this.across = view.distanceAxis();
  }

  /**
   * The vertical axis, from zero or from a colder ambient temperature. The peak inside the pool
   * rises far over the melting range and means little: the axis ends a little above it.
   */
  static Axis axis(SectionView view, String label) {
    double highest = view.peakTemperature(PEAK).highest().map(Curve.Spot::y).orElse(0.0);
    double liquidus = Math.max(left(view).alloy().liquidus(), right(view).alloy().liquidus());
    double pool = view.units().temperature(liquidus + POOL_ROOM);
    double top = Math.min(1.05 * highest, pool);
    double cold = view.units().temperature(view.profile().weldCase().ambient());
    return new Axis(
        label, Math.min(0, cold), Math.max(top, 1.06 * view.units().temperature(liquidus)));
  }

  /** Whether the axis ends below the highest temperature. */
  boolean cut() {
    double highest = view.peakTemperature(PEAK).highest().map(Curve.Spot::y).orElse(0.0);
    return highest > axis(view, "").to();
  }

  private static Side left(SectionView view) {
    return view.profile().weldCase().left();
  }

  private static Side right(SectionView view) {
    return view.profile().weldCase().right();
  }

  /** Draws it. */
  Plot draw(Graphics2D g, Rectangle2D frame) {
    String label = OutputQuantity.PEAK_TEMPERATURE.label(view.units());
    Plot plot = new Plot(g, frame, across, axis(view, label));
    new ZoneStrip(view).shade(plot);
    boolean same = sameMelting();
    drawSide(plot, left(view), softening().left(), across.from(), 0);
    drawSide(plot, right(view), softening().right(), 0, across.to());
    plot.curve(view.peakTemperature(PEAK));
    ringCycles(plot);
    labelSide(plot, right(view), 0.92);
    if (!same) {
      labelSide(plot, left(view), 0.08);
    }
    labelSoftening(plot);
    return plot;
  }

  private boolean sameMelting() {
    return left(view).alloy().solidus() == right(view).alloy().solidus()
        && left(view).alloy().liquidus() == right(view).alloy().liquidus();
  }

  private void drawSide(Plot plot, Side side, Softening.OfSide softening, double from, double to) {
    double solidus = view.units().temperature(side.alloy().solidus());
    if (softening.threshold()) {
      double threshold = view.units().temperature(softening.from());
      plot.shade(from, to, threshold, solidus, SOFTENS);
      plot.level(from, to, threshold, SOFTENING);
    }
    plot.level(from, to, solidus, MELTING);
    plot.level(from, to, view.units().temperature(side.alloy().liquidus()), MELTING);
  }

  private Softening softening() {
    return view.profile().softening();
  }

  private void labelSide(Plot plot, Side side, double share) {
    double at = across.from() + share * across.span();
    double liquidus = view.units().temperature(side.alloy().liquidus());
    double solidus = view.units().temperature(side.alloy().solidus());
    String alloy = side.alloy().name() + " ";
    label(plot, alloy + "liquidus " + figure(liquidus), at, liquidus, MELTING);
    label(plot, alloy + "solidus " + figure(solidus), at, solidus, MELTING);
  }

  private void labelSoftening(Plot plot) {
    Softening both = softening();
    labelSoftening(plot, both.right(), 0.9);
    if (!both.left().equals(both.right())) {
      labelSoftening(plot, both.left(), 0.1);
    }
  }

  private void labelSoftening(Plot plot, Softening.OfSide side, double share) {
    if (side.threshold()) {
      double threshold = view.units().temperature(side.from());
      double at = across.from() + share * across.span();
      label(plot, "softens from " + figure(threshold), at, threshold, SOFTENING);
    }
  }

  private static void label(Plot plot, String words, double x, double y, LineLook look) {
    plot.label(Text.bold(words, LABEL, look.color()), x, y);
  }

  private void ringCycles(Plot plot) {
    List<TellingCycle> cycles = view.profile().tellingCycles();
    for (int i = 0; i < cycles.size(); i++) {
      double x = view.distance(cycles.get(i).distance());
      double y = view.units().temperature(cycles.get(i).history().peakTemperature());
      plot.badge(CyclePanel.letter(i), x, y, CyclePanel.look(i).color());
    }
  }

  private String figure(double shown) {
    return TemperaturePicture.figure(view, shown);
  }
}
