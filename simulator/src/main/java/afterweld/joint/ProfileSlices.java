package afterweld.joint;

import afterweld.section.SectionProfile;
import afterweld.section.Station;
import afterweld.section.Zone;
import afterweld.strength.Strength;
import afterweld.weld.WeldCase;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Turns one state of a section profile into slices that can be pulled or bent. */
public final class ProfileSlices {
  /** Half the gauge and a little more, so that its ends lie inside the line (numerics). */
  private static final double BEYOND_GAUGE = 0.52;

  private static final int BEFORE = 0;

  private ProfileSlices() {}

  /** Which end of the error band is taken at every station. */
  public enum End {
    LOW,
    MIDDLE,
    HIGH;

    Strength of(Station station, int state) {
      return switch (this) {
        case LOW -> station.estimates().get(state).low();
        case MIDDLE -> station.estimates().get(state).middle();
        case HIGH -> station.estimates().get(state).high();
      };
    }
  }

  /**
   * The joint dressed flush, held against the bases as they were before welding.
   *
   * @param state index of the state
   * @param end which end of the band
   * @param gauge length the line must cover, m: the outermost metal is taken on if it is shorter
   * @return empty if the strength of a station is not predicted
   */
  public static Optional<SliceLine> flush(
      SectionProfile profile, int state, End end, double gauge) {
    boolean predicted =
        profile.stations().stream().allMatch(station -> end.of(station, state).predicted());
    if (!predicted) {
      return Optional.empty();
    }
    List<StrengthStation> stations =
        covering(profile.stations(), gauge).stream()
            .filter(station -> station.distance() != 0 || alike(profile.weldCase()))
            .map(
                station ->
                    new StrengthStation(
                        station.distance(),
                        metal(end.of(station, state)),
                        thickness(profile.weldCase(), station, state),
                        station.zone().label()))
            .toList();
    List<Station> all = profile.stations();
    SliceLine line = SliceLine.through(stations);
    return Optional.of(
        (state == BEFORE ? line.all(Zone.BASE.label()) : line)
            .against(
                metal(end.of(all.get(0), BEFORE)), metal(end.of(all.get(all.size() - 1), BEFORE))));
  }

  private static List<Station> covering(List<Station> stations, double gauge) {
    double reach = BEYOND_GAUGE * gauge;
    List<Station> all = new ArrayList<>(stations);
    if (stations.get(0).distance() > -reach) {
      all.add(0, moved(stations.get(0), -reach));
    }
    Station last = stations.get(stations.size() - 1);
    if (last.distance() < reach) {
      all.add(moved(last, reach));
    }
    return all;
  }

  private static Station moved(Station station, double distance) {
    return new Station(
        distance, station.place(), station.zone(), station.peakTemperature(), station.estimates());
  }

  private static SliceMetal metal(Strength strength) {
    return new SliceMetal(strength.yield(), Math.max(strength.yield(), strength.tensile()));
  }

  /** The station at the centre is one of the left's: between unlike sides it is left out. */
  private static boolean alike(WeldCase weldCase) {
    return weldCase.left().equals(weldCase.right());
  }

  /**
   * That of the side; weld metal is as thick as the thinner of the two (the throat of a groove
   * weld, AWS D1.2, from memory).
   */
  private static double thickness(WeldCase weldCase, Station station, int state) {
    double left = weldCase.left().thickness();
    double right = weldCase.right().thickness();
    if (state != BEFORE && station.zone() == Zone.FUSION) {
      return Math.min(left, right);
    }
    return station.distance() <= 0 ? left : right;
  }
}
