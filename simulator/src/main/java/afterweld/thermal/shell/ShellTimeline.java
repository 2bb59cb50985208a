package afterweld.thermal.shell;

import afterweld.thermal.ChordCut;
import afterweld.thermal.Leg;
import afterweld.thermal.Pass;
import afterweld.thermal.StationHistory;
import afterweld.thermal.StationTimeline;
import afterweld.thermal.TemperatureHistory;
import afterweld.thermal.WeldTimeline;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The time line of the stations of one leg through all passes, in the section of a transient field.
 * SI units and kelvin.
 *
 * <p>As in the steady field a preheated part warms from 25 °C and waits before the first pass, and
 * goes to 25 °C in 10 minutes after it has cooled. Between, the stations have the temperatures that
 * were computed, thinned out to straight pieces within 1 K (0.5 K near the peak).
 */
final class ShellTimeline implements StationTimeline {

  private final ShellSection section;
  private final Leg leg;
  private final Pass first;
  private final Map<Double, Double> peaks = new HashMap<>();

  /**
   * A time line.
   *
   * @param first pass
   */
  ShellTimeline(ShellSection section, Leg leg, Pass first) {
    this.section = section;
    this.leg = leg;
    this.first = first;
    section.ladder().forEach(y -> peaks.put(y, section.peak(y)));
  }

  @Override
  public StationHistory at(double distance) {
    double y = Math.abs(distance);
    List<Double> passPeaks = new ArrayList<>();
    List<StationHistory.PassTimes> passTimes = new ArrayList<>();
    List<Double> times = new ArrayList<>();
    List<Double> temperatures = new ArrayList<>();
    for (int pass = 0; pass < section.record().arcs().size(); pass++) {
      double[] values = section.temperatures(pass, y);
      passPeaks.add(highest(values));
      passTimes.add(passTimes(pass));
      add(pass, values, times, temperatures);
    }
    double fusion = leg.material().fusionTemperature();
    boolean melted = passPeaks.stream().anyMatch(peak -> peak >= fusion);
    TemperatureHistory welded = history(times, temperatures);
    TemperatureHistory whole = WeldTimeline.toRoom(WeldTimeline.preheated(first, welded));
    return new StationHistory(distance, whole, passTimes, passPeaks, melted);
  }

  /** The arc goes by when the weld centre is hottest. */
  private StationHistory.PassTimes passTimes(int pass) {
    double origin =
        section.record().time(section.record().arcs().get(0).firstFrame())
            - WeldTimeline.preheating(first);
    int from = section.record().arcs().get(pass).firstFrame();
    double[] centre = section.temperatures(pass, 0);
    int hottest = 0;
    for (int i = 1; i < centre.length; i++) {
      hottest = centre[i] > centre[hottest] ? i : hottest;
    }
    return new StationHistory.PassTimes(
        section.record().time(from) - origin, section.record().time(from + hottest) - origin);
  }

  private static double highest(double[] values) {
    double highest = 0;
    for (double value : values) {
      highest = Math.max(highest, value);
    }
    return highest;
  }

  private void add(int pass, double[] values, List<Double> times, List<Double> temperatures) {
    int from = section.record().arcs().get(pass).firstFrame();
    double[] moments = new double[values.length];
    for (int i = 0; i < values.length; i++) {
      moments[i] = section.record().time(from + i);
    }
    for (int i : ChordCut.kept(moments, values, leg.material().liquidus())) {
      if (times.isEmpty() || moments[i] > times.get(times.size() - 1)) {
        times.add(moments[i]);
        temperatures.add(values[i]);
      }
    }
  }

  private static TemperatureHistory history(List<Double> times, List<Double> temperatures) {
    double start = times.get(0);
    return TemperatureHistory.of(
        times.stream().mapToDouble(time -> time - start).toArray(),
        temperatures.stream().mapToDouble(Double::doubleValue).toArray());
  }

  @Override
  public double reach(double peak) {
    return section.outermost(this::peak, peak);
  }

  private double peak(double y) {
    Double known = peaks.get(y);
    return known == null ? section.peak(y) : known;
  }

  @Override
  public double fusionReach() {
    return reach(leg.material().fusionTemperature());
  }
}
