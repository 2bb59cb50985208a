package afterweld.charts;

import afterweld.charts.plot.Axis;
import afterweld.quantity.OutputQuantity;
import afterweld.quantity.UnitSystem;
import afterweld.section.SectionProfile;
import afterweld.section.Zone;

/**
 * The part of a section worth drawing: all zones that the weld changed and a margin of base, m. A
 * wide plate would otherwise squeeze them into a few pixels.
 *
 * @param from left end, m from the weld centre
 * @param to right end
 */
record SectionWindow(double from, double to) {
  private static final double MARGIN_SHARE = 0.15;
  private static final double LEAST_MARGIN = 4e-3;

  /** The window of a profile. */
  static SectionWindow of(SectionProfile profile) {
    double first = profile.stations().get(0).distance();
    double last = profile.stations().get(profile.stations().size() - 1).distance();
    double changedFrom = last;
    double changedTo = first;
    for (var span : profile.zones()) {
      if (span.zone() != Zone.BASE) {
        changedFrom = Math.min(changedFrom, span.from());
        changedTo = Math.max(changedTo, span.to());
      }
    }
    if (changedFrom >= changedTo) {
      return new SectionWindow(first, last);
    }
    double margin = Math.max(LEAST_MARGIN, MARGIN_SHARE * (changedTo - changedFrom));
    return new SectionWindow(
        Math.max(first, changedFrom - margin), Math.min(last, changedTo + margin));
  }

  /** The axis that shows it. */
  Axis axis(UnitSystem units) {
    return new Axis(
        OutputQuantity.DISTANCE.label(units),
        OutputQuantity.DISTANCE.in(units, from),
        OutputQuantity.DISTANCE.in(units, to));
  }
}
