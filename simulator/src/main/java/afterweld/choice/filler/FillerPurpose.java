package afterweld.choice.filler;

import afterweld.choice.answer.Requirement;
import afterweld.section.AgedOnly;
import afterweld.thermal.furnace.FurnaceStep;
import afterweld.thermal.furnace.FurnaceStep.SolutionTreat;
import afterweld.weld.CoatingBake;
import afterweld.weld.WeldCase;
import java.util.List;

/**
 * What a filler is chosen for.
 *
 * @param heat what happens to the weld afterwards
 * @param colour whether its colour must match after anodizing
 * @param warm whether it serves above 65 °C
 */
public record FillerPurpose(Heat heat, boolean colour, boolean warm) {
  /** Left as welded, and nothing else asked. */
  public static final FillerPurpose WELDED = new FillerPurpose(Heat.WELDED, false, false);

  /** What happens to a weld afterwards. */
  public enum Heat {
    WELDED("left as welded"),
    SOFT("not hardened afterwards"),
    AGED("aged only"),
    FULL("solution treated, quenched and aged");

    private final String label;

    Heat(String label) {
      this.label = label;
    }

    /** The words used on screen and in results. */
    public String label() {
      return label;
    }
  }

  /**
   * What a case with its requirement asks of a filler; a hold as short as the bake of a coating
   * asks nothing more.
   */
  public static FillerPurpose of(WeldCase weldCase, Requirement requirement) {
    return of(
        CoatingBake.isAsShort(weldCase) ? Heat.SOFT : heat(weldCase.afterWeld()), requirement);
  }

  /** What a full treatment with its requirement asks of a filler. */
  public static FillerPurpose treated(Requirement requirement) {
    return of(Heat.FULL, requirement);
  }

  private static FillerPurpose of(Heat heat, Requirement requirement) {
    return new FillerPurpose(
        heat,
        requirement.anodizedMatch().orElse(false),
        requirement.serviceTemperature().orElse(0) > MagnesiumRule.WARM_SERVICE);
  }

  private static Heat heat(List<FurnaceStep> steps) {
    if (steps.stream().anyMatch(SolutionTreat.class::isInstance)) {
      return Heat.FULL;
    }
    Heat cold = steps.isEmpty() ? Heat.WELDED : Heat.SOFT;
    return AgedOnly.is(steps) ? Heat.AGED : cold;
  }

  /** The purpose as a sentence names it. */
  public String label() {
    return heat.label()
        + (colour ? ", anodized with a match in colour" : "")
        + (warm ? ", in service above 65 °C (150 °F)" : "");
  }
}
