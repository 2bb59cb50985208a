package afterweld.choice;

import afterweld.material.Composition;
import afterweld.material.Element;
import afterweld.section.FillerChoice;
import afterweld.section.SectionProfile;
import afterweld.section.WeldCase;

/**
 * Metal with more than 3 % magnesium is not for service above 65 °C and, as a filler, not meant for
 * heat treatment after welding: magnesium-rich phases line its grain boundaries and it corrodes
 * under stress. Usual rule of the trade (Aluminum Association and AWS, from memory); some guides
 * draw the line at 5 %.
 */
final class MagnesiumRule {
  /** The limit as the trade says it. */
  static final String LIMIT = "65 °C (150 °F)";

  /**
   * Highest service temperature of rich metal, K: the trade's 65 °C and 150 °F are one limit, met
   * at whichever of the two is written.
   */
  static final double WARM_SERVICE = (150 + 459.67) / 1.8 + 1e-9;

  private static final double MOST = 3.0;

  private MagnesiumRule() {}

  static boolean rich(Composition metal) {
    return metal.of(Element.MG) > MOST;
  }

  /** Whether a base, the filler or the weld metal of a joint is rich. */
  static boolean anyRich(SectionProfile profile) {
    WeldCase weld = profile.weldCase();
    return rich(weld.filler())
        || rich(weld.left().composition())
        || rich(weld.right().composition())
        || rich(profile.weldMetal().composition());
  }

  static boolean rich(FillerChoice filler) {
    return filler.alloy().filter(alloy -> rich(alloy.composition())).isPresent();
  }
}
