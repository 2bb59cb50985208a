package afterweld.section;

import afterweld.strength.Strength;
import afterweld.thermal.StationHistory;
import java.util.List;

/**
 * One station computed once.
 *
 * @param distance from the weld centre, m; negative on the left
 * @param heat its time line through the weld
 * @param zone what the weld made of it
 * @param strengths before welding, as welded, and after each furnace step
 * @param heldBack whether {@link AgedOnly} lowered any of them
 */
record StationRun(
    double distance, StationHistory heat, Zone zone, List<Strength> strengths, boolean heldBack) {
  /** The same on the other side of a symmetric weld. */
  StationRun mirrored() {
    return new StationRun(0.0 - distance, heat, zone, strengths, heldBack);
  }

  /** The same under another name. */
  StationRun inZone(Zone other) {
    return new StationRun(distance, heat, other, strengths, heldBack);
  }

  boolean melted() {
    return zone == Zone.FUSION;
  }
}
