package afterweld.section;

import afterweld.quantity.Check;
import java.util.List;

/**
 * One zone on one side.
 *
 * @param zone which
 * @param place on which side
 * @param from nearer the left end, m from the weld centre
 * @param to nearer the right end, m
 * @param lowestHardness lowest HV in it, one per state of the profile; NaN where not predicted
 */
public record ZoneSpan(
    Zone zone, Station.Place place, double from, double to, List<Double> lowestHardness) {
  /** Copies the list. */
  public ZoneSpan {
    Check.rising("zone", from, to);
    lowestHardness = List.copyOf(lowestHardness);
  }

  ZoneSpan asWelded() {
    return new ZoneSpan(zone, place, from, to, lowestHardness.subList(0, 2));
  }
}
