package afterweld.charts;

import afterweld.charts.plot.Axis;
import afterweld.charts.plot.Curve;
import afterweld.charts.plot.Dash;
import afterweld.charts.plot.Ink;
import afterweld.charts.plot.Legend;
import afterweld.charts.plot.LineLook;
import afterweld.charts.plot.MarkerShape;
import afterweld.charts.plot.Page;
import afterweld.charts.plot.Picture;
import afterweld.charts.plot.Plot;
import afterweld.quantity.OutputQuantity;
import afterweld.quantity.UnitSystem;
import afterweld.study.AgeingStudy;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

/** Hardness against ageing time at several temperatures, a panel for each metal. */
public final class AgeingChart {
  private static final int PANEL = 560;
  private static final int AROUND = 420;
  private static final double GAP = 26;
  private static final double HOUR = 3600;
  private static final List<LineLook> LOOKS =
      List.of(
          LineLook.plain(Ink.LAGOON, 4, Dash.SHORT),
          LineLook.plain(Ink.DEEP_BLUE, 4, Dash.LONG),
          new LineLook(Ink.EMBER, 5, Dash.SOLID, MarkerShape.CIRCLE),
          LineLook.plain(Ink.PLUM, 4, Dash.LONG_DOT),
          LineLook.plain(Ink.OCHRE, 4.5f, Dash.DOTS));
  private static final LineLook SCHEDULE = LineLook.plain(Ink.TEXT, 2.4f, Dash.SHORT);

  private final AgeingStudy study;
  private final UnitSystem units;
  private final List<String> metals;

  private AgeingChart(AgeingStudy study, UnitSystem units) {
    this.study = study;
    this.units = units;
    this.metals = study.curves().stream().map(AgeingStudy.Curve::metal).distinct().toList();
  }

  /**
   * The picture of a study that has curves.
   *
   * @param subject the case it belongs to
   * @param cautions what must be read with it
   */
  public static Picture of(
      AgeingStudy study, String subject, List<String> cautions, UnitSystem units) {
    AgeingChart chart = new AgeingChart(study, units);
    Page page =
        new Page(
            AROUND + PANEL * chart.metals.size(),
            "Hardness against ageing time",
            subject,
            new Legend(chart.legend()),
            cautions,
            List.of(
                "Time counts from when the metal is at temperature. A curve ends at five sixths of"
                    + " its highest yield, as far as tests go."));
    return new Picture("ageing", page, chart.description(), chart::draw);
  }

  private List<Legend.Entry> legend() {
    List<Legend.Entry> entries = new ArrayList<>();
    List<AgeingStudy.Curve> first = of(metals.get(0));
    for (int i = 0; i < first.size(); i++) {
      entries.add(Legend.Entry.line(temperature(first.get(i)), LOOKS.get(i)));
    }
    entries.add(Legend.Entry.line("time of the schedule", SCHEDULE));
    return entries;
  }

  private String temperature(AgeingStudy.Curve curve) {
    return OutputQuantity.PEAK_TEMPERATURE.text(units, curve.temperature())
        + " "
        + units.temperatureUnit();
  }

  private List<AgeingStudy.Curve> of(String metal) {
    return study.curves().stream().filter(curve -> curve.metal().equals(metal)).toList();
  }

  private String description() {
    return "Hardness of "
        + String.join(", ", metals)
        + " against ageing time from 0.1 to 300 hours at five temperatures around the schedule's.";
  }

  private void draw(Graphics2D g, Rectangle2D room) {
    double height = (room.getHeight() - GAP * (metals.size() - 1)) / metals.size();
    for (int i = 0; i < metals.size(); i++) {
      double top = room.getY() + i * (height + GAP);
      panel(
          g,
          new Rectangle2D.Double(room.getX(), top, room.getWidth(), height),
          metals.get(i),
          i == metals.size() - 1);
    }
  }

  private void panel(Graphics2D g, Rectangle2D frame, String metal, boolean last) {
    List<AgeingStudy.Curve> curves = of(metal);
    Axis across = Axis.logarithmic(last ? "time at temperature (h)" : "", -1, Math.log10(300));
    Axis up = new Axis(name(metal) + ", HV", 0, 1.15 * highest(curves));
    Plot plot = new Plot(g, frame, across, up);
    study.schedule().ifPresent(age -> plot.upright(Math.log10(age.time() / HOUR), SCHEDULE));
    for (int i = 0; i < curves.size(); i++) {
      plot.curve(line(curves.get(i), LOOKS.get(i)));
    }
  }

  private String name(String metal) {
    if (metal.equals("weld")) {
      return "weld metal";
    }
    return metals.contains("right") ? metal + " base" : "base";
  }

  private static double highest(List<AgeingStudy.Curve> curves) {
    return curves.stream()
        .flatMap(curve -> curve.strengths().stream())
        .mapToDouble(strength -> Double.isNaN(strength.hardness()) ? 1 : strength.hardness())
        .max()
        .orElse(1);
  }

  private static Curve line(AgeingStudy.Curve curve, LineLook look) {
    List<Curve.Spot> spots = new ArrayList<>();
    for (int i = 0; i < curve.hours().size(); i++) {
      spots.add(
          new Curve.Spot(Math.log10(curve.hours().get(i)), curve.strengths().get(i).hardness()));
    }
    return new Curve(curve.metal(), spots, look);
  }
}
