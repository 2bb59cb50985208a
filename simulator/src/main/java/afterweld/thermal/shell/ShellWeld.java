package afterweld.thermal.shell;

import afterweld.thermal.PassHeat;
import afterweld.thermal.PeakMap;
import afterweld.thermal.StationTimeline;
import afterweld.thermal.WeldCourse;
import java.util.List;

/**
 * A weld computed in the transient field: the heat of its passes, what every station of its section
 * went through, and the peaks of the whole part. SI units and kelvin.
 */
public final class ShellWeld {
  private final ShellProcedure procedure;
  private final List<PassHeat> heats;
  private final PeakMap peaks;

  ShellWeld(ShellProcedure procedure, List<PassHeat> heats) {
    this.procedure = procedure;
    this.heats = List.copyOf(heats);
    this.peaks = procedure.peaks();
  }

  /** Heat of each pass: its power is that at the start of the lap. */
  public List<PassHeat> heats() {
    return heats;
  }

  /**
   * Time line of the stations of one leg.
   *
   * @param leg which
   * @param depth of the stations below the arc side, m
   */
  public StationTimeline timeline(int leg, double depth) {
    return procedure.timeline(WeldCourse.Place.WORST, leg, depth);
  }

  /** The same at another place of the weld than its section. */
  public StationTimeline timeline(WeldCourse.Place place, int leg, double depth) {
    return procedure.timeline(place, leg, depth);
  }

  /** Width of the bead of the last pass on the arc side at a place, m; 0 if it does not melt. */
  public double beadWidth(WeldCourse.Place place) {
    return 2 * procedure.fusionHalfWidth(heats.size() - 1, place);
  }

  /** Peak temperatures of the whole part. */
  public PeakMap peaks() {
    return peaks;
  }
}
