package afterweld.weld;

import static afterweld.quantity.UnitSystem.ZERO_CELSIUS;

import afterweld.thermal.furnace.FurnaceStep;
import afterweld.thermal.furnace.FurnaceStep.Age;
import afterweld.thermal.furnace.FurnaceStep.NaturalAge;
import java.util.stream.Stream;

/**
 * Whether what follows a weld is the bake of a coating and no ageing meant to harden: nothing but
 * short holds, far from any ageing of the trade in time, on metal that is aged already or does not
 * age. Powder coatings are baked 10 to 30 min at 180 to 210 °C, some from 150 °C on (common
 * practice).
 */
public final class CoatingBake {
  private static final double COOLEST = 150 + ZERO_CELSIUS;
  private static final double HOTTEST = 210 + ZERO_CELSIUS;
  private static final double LONGEST = 30 * 60.0;
  private static final double HAIR = 1e-6;

  private CoatingBake() {}

  /** Whether all of the treatment of a case is as short as that, whatever the metal makes of it. */
  public static boolean isAsShort(WeldCase weldCase) {
    return weldCase.afterWeld().stream().anyMatch(Age.class::isInstance)
        && weldCase.afterWeld().stream()
            .allMatch(step -> step instanceof NaturalAge || bakes(step));
  }

  /** Whether all of the treatment of a case is that. */
  public static boolean is(WeldCase weldCase) {
    return isAsShort(weldCase)
        && Stream.of(weldCase.left(), weldCase.right())
            .allMatch(side -> side.comesAged() || !side.alloy().heatTreatable());
  }

  /** Whether a step is a hold as a coating is baked in. */
  public static boolean bakes(FurnaceStep step) {
    return step instanceof Age age
        && !age.overage()
        && age.time() <= LONGEST + HAIR
        && age.temperature() >= COOLEST - HAIR
        && age.temperature() <= HOTTEST + HAIR;
  }
}
