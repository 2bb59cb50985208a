package afterweld.study;

import afterweld.joint.ProfileSlices;
import afterweld.section.Estimate;
import afterweld.section.SectionProfile;
import afterweld.section.Station;
import afterweld.section.Zone;
import afterweld.strength.Strength;
import java.util.List;
import java.util.function.BiFunction;
import java.util.function.ToDoubleFunction;

/** The last state of a section read at any distance, pulled, or with its strengths changed. */
final class SectionReading {
  private final SectionProfile profile;
  private final List<Station> stations;
  private final int last;

  SectionReading(SectionProfile profile) {
    this.profile = profile;
    this.stations = profile.stations();
    this.last = profile.states().size() - 1;
  }

  /**
   * The same section with its strengths changed in all states, and its bands closed.
   *
   * @param change new strength from a zone and its estimate
   */
  SectionReading changed(BiFunction<Zone, Estimate, Strength> change) {
    return new SectionReading(
        profile.withStations(stations.stream().map(station -> changed(station, change)).toList()));
  }

  private static Station changed(Station station, BiFunction<Zone, Estimate, Strength> change) {
    List<Estimate> estimates =
        station.estimates().stream()
            .map(estimate -> change.apply(station.zone(), estimate))
            .map(strength -> new Estimate(strength, strength, strength))
            .toList();
    return new Station(
        station.distance(), station.place(), station.zone(), station.peakTemperature(), estimates);
  }

  /** The same section with its bands closed. */
  SectionReading exact() {
    return changed((zone, estimate) -> estimate.middle());
  }

  /** The section itself. */
  SectionProfile profile() {
    return profile;
  }

  /** Width of what is over 2 % softer than the base of its side, m; NaN if not predicted. */
  double softenedWidth(double gauge) {
    return ProfileSlices.flush(profile, last, ProfileSlices.End.MIDDLE, gauge)
        .map(line -> line.softBand().width())
        .orElse(Double.NaN);
  }

  /** The last station of a side, with its band. */
  Estimate outermost(boolean left) {
    return stations.get(left ? 0 : stations.size() - 1).estimates().get(last);
  }

  /** Lowest local yield, Pa; NaN if one is not predicted. */
  double lowestYield() {
    return stations.stream()
        .mapToDouble(station -> station.estimates().get(last).middle().yield())
        .reduce(Math::min)
        .orElseThrow();
  }

  /**
   * A quantity at distances: straight between stations of one zone, with a step halfway where the
   * zone changes; the outermost value goes on beyond the ends.
   *
   * @param distances m, increasing
   */
  double[] at(double[] distances, ToDoubleFunction<Strength> quantity) {
    double[] values = new double[distances.length];
    int next = 1;
    for (int i = 0; i < distances.length; i++) {
      while (next < stations.size() - 1 && stations.get(next).distance() < distances[i]) {
        next++;
      }
      values[i] = between(stations.get(next - 1), stations.get(next), distances[i], quantity);
    }
    return values;
  }

  private double between(
      Station left, Station right, double distance, ToDoubleFunction<Strength> quantity) {
    double share = (distance - left.distance()) / (right.distance() - left.distance());
    double part = Math.max(0, Math.min(1, share));
    double low = quantity.applyAsDouble(left.estimates().get(last).middle());
    double high = quantity.applyAsDouble(right.estimates().get(last).middle());
    if (left.zone() == Zone.FUSION != (right.zone() == Zone.FUSION)) {
      return part < 0.5 ? low : high;
    }
    return low + part * (high - low);
  }
}
