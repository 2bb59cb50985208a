package afterweld.joint;

import afterweld.quantity.BothUnits;
import afterweld.quantity.Check;
import afterweld.section.SectionProfile;
import afterweld.section.Station;
import afterweld.section.Station.Place;
import afterweld.section.Zone;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * How far from the weld centre the base of one side is softened as welded, beside the half width
 * that EN 1999-1-1 counts.
 *
 * <p>Two ends, since both are in use: where the zones end that have lost over 2 % of their yield,
 * which lies in a long flat tail; and where the hardness is back at 90 % of the base, which is
 * about what a hardness traverse shows as the end of the dip (measured dips of ordinary welds end
 * 15 to 30 mm from the centre: common practice).
 *
 * @param side left or right, or each where both are alike
 * @param anyLoss where the base zone begins, m; the end of the leg if it is softened throughout
 * @param toTheEnd whether the section is computed no farther, so that no end of it is known
 * @param dip where the hardness is back at 90 % of the base, m; 0 where it is never less, empty
 *     where the section is computed no farther than the dip
 * @param code half width that the code counts, m; empty if none is known for this weld
 */
public record SoftenedReach(
    String side, double anyLoss, boolean toTheEnd, OptionalDouble dip, OptionalDouble code) {
  private static final double HARDNESS_BACK = 0.9;
  private static final int BEFORE = 0;
  private static final int AS_WELDED = 1;
  private static final double MM = 1e-3;
  private static final String CODE_ITEM = "HAZ half width";

  /** Refuses what it cannot be. */
  public SoftenedReach {
    Check.said("side", side);
    Check.notNegative("reach", anyLoss, "m");
    Check.notNegative("reach", dip, "m");
    Check.notNegative("reach", code, "m");
  }

  /** Of each side, of two like ones once; none of a side that nothing softens. */
  public static List<SoftenedReach> of(SectionProfile profile, List<DesignCodeValue> codes) {
    boolean same = profile.weldCase().symmetric();
    Stream<Place> sides = same ? Stream.of(Place.LEFT) : Stream.of(Place.LEFT, Place.RIGHT);
    return sides
        .map(place -> of(profile, place, same ? "" : " (" + place.label() + ")", codes))
        .filter(reach -> reach.anyLoss() > 0)
        .toList();
  }

  private static SoftenedReach of(
      SectionProfile profile, Place place, String name, List<DesignCodeValue> codes) {
    List<Station> outwards =
        profile.stations().stream()
            .filter(station -> station.place() == place)
            .sorted(Comparator.comparingDouble(station -> Math.abs(station.distance())))
            .toList();
    OptionalDouble code =
        codes.stream()
            .filter(value -> value.item().startsWith(CODE_ITEM))
            .filter(value -> value.item().endsWith(name) || !value.item().endsWith(")"))
            .mapToDouble(value -> value.value() * MM)
            .findFirst();
    return new SoftenedReach(
        name.isEmpty() ? "each" : place.label(),
        zonesEnd(profile, place),
        outwards.stream().noneMatch(station -> station.zone() == Zone.BASE),
        dipEnd(outwards),
        code);
  }

  private static double zonesEnd(SectionProfile profile, Place place) {
    return profile.zones().stream()
        .filter(span -> span.place() == place && span.zone() != Zone.BASE)
        .mapToDouble(span -> Math.max(Math.abs(span.from()), Math.abs(span.to())))
        .max()
        .orElse(0);
  }

  /** Beyond the last station that is below the share, straight in between. */
  private static OptionalDouble dipEnd(List<Station> outwards) {
    int last = outwards.size() - 1;
    while (last >= 0 && share(outwards.get(last)) >= HARDNESS_BACK) {
      last--;
    }
    if (last < 0) {
      return OptionalDouble.of(0);
    }
    if (last == outwards.size() - 1) {
      return OptionalDouble.empty();
    }
    double inside = Math.abs(outwards.get(last).distance());
    double low = share(outwards.get(last));
    double high = share(outwards.get(last + 1));
    double outside = Math.abs(outwards.get(last + 1).distance());
    return OptionalDouble.of(inside + (HARDNESS_BACK - low) / (high - low) * (outside - inside));
  }

  private static double share(Station station) {
    return station.estimates().get(AS_WELDED).middle().hardness()
        / station.estimates().get(BEFORE).middle().hardness();
  }

  /** The width that is known to be softened: of a loss without an end the dip alone. */
  private double computed() {
    return toTheEnd ? dip.orElse(anyLoss) : anyLoss;
  }

  /** The half width to design with: the larger of the computed and the code's, m. */
  public double design() {
    return Math.max(computed(), code.orElse(0));
  }

  /** What to make of it, for people. */
  public String sentence() {
    if (dip.isEmpty()) {
      return softenedThroughout();
    }
    double end = dip.getAsDouble();
    String computed = (end > 0 ? softened(end) : changed()) + ".";
    return code.isEmpty() ? computed : computed + besideTheCode(code.getAsDouble());
  }

  private String softenedThroughout() {
    return "Softened as welded, "
        + side
        + " side, from the weld centre: as far as the section is computed, "
        + BothUnits.length(anyLoss)
        + ", hardness does not come back to 90 % of the base, so a hardness traverse shows no end of"
        + " the dip there. Design with the whole of that width as softened, whatever half width a"
        + " code gives.";
  }

  private String softened(double end) {
    return "Softened as welded, "
        + side
        + " side, from the weld centre: hardness is back at 90 % of the base at "
        + BothUnits.length(end)
        + ", where a hardness traverse shows the end of the dip; "
        + (toTheEnd
            ? "beyond it the yield comes nearer to that before welding and stays under it as far as the"
                + " section is computed, "
            : "the zones end, where the yield is within 2 % of that before welding, at ")
        + BothUnits.length(anyLoss);
  }

  private String changed() {
    return "Molten, partially melted or changed in yield by more than 2 %, "
        + side
        + " side, from the weld centre, to "
        + BothUnits.length(anyLoss)
        + "; nowhere is the hardness under 90 % of the base, so a hardness traverse shows no dip";
  }

  private String besideTheCode(double width) {
    return computed() > width
        ? " That is wider than the half width of the code, "
            + BothUnits.length(width)
            + ": design with the larger, and measure it by a hardness traverse or a macro section."
        : " The half width of the code, "
            + BothUnits.length(width)
            + ", is the larger: design with it.";
  }
}
