package afterweld.charts;

import afterweld.charts.plot.Curve;
import afterweld.charts.plot.Figures;
import afterweld.charts.plot.Legend;
import afterweld.charts.plot.Page;
import afterweld.charts.plot.Picture;
import afterweld.charts.plot.Plot;
import afterweld.quantity.OutputQuantity;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

/** How hot the section became: the peak at every place, and the whole cycle at a few of them. */
final class TemperaturePicture {
  private static final double PEAK_SHARE = 0.52;
  private static final double KEY_GAP = 12;

  private final SectionView view;
  private final Remarks remarks;
  private final CyclePanel cycles;

  TemperaturePicture(SectionView view) {
    this.view = view;
    this.remarks = new Remarks(view);
    this.cycles = new CyclePanel(view);
  }

  /** The picture. */
  Picture picture() {
    String title = "Temperature across the weld";
    Page page =
        new Page(
            1500, title, remarks.subject(), legend(), remarks.caution(), remarks.notes(List.of()));
    return new Picture("temperature", page, new Description(view).ofTemperature(title), this::draw);
  }

  private Legend legend() {
    List<Legend.Entry> entries = new ArrayList<>();
    String cut = new PeakPanel(view).cut() ? ", cut off inside the pool" : "";
    entries.add(Legend.Entry.line("peak temperature" + cut, PeakPanel.PEAK));
    if (view.profile().softening().left().threshold()
        || view.profile().softening().right().threshold()) {
      entries.add(Legend.Entry.area("the base softens without melting", PeakPanel.SOFTENS));
    }
    return new Legend(entries);
  }

  private void draw(Graphics2D g, Rectangle2D body) {
    double top = body.getY() + ZoneStrip.HEIGHT - Plot.PADDING;
    boolean hasCycles = !cycles.curves().isEmpty();
    double height = (hasCycles ? PEAK_SHARE : 1) * (body.getMaxY() - top);
    Rectangle2D frame = new Rectangle2D.Double(body.getX(), top, body.getWidth(), height);
    Plot plot = new PeakPanel(view).draw(g, frame);
    new ZoneStrip(view).name(g, plot);
    if (hasCycles) {
      drawCycles(g, body, top + height);
    }
  }

  private void drawCycles(Graphics2D g, Rectangle2D body, double top) {
    Legend key = new Legend(keyEntries());
    double left = body.getX() + 24;
    double width = body.getWidth() - 48;
    key.draw(g, left, top, width);
    double plotTop = top + key.height(width) - Plot.PADDING + KEY_GAP;
    cycles.draw(
        g, new Rectangle2D.Double(body.getX(), plotTop, body.getWidth(), body.getMaxY() - plotTop));
  }

  private List<Legend.Entry> keyEntries() {
    List<Legend.Entry> entries = new ArrayList<>();
    for (Curve curve : cycles.curves()) {
      entries.add(Legend.Entry.line(curve.name(), curve.look()));
    }
    return entries;
  }

  /** A temperature that is already in the unit of the system, with that unit. */
  static String figure(SectionView view, double shown) {
    return Figures.shown(OutputQuantity.PEAK_TEMPERATURE, view.units(), shown);
  }
}
