package afterweld.section;

import afterweld.quantity.Check;
import afterweld.quantity.TimeWords;
import afterweld.section.soundness.Soundness;
import afterweld.thermal.PassHeat;
import afterweld.thermal.TemperatureHistory;
import afterweld.weld.Warning;
import afterweld.weld.WeldCase;
import afterweld.weldmetal.WeldMetal;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * The main result: what is left across the weld in every state, with all that a reader needs to
 * judge it. SI units and kelvin.
 *
 * @param weldCase what was computed
 * @param soundness whether it is a joint at all; where it is not, no strength of the joint is given
 * @param states names of the states, always {@code before welding} and {@code as welded} first; the
 *     last is {@code after heat treatment} when the case has one
 * @param stations from left to right; the band of each spans all runs
 * @param runs the same stations run with the best inputs and with each end of what the case leaves
 *     to defaults or leaves open, each with the model's own band alone: a joint is one of them
 * @param zones from left to right
 * @param weldMetal what the pool froze to
 * @param passes heat of each pass
 * @param tellingCycles thermal cycles at a few stations that show what the weld did
 * @param softening peak temperatures from which the base loses over 2 % of its yield
 * @param warnings limits of validity and assumptions
 * @param cautions what every output shows
 */
public record SectionProfile(
    WeldCase weldCase,
    Soundness soundness,
    List<String> states,
    List<Station> stations,
    List<List<Station>> runs,
    List<ZoneSpan> zones,
    WeldMetal weldMetal,
    List<PassHeat> passes,
    List<TellingCycle> tellingCycles,
    Softening softening,
    List<Warning> warnings,
    List<String> cautions) {
  /** Copies the lists. */
  public SectionProfile {
    Check.some("stations", stations);
    int known = states.size();
    if (stations.stream().anyMatch(station -> station.estimates().size() != known)) {
      throw new IllegalArgumentException("a station without a value for each of " + states);
    }
    Check.rising("stations", stations.stream().mapToDouble(Station::distance).toArray());
    states = List.copyOf(states);
    stations = List.copyOf(stations);
    runs = runs.stream().map(List::copyOf).toList();
    zones = List.copyOf(zones);
    passes = List.copyOf(passes);
    tellingCycles = List.copyOf(tellingCycles);
    warnings = List.copyOf(warnings);
    cautions = List.copyOf(cautions);
  }

  /**
   * The profile of each run by itself. The strongest joint that may be is the strongest of these:
   * the soft place moves with the heat, so the highest values of every place make no joint.
   */
  public Stream<SectionProfile> ofEachRun() {
    return runs.stream().map(this::withStations);
  }

  /**
   * A state's name for people: as welded with the time at room temperature since, without which its
   * numbers say nothing.
   */
  public String label(int state) {
    return state == 1
        ? states.get(1) + " (after " + TimeWords.of(weldCase.naturalAge()) + ")"
        : states.get(state);
  }

  /** The names of all states for people. */
  public List<String> labels() {
    return IntStream.range(0, states.size()).mapToObj(this::label).toList();
  }

  /**
   * The same weld with nothing after it, at the same stations: where they stand depends a little on
   * the treatment, and as welded must be one number. The warnings stay those of the whole.
   */
  public SectionProfile asWelded() {
    return new SectionProfile(
        weldCase.withAfterWeld(List.of()),
        soundness,
        states.subList(0, 2),
        asWelded(stations),
        runs.stream().map(SectionProfile::asWelded).toList(),
        zones.stream().map(ZoneSpan::asWelded).toList(),
        weldMetal,
        passes,
        tellingCycles,
        softening,
        warnings,
        cautions);
  }

  private static List<Station> asWelded(List<Station> stations) {
    return stations.stream().map(Station::asWelded).toList();
  }

  /** The same profile with other values at its stations, of one run. */
  public SectionProfile withStations(List<Station> others) {
    return new SectionProfile(
        weldCase,
        soundness,
        states,
        others,
        List.of(others),
        zones,
        weldMetal,
        passes,
        tellingCycles,
        softening,
        warnings,
        cautions);
  }

  /** The same profile of a part under pressure: the caution on that in full. */
  public SectionProfile underPressure() {
    return new SectionProfile(
        weldCase,
        soundness,
        states,
        stations,
        runs,
        zones,
        weldMetal,
        passes,
        tellingCycles,
        softening,
        warnings,
        Cautions.withPressure(cautions));
  }

  /**
   * The weld's thermal cycle at one station.
   *
   * @param distance m from the weld centre
   * @param zone zone it lies in
   * @param history time from the start of the first pass's heating there
   */
  public record TellingCycle(double distance, Zone zone, TemperatureHistory history) {
    /** Refuses what it cannot be. */
    public TellingCycle {
      Check.finite("distance", distance, "m");
    }
  }
}
