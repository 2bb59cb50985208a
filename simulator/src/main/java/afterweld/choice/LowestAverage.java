package afterweld.choice;

import static afterweld.section.Station.Place.LEFT;
import static afterweld.section.Station.Place.RIGHT;

import afterweld.section.Estimate;
import afterweld.section.SectionProfile;
import afterweld.section.Station;
import afterweld.strength.Strength;
import java.util.List;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/**
 * The weakest place of a section, with every value averaged over a stretch of one thickness.
 *
 * <p>A neck or a shear band, and a row of hardness indents, span about one thickness; a dip
 * narrower than that does not govern (assumption). Between stations the profile is straight; at the
 * ends of the section the stretch is cut off. A stretch inside the weld takes the thickness of its
 * side.
 */
public final class LowestAverage {
  private final SectionProfile profile;
  private final List<Station> stations;
  private final int state;

  /**
   * The averages of one state.
   *
   * @param state index of the state in the profile
   */
  public LowestAverage(SectionProfile profile, int state) {
    this.profile = profile;
    this.stations = profile.stations();
    this.state = state;
  }

  /**
   * Lowest average over all stations, in the unit of the quantity; NaN if any station is not
   * predicted.
   *
   * @param end which end of the band
   * @param quantity which of the three values
   */
  public double of(Function<Estimate, Strength> end, ToDoubleFunction<Strength> quantity) {
    double[] values =
        stations.stream()
            .map(station -> end.apply(station.estimates().get(state)))
            .mapToDouble(quantity)
            .toArray();
    double lowest = Double.POSITIVE_INFINITY;
    for (int i = 0; i < values.length; i++) {
      lowest = Math.min(lowest, averageAround(i, values));
    }
    return values.length == 0 ? Double.NaN : lowest;
  }

  private double averageAround(int middle, double[] values) {
    double half = thickness(stations.get(middle)) / 2;
    double from = stations.get(middle).distance() - half;
    double to = stations.get(middle).distance() + half;
    double area = 0;
    double width = 0;
    for (int i = 1; i < values.length; i++) {
      double start = Math.max(from, stations.get(i - 1).distance());
      double end = Math.min(to, stations.get(i).distance());
      if (end > start) {
        area += (end - start) * between(i, (start + end) / 2, values);
        width += end - start;
      }
    }
    return width > 0 ? area / width : values[middle];
  }

  private double between(int next, double distance, double[] values) {
    double before = stations.get(next - 1).distance();
    double part = (distance - before) / (stations.get(next).distance() - before);
    return values[next - 1] + part * (values[next] - values[next - 1]);
  }

  private double thickness(Station station) {
    boolean left = station.place() == LEFT || (station.place() != RIGHT && station.distance() < 0);
    return (left ? profile.weldCase().left() : profile.weldCase().right()).thickness();
  }
}
