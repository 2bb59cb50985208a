package afterweld.choice;

import afterweld.section.Estimate;
import afterweld.section.SectionProfile;
import afterweld.section.Station;
import afterweld.section.Zone;
import afterweld.strength.Strength;
import afterweld.thermal.FurnaceStep;
import afterweld.thermal.FurnaceStep.Age;
import afterweld.thermal.FurnaceStep.SolutionTreat;
import java.util.ArrayList;
import java.util.List;

/**
 * Ageing after welding without solution treatment: how as-deposited weld metal answers to that is
 * not verified and probably shown too high, so decisions take the weld metal no stronger than as
 * welded.
 */
public final class AgedOnly {
  private static final int AS_WELDED = 1;

  private AgedOnly() {}

  /** Whether steps age without dissolving first. */
  public static boolean is(List<FurnaceStep> steps) {
    return steps.stream().noneMatch(SolutionTreat.class::isInstance)
        && steps.stream().anyMatch(Age.class::isInstance);
  }

  /** The profile that decisions are made on: itself unless its case only ages after welding. */
  public static SectionProfile cautious(SectionProfile profile) {
    if (!is(profile.weldCase().afterWeld())) {
      return profile;
    }
    return profile.withStations(
        profile.stations().stream()
            .map(station -> station.zone() == Zone.FUSION ? noStronger(station) : station)
            .toList());
  }

  private static Station noStronger(Station station) {
    Estimate welded = station.estimates().get(AS_WELDED);
    List<Estimate> estimates = new ArrayList<>(station.estimates());
    for (int state = AS_WELDED + 1; state < estimates.size(); state++) {
      Estimate aged = estimates.get(state);
      estimates.set(
          state,
          new Estimate(
              lower(aged.middle(), welded.middle()),
              lower(aged.low(), welded.low()),
              lower(aged.high(), welded.high())));
    }
    return new Station(
        station.distance(), station.place(), station.zone(), station.peakTemperature(), estimates);
  }

  private static Strength lower(Strength one, Strength other) {
    return new Strength(
        Math.min(one.yield(), other.yield()),
        Math.min(one.tensile(), other.tensile()),
        Math.min(one.hardness(), other.hardness()));
  }
}
