package afterweld.charts;

import afterweld.charts.plot.Axis;
import afterweld.charts.plot.Dash;
import afterweld.charts.plot.Ink;
import afterweld.charts.plot.LineLook;
import afterweld.charts.plot.Plot;
import afterweld.charts.plot.RowSpread;
import afterweld.charts.plot.Text;
import afterweld.section.Zone;
import afterweld.section.ZoneSpan;
import java.awt.Graphics2D;
import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.List;

/**
 * The zones of a section: shaded behind the curves, darker towards the weld, and named above them.
 * A name that has no room over its zone stands in a second row with a leader.
 */
final class ZoneStrip {
  /** Room that the names take above a plot, pixels. */
  static final double HEIGHT = 72;

  private static final LineLook BORDER = LineLook.plain(Ink.tint(Ink.AXIS, 0.45), 1.2f, Dash.SOLID);
  private static final float LARGEST = 20;
  private static final float SMALLEST = 13;
  private static final double GAP = 16;

  private final Axis across;
  private final List<Named> zones;

  private record Named(Zone zone, double from, double to) {}

  ZoneStrip(SectionView view) {
    this.across = view.distanceAxis();
    this.zones = merged(view);
  }

  private static List<Named> merged(SectionView view) {
    List<Named> zones = new ArrayList<>();
    for (ZoneSpan span : view.profile().zones()) {
      double from = view.distance(span.from());
      double to = view.distance(span.to());
      int last = zones.size() - 1;
      if (last >= 0 && zones.get(last).zone == span.zone()) {
        from = zones.remove(last).from;
      }
      zones.add(new Named(span.zone(), from, to));
    }
    return zones;
  }

  /** Shades the zones of a plot. */
  void shade(Plot plot) {
    for (Named zone : shown()) {
      plot.shade(zone.from, zone.to, Ink.zone(darkness(zone.zone)));
      if (zone.from > across.from()) {
        plot.upright(zone.from, BORDER);
      }
    }
  }

  private static double darkness(Zone zone) {
    return switch (zone) {
      case FUSION -> 0.20;
      case PARTIALLY_MELTED -> 0.15;
      case SOLUTIONIZED, RECRYSTALLIZED -> 0.11;
      case ANNEALED -> 0.075;
      case OVERAGED, RECOVERED -> 0.04;
      case BASE -> 0;
    };
  }

  private List<Named> shown() {
    return zones.stream()
        .filter(zone -> zone.to > across.from() && zone.from < across.to())
        .map(zone -> new Named(zone.zone, across.clamp(zone.from), across.clamp(zone.to)))
        .toList();
  }

  /** Names the zones above a plot. */
  void name(Graphics2D g, Plot plot) {
    List<Named> crowded = new ArrayList<>();
    double baseline = plot.area().getMinY() - 10;
    for (Named zone : shown()) {
      Text name = Text.plain(zone.zone.label(), LARGEST, Ink.SOFT_TEXT);
      double room = plot.x(zone.to) - plot.x(zone.from);
      if (name.width() + 8 < room) {
        name.draw(g, middle(plot, zone) - name.width() / 2, baseline);
      } else {
        crowded.add(zone);
      }
    }
    nameApart(g, plot, crowded);
  }

  private void nameApart(Graphics2D g, Plot plot, List<Named> crowded) {
    RowSpread row = new RowSpread(GAP, plot.area().getMinX() - 40, plot.area().getMaxX() + 20);
    float size = LARGEST;
    while (size > SMALLEST && !row.holds(labels(plot, crowded, size))) {
      size--;
    }
    List<Double> centres = row.centres(labels(plot, crowded, size));
    for (int i = 0; i < crowded.size(); i++) {
      Text name = Text.plain(crowded.get(i).zone.label(), size, Ink.SOFT_TEXT);
      leader(g, plot, middle(plot, crowded.get(i)), centres.get(i));
      name.draw(g, centres.get(i) - name.width() / 2, plot.area().getMinY() - 48);
    }
  }

  private static List<RowSpread.Label> labels(Plot plot, List<Named> zones, float size) {
    return zones.stream()
        .map(
            zone ->
                new RowSpread.Label(
                    middle(plot, zone), Text.plain(zone.zone.label(), size, Ink.SOFT_TEXT).width()))
        .toList();
  }

  private static void leader(Graphics2D g, Plot plot, double zoneMiddle, double nameMiddle) {
    double top = plot.area().getMinY();
    Path2D line = new Path2D.Double();
    line.moveTo(zoneMiddle, top);
    line.lineTo(zoneMiddle, top - 24);
    line.lineTo(nameMiddle, top - 40);
    g.setColor(BORDER.color());
    g.setStroke(BORDER.stroke());
    g.draw(line);
  }

  private static double middle(Plot plot, Named zone) {
    return plot.x((zone.from + zone.to) / 2);
  }
}
