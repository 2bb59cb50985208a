package afterweld.joint;

import afterweld.section.SectionProfile;
import afterweld.section.Side;
import afterweld.section.Station;
import afterweld.strength.Strength;
import java.util.List;
import java.util.Optional;

/** Turns one state of a section profile into slices that can be pulled or bent. */
public final class ProfileSlices {
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
   * The joint dressed flush.
   *
   * @param state index of the state
   * @param end which end of the band
   * @return empty if the strength of a station is not predicted
   */
  public static Optional<SliceLine> flush(SectionProfile profile, int state, End end) {
    boolean predicted =
        profile.stations().stream().allMatch(station -> end.of(station, state).predicted());
    if (!predicted) {
      return Optional.empty();
    }
    List<StrengthStation> stations =
        profile.stations().stream()
            .map(
                station ->
                    new StrengthStation(
                        station.distance(),
                        metal(end.of(station, state)),
                        side(profile, station).thickness(),
                        station.zone().label()))
            .toList();
    return Optional.of(SliceLine.through(stations));
  }

  private static SliceMetal metal(Strength strength) {
    return SliceMetal.of(strength.yield(), Math.max(strength.yield(), strength.tensile()));
  }

  private static Side side(SectionProfile profile, Station station) {
    return station.distance() <= 0 ? profile.weldCase().left() : profile.weldCase().right();
  }
}
