package afterweld.choice;

import afterweld.section.Estimate;
import afterweld.section.SectionProfile;
import afterweld.strength.Strength;
import java.util.function.Function;

/**
 * The lowest hardness of a finished section: the softest place that a tester can find, which is the
 * one that every printout names. A row of indents smooths it over about a millimetre; nothing is
 * taken off for that.
 */
public final class LowestHardness {
  private LowestHardness() {}

  /**
   * The lowest of all stations in the last state, HV; NaN if one is not predicted.
   *
   * @param end which end of the band
   */
  public static double of(SectionProfile profile, Function<Estimate, Strength> end) {
    int last = profile.states().size() - 1;
    return profile.stations().stream()
        .map(station -> station.estimates().get(last))
        .mapToDouble(estimate -> end.apply(estimate).hardness())
        .min()
        .orElse(Double.NaN);
  }

  /** The highest that the softest place may have, HV: of each run its lowest. */
  public static double high(SectionProfile profile) {
    return profile.ofEachRun().mapToDouble(run -> of(run, Estimate::high)).max().orElse(Double.NaN);
  }
}
