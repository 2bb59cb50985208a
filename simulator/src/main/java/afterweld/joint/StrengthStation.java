package afterweld.joint;

import afterweld.quantity.Check;

/**
 * What a line of stations says about one place.
 *
 * @param distance m from the weld centre, negative on the left
 * @param metal strengths there
 * @param thickness m
 * @param zone what the zone is called in results
 */
public record StrengthStation(double distance, SliceMetal metal, double thickness, String zone) {
  /** Refuses a distance that isn't finite and a thickness that isn't positive. */
  public StrengthStation {
    if (!Double.isFinite(distance)) {
      throw new IllegalArgumentException("distance " + distance + " m: must be finite");
    }
    Check.positive("thickness", thickness, "m");
  }
}
