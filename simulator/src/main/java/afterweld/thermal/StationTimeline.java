package afterweld.thermal;

/** What the welding does to the stations of one leg, whatever field it comes from. */
public interface StationTimeline {
  /**
   * The history of one station.
   *
   * @param distance from the weld centre, m; negative if the leg lies on the left
   */
  StationHistory at(double distance);

  /**
   * How far from the weld centre the metal comes to a peak temperature, m without sign; 0 if it
   * does nowhere, at most to the end of the leg.
   *
   * @param peak K, above the warmest start temperature
   */
  double reach(double peak);

  /** How far from the weld centre the metal is molten, m without sign; 0 if nowhere. */
  double fusionReach();
}
