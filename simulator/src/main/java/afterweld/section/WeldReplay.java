package afterweld.section;

import afterweld.quantity.Check;
import afterweld.strength.Strength;
import java.util.List;

/**
 * How stations across a weld go through the weld and what comes after it, moment by moment. SI
 * units and kelvin.
 *
 * <p>In a pass, the clock of every station reads zero when the arc goes by, so that the stations of
 * one moment lie on one line across the weld. Every other phase begins at zero. The strength of a
 * moment is that at room temperature, if the metal were cooled there and then without further
 * change; it is not predicted while a station is molten or about to melt.
 *
 * @param phases names: one per pass, natural ageing, then each furnace step
 * @param stations from left to right
 */
public record WeldReplay(List<String> phases, List<AtStation> stations) {
  /** Copies the lists. */
  public WeldReplay {
    phases = List.copyOf(phases);
    stations = List.copyOf(stations);
  }

  /**
   * One station.
   *
   * @param distance from the weld centre, m; negative on the left
   * @param phases its moments, a list per phase, by rising time
   */
  public record AtStation(double distance, List<List<Moment>> phases) {
    /** Copies the list. */
    public AtStation {
      Check.finite("distance", distance, "m");
      phases = phases.stream().map(List::copyOf).toList();
    }

    AtStation mirrored() {
      return new AtStation(0.0 - distance, phases);
    }
  }

  /**
   * One moment of one station.
   *
   * @param time on the clock of the phase, s
   * @param temperature K
   * @param strength if it were cooled now
   */
  public record Moment(double time, double temperature, Strength strength) {
    /** Refuses what it cannot be. */
    public Moment {
      Check.finite("time", time, "s");
      Check.positive("temperature", temperature, "K");
    }
  }
}
