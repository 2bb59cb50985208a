package afterweld.cli.profile;

import afterweld.document.Quantities;
import afterweld.quantity.OutputQuantity;
import afterweld.quantity.UnitSystem;
import afterweld.section.Estimate;
import afterweld.section.SectionProfile;
import afterweld.section.Station;
import afterweld.section.Zone;
import afterweld.strength.Strength;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;

/**
 * The place where a state of a section is lowest in one quantity, and its name in words.
 *
 * @param profile the section
 * @param state index of the state
 * @param quantity hardness, yield or tensile
 * @param station the lowest
 */
record LowestPlace(SectionProfile profile, int state, OutputQuantity quantity, Station station) {
  private static final double SAME_DISTANCE = 0.1e-3;
  private static final double SAME_VALUE = 1e-3;

  /** Values that differ by less are equal but for rounding. */
  private static final double LEVEL = 1e-6;

  /** The lowest place; empty if the quantity is predicted nowhere. Of equals the farthest out. */
  static Optional<LowestPlace> of(SectionProfile profile, int state, OutputQuantity quantity) {
    List<Station> predicted =
        profile.stations().stream()
            .filter(station -> station.estimates().get(state).middle().predicted())
            .toList();
    double least =
        predicted.stream()
            .mapToDouble(station -> value(station, state, quantity))
            .min()
            .orElse(Double.NaN);
    return predicted.stream()
        .filter(station -> value(station, state, quantity) <= (1 + LEVEL) * least)
        .max(Comparator.comparingDouble(station -> Math.abs(station.distance())))
        .map(station -> new LowestPlace(profile, state, quantity, station));
  }

  private static double value(Station station, int state, OutputQuantity quantity) {
    return Quantities.of(station.estimates().get(state).middle(), quantity);
  }

  /** The prediction there. */
  Estimate estimate() {
    return station.estimates().get(state);
  }

  /**
   * Band of the lowest value of the whole line, wherever it lies: from the lowest low end to the
   * highest that the lowest of a run may be.
   */
  Estimate lowestBand() {
    Strength high =
        profile
            .ofEachRun()
            .map(run -> lowest(run.stations(), Estimate::high))
            .max(byQuantity())
            .orElseThrow();
    return new Estimate(estimate().middle(), lowest(profile.stations(), Estimate::low), high);
  }

  private Comparator<Strength> byQuantity() {
    return Comparator.comparingDouble(strength -> Quantities.of(strength, quantity));
  }

  private Strength lowest(List<Station> stations, Function<Estimate, Strength> end) {
    return stations.stream()
        .map(other -> end.apply(other.estimates().get(state)))
        .filter(Strength::predicted)
        .min(byQuantity())
        .orElseThrow();
  }

  /** Share of the value before welding at the same place. */
  double shareOfBefore() {
    return value(station, state, quantity) / value(station, 0, quantity);
  }

  /** What the share is of; weld metal between unlike bases lies on one side's place. */
  String before() {
    boolean between = station.zone() == Zone.FUSION && !mirroredBefore();
    return between
        ? "the " + (station.distance() < 0 ? "left" : "right") + " base before welding"
        : "before welding";
  }

  private boolean mirroredBefore() {
    return new LowestPlace(profile, 0, quantity, station).mirrored();
  }

  /** Such as {@code in the annealed zone on both sides, 9.8 mm from the weld centre}. */
  String words(UnitSystem units) {
    if (state == 0) {
      return "in the base metal" + side();
    }
    if (alike(other -> true)) {
      return "everywhere alike";
    }
    if (station.zone() == Zone.BASE && alike(this::baseOfSameSide)) {
      return "everywhere in the base metal" + side();
    }
    return zone() + side() + ", " + distance(units) + " from the weld centre";
  }

  /** Whether the quantity is the same at all predicted stations of a kind. */
  private boolean alike(Predicate<Station> which) {
    double lowest = value(station, state, quantity);
    return profile.stations().stream()
        .filter(which)
        .filter(other -> other.estimates().get(state).middle().predicted())
        .allMatch(other -> value(other, state, quantity) <= (1 + SAME_VALUE) * lowest);
  }

  private boolean baseOfSameSide(Station other) {
    return other.zone() == Zone.BASE && other.distance() * station.distance() > 0;
  }

  private String zone() {
    return switch (station.zone()) {
      case FUSION -> "in the weld metal";
      case BASE -> "in the base metal";
      default -> "in the " + station.zone().label() + " zone";
    };
  }

  private String side() {
    if (station.zone() == Zone.FUSION && state > 0) {
      return "";
    }
    if (mirrored()) {
      return " on both sides";
    }
    return station.distance() < 0 ? " on the left" : " on the right";
  }

  /** Whether the other side is as low; before welding anywhere, else at the same distance. */
  private boolean mirrored() {
    return profile.stations().stream()
        .filter(other -> other.distance() * station.distance() < 0)
        .filter(other -> state == 0 || sameDistance(other))
        .mapToDouble(other -> value(other, state, quantity) / value(station, state, quantity))
        .anyMatch(ratio -> Math.abs(ratio - 1) < SAME_VALUE);
  }

  private boolean sameDistance(Station other) {
    return Math.abs(other.distance() + station.distance()) < SAME_DISTANCE;
  }

  private String distance(UnitSystem units) {
    return OutputQuantity.DISTANCE.text(units, Math.abs(station.distance()))
        + " "
        + units.lengthUnit();
  }
}
