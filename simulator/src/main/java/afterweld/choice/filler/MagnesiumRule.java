package afterweld.choice.filler;

import afterweld.choice.answer.Requirement;
import afterweld.material.Composition;
import afterweld.material.Element;
import afterweld.quantity.UnitSystem;
import afterweld.section.SectionProfile;
import afterweld.weld.FillerChoice;
import afterweld.weld.Side;
import afterweld.weld.WeldCase;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Metal with more than 3 % magnesium is not for service above 65 °C and, as a filler, takes part in
 * no full treatment: magnesium-rich phases line its grain boundaries, may melt in the solution
 * furnace, and it corrodes under stress. Usual rule of the trade (Aluminum Association and AWS,
 * from memory); some guides draw the line of warm service at 5 %.
 */
public final class MagnesiumRule {
  /** The limit as the trade says it. */
  public static final String LIMIT = "65 °C (150 °F)";

  /** The limit, K. */
  public static final double WARM_LIMIT = 65 + UnitSystem.ZERO_CELSIUS;

  /**
   * Highest service temperature of rich metal, K: the trade's 65 °C and 150 °F are one limit, met
   * at whichever of the two is written, and 66 °C is what 150 °F reads in whole degrees.
   */
  public static final double WARM_SERVICE = 66 + UnitSystem.ZERO_CELSIUS + 1e-9;

  private static final String RICH_IN_THE_FURNACE =
      "more than 3 % Mg and takes part in no full treatment: wherever little of the base is mixed in,"
          + " its grain boundaries may melt from 450 °C (840 °F) on, and it corrodes under stress"
          + " afterwards.";

  /** Why a rich filler is kept out of a full treatment. */
  static final String NO_FULL_TREATMENT = "It has " + RICH_IN_THE_FURNACE;

  /** Why rich metal is kept cool. */
  static final String NOT_WARM =
      "More than 3 % Mg in a base or the filler: not for service above 65 °C, 150 °F (some guides"
          + " draw the line at 5 %).";

  /** Why a rich filler is kept out of ageing. */
  static final String NOT_AGED =
      "More than 3 % Mg: ageing lines its grain boundaries with what corrodes under stress.";

  private static final double MOST = 3.0;

  private MagnesiumRule() {}

  /**
   * Why the filler of a case takes part in no full treatment, and what to do instead for what the
   * case requires.
   */
  public static String refusal(WeldCase weld, Requirement requirement) {
    return weld.filler().alloy().orElseThrow().name()
        + " has "
        + RICH_IN_THE_FURNACE
        + annealed(weld)
            .map(
                side -> " The furnace anneals " + side.alloy().name() + " too: leave it as welded.")
            .orElseGet(() -> FillerAdvice.instead(weld, FillerPurpose.of(weld, requirement)));
  }

  /** A side that a full treatment does not harden: no filler makes the treatment right for it. */
  private static Optional<Side> annealed(WeldCase weld) {
    return Stream.of(weld.left(), weld.right())
        .filter(side -> !side.alloy().heatTreatable())
        .findFirst();
  }

  /** Whether a metal holds more than the limit. */
  public static boolean rich(Composition metal) {
    return metal.of(Element.MG) > MOST;
  }

  /** The rich metals of a joint, named: its bases, its filler, its weld metal. */
  public static List<String> richOf(SectionProfile profile) {
    WeldCase weld = profile.weldCase();
    Set<String> names = new LinkedHashSet<>();
    Stream.of(weld.left(), weld.right())
        .filter(side -> rich(side.composition()))
        .forEach(side -> names.add(side.alloy().name()));
    weld.filler()
        .alloy()
        .filter(alloy -> rich(alloy.composition()))
        .ifPresent(alloy -> names.add("the filler " + alloy.name()));
    if (rich(profile.weldMetal().composition())) {
      names.add("the weld metal");
    }
    return List.copyOf(names);
  }

  /** Whether a filler does; none does not. */
  public static boolean rich(FillerChoice filler) {
    return filler.alloy().filter(alloy -> rich(alloy.composition())).isPresent();
  }
}
