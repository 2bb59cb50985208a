package afterweld.thermal;

import afterweld.material.Source;
import afterweld.material.Status;

/**
 * Welding processes with their arc efficiency: share of volts times amps that enters the metal,
 * used when no bead width tells it.
 */
public enum WeldingProcess {
  GTAW_AC(
      "GTAW-AC", 0.60, 0.45, 0.75, "EN 1011-1 gives 0.6; older calorimetry lower", Status.MEMORY),
  GTAW_DCEN(
      "GTAW-DCEN",
      0.72,
      0.60,
      0.82,
      "Stenbacka, Choquet, Hurtig, IIW XII-2070-12 (2012), review of 1955-2011",
      Status.READ),
  GMAW("GMAW", 0.80, 0.70, 0.87, "EN 1011-1 gives 0.8; Pepe et al. (2011) 0.85", Status.MEMORY),
  GMAW_PULSED(
      "GMAW-pulsed", 0.80, 0.70, 0.87, "as GMAW; Pepe et al. (2011) slightly lower", Status.READ);

  private final String label;
  private final double efficiency;
  private final double efficiencyLow;
  private final double efficiencyHigh;
  private final Source source;

  WeldingProcess(
      String label, double efficiency, double low, double high, String text, Status status) {
    this.label = label;
    this.efficiency = efficiency;
    this.efficiencyLow = low;
    this.efficiencyHigh = high;
    this.source = new Source(text, status);
  }

  /** The name used in case files. */
  public String label() {
    return label;
  }

  /** Default arc efficiency. */
  public double efficiency() {
    return efficiency;
  }

  /** Low end of the efficiency's band. */
  public double efficiencyLow() {
    return efficiencyLow;
  }

  /** High end of the efficiency's band. */
  public double efficiencyHigh() {
    return efficiencyHigh;
  }

  /** Where the efficiency comes from. */
  public Source source() {
    return source;
  }

  /** Whether it is a tungsten-arc process. */
  public boolean tungstenArc() {
    return this == GTAW_AC || this == GTAW_DCEN;
  }
}
