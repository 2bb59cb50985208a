package afterweld.choice;

import afterweld.material.Composition;
import afterweld.material.Element;
import afterweld.section.FillerChoice;
import afterweld.section.SectionProfile;
import afterweld.section.WeldCase;
import afterweld.thermal.FurnaceStep.SolutionTreat;
import java.util.List;
import java.util.Optional;

/**
 * Metal with more than 3 % magnesium is not for service above 65 °C and, as a filler, takes part in
 * no full treatment: magnesium-rich phases line its grain boundaries, may melt in the solution
 * furnace, and it corrodes under stress. Usual rule of the trade (Aluminum Association and AWS,
 * from memory); some guides draw the line of warm service at 5 %.
 */
final class MagnesiumRule {
  /** Highest service temperature of rich metal, K. */
  static final double WARM_SERVICE = 65 + 273.15;

  /** Why a rich filler is kept out of a full treatment. */
  static final String NO_FULL_TREATMENT =
      "More than 3 % Mg: not to be solution treated and aged after welding (its grain boundaries may"
          + " melt from 450 °C, 840 °F, on, and it corrodes under stress afterwards).";

  /** Why rich metal is kept cool. */
  static final String NOT_WARM =
      "More than 3 % Mg in the joint: not for service above 65 °C, 150 °F (some guides draw the line"
          + " at 5 %).";

  /** What ageing alone does to a rich filler. */
  static final String AGED_WITH_CAUTION =
      "More than 3 % Mg: ageing lines its grain boundaries, so it may corrode under stress.";

  private static final double MOST = 3.0;
  private static final int NAMED = 3;

  private MagnesiumRule() {}

  /**
   * Why the full treatment that a case orders must not be run on its filler, and which fillers take
   * it; empty if nothing stands against it.
   */
  static Optional<String> refusal(WeldCase weld) {
    boolean solution = weld.afterWeld().stream().anyMatch(SolutionTreat.class::isInstance);
    if (!solution || !rich(weld.filler())) {
      return Optional.empty();
    }
    List<String> others =
        UsualFillers.of(weld)
            .suitable(FillerPurpose.of(weld.afterWeld(), Requirement.NONE));
    String name = weld.filler().alloy().orElseThrow().name();
    return Optional.of("Filler " + name + ": " + NO_FULL_TREATMENT + instead(others));
  }

  private static String instead(List<String> others) {
    return others.isEmpty()
        ? " No filler suits a full treatment of this pair: leave it as welded."
        : " Fillers for a full treatment of this pair: "
            + String.join(", ", others.subList(0, Math.min(NAMED, others.size())))
            + ".";
  }

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
