package afterweld.section;

import afterweld.quantity.Check;
import java.util.List;

/**
 * One place on the line across the weld.
 *
 * @param distance from the weld centre, m; negative on the left
 * @param place left, right or inside the weld
 * @param zone decided by the state right after the weld has cooled
 * @param peakTemperature highest temperature of all passes, K
 * @param estimates one per state of the profile, in its order
 */
public record Station(
    double distance, Place place, Zone zone, double peakTemperature, List<Estimate> estimates) {
  /** Copies the list. */
  public Station {
    Check.finite("distance", distance, "m");
    Check.positive("peak temperature", peakTemperature, "K");
    Check.some("states of a station", estimates);
    estimates = List.copyOf(estimates);
  }

  Station asWelded() {
    return new Station(distance, place, zone, peakTemperature, estimates.subList(0, 2));
  }

  /** Which metal the station lies in. */
  public enum Place {
    LEFT("left"),
    WELD("weld"),
    RIGHT("right");

    private final String label;

    Place(String label) {
      this.label = label;
    }

    /** The word used in results. */
    public String label() {
      return label;
    }
  }
}
