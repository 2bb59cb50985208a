package afterweld.weldmetal;

import afterweld.material.Alloy;
import afterweld.material.Composition;
import afterweld.material.Element;
import afterweld.weld.Warning;
import afterweld.weld.WeldCase;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/**
 * What a welder must know about cracks in this weld before its strengths: the tendency of the weld
 * metal at its dilution, and where the base is prone the crater, with the remedies (common
 * practice).
 */
public final class CrackWarnings {
  /** Code of the warning on weld metal that cracks as it freezes. */
  public static final String PRONE = "crack-prone";

  /** What to do about craters. */
  public static final String CRATER =
      "Craters crack first here: fill the crater before the arc is broken (current down-slope, a"
          + " little more filler), or end on a run-off tab.";

  private CrackWarnings() {}

  /** What to say of the cracking of a weld metal; empty where it is low. */
  public static List<Warning> of(WeldCase weldCase, WeldMetal metal) {
    List<Warning> warnings = new ArrayList<>();
    if (metal.crackTendency() == CrackTendency.HIGH) {
      warnings.add(new Warning(PRONE, prone(metal)));
    } else if (highInBand(weldCase, metal)) {
      warnings.add(new Warning("crack-prone-in-band", inBand(metal)));
    }
    if (craters(weldCase, metal)) {
      warnings.add(new Warning("crater", CRATER));
    }
    return warnings;
  }

  /**
   * Whether craters of this weld are to be watched: 6xxx metal, or weld metal not of low tendency.
   */
  public static boolean craters(WeldCase weldCase, WeldMetal metal) {
    return metal.crackTendency() != CrackTendency.LOW
        || Stream.of(weldCase.left(), weldCase.right())
            .anyMatch(side -> side.alloy().family() == Alloy.Family.WROUGHT_HEAT_TREATABLE);
  }

  private static String prone(WeldMetal metal) {
    String head = "Cracking high: the weld metal (" + holds(metal.composition()) + ") ";
    return metal.filler().equals("none")
        ? head + "lies where aluminium cracks as it freezes: use a filler."
        : head
            + "lies where aluminium cracks as it freezes: less base in it (a groove or a gap, more"
            + " filler) or another filler; its strengths hold only for a weld free of cracks.";
  }

  private static String holds(Composition metal) {
    return String.format(
        Locale.ROOT, "%.1f %% Mg, %.1f %% Si", metal.of(Element.MG), metal.of(Element.SI));
  }

  private static boolean highInBand(WeldCase weldCase, WeldMetal metal) {
    return Stream.of(metal.dilutionLow(), metal.dilutionHigh())
        .map(dilution -> CrackTendency.of(WeldPool.composition(weldCase, dilution)))
        .anyMatch(tendency -> tendency == CrackTendency.HIGH);
  }

  private static String inBand(WeldMetal metal) {
    return String.format(
        Locale.ROOT,
        "Cracking %s at %.0f %% dilution, but high within its band of %.0f to %.0f %%: keep the base's"
            + " share low, and measure it on a macro section.",
        metal.crackTendency().label(),
        100 * metal.dilution(),
        100 * metal.dilutionLow(),
        100 * metal.dilutionHigh());
  }
}
