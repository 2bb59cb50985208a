package afterweld.section;

import static afterweld.quantity.UnitSystem.ZERO_CELSIUS;

import afterweld.thermal.furnace.FurnaceStep;
import afterweld.thermal.furnace.FurnaceStep.Age;
import afterweld.weld.Side;
import afterweld.weld.Warning;
import afterweld.weld.WeldCase;
import java.util.List;
import java.util.Optional;

/**
 * Ageing that the model does too slowly. Castings: at 155 °C their yield peaks after some 15 to 30
 * h (handbooks, from memory), here after 80 h and more. Wrought metal cooler than that which its T6
 * is matched to (174 to 177 °C): 18 h at 160 °C is a T6 of 6061 sheet (AMS 2770, from memory; 276
 * MPa yield in a data sheet) and is computed about 5 % short of the 8 h at 177 °C.
 */
public final class CoolAgeing {
  private static final double MATCHED = 173.5 + ZERO_CELSIUS;

  /** What wrought metal is computed short of by it, as a share. */
  public static final double COMPUTED_SHORT = 0.05;

  /** What is said wherever a casting ages. */
  public static final String CASTINGS =
      "Castings age too slowly here: at 155 °C (311 °F) their strength peaks after some 15 to 30 h,"
          + " computed after 80 h and more. Longer or hotter ageing than the usual is not shown to"
          + " be better by this.";

  private CoolAgeing() {}

  /** Whether an ageing is computed too slow for a side: any of a casting, a cool one of others. */
  public static boolean isSlow(Side side, Age age) {
    return side.alloy().heatTreatable() && (side.alloy().casting() || isCool(age));
  }

  private static boolean isCool(Age age) {
    return age.temperature() < MATCHED;
  }

  /** What to say of a case with a casting that is aged; empty for others. */
  static Optional<Warning> ofCastings(WeldCase weldCase) {
    return ofCastings(weldCase, weldCase.afterWeld());
  }

  /** The same of a treatment that is tried on it. */
  public static Optional<Warning> ofCastings(WeldCase weldCase, List<FurnaceStep> steps) {
    return weldCase.hasCasting() && steps.stream().anyMatch(Age.class::isInstance)
        ? Optional.of(new Warning("casting-ageing", CASTINGS))
        : Optional.empty();
  }

  /** What to say of a case that ages so; empty for others. */
  static Optional<Warning> warning(WeldCase weldCase) {
    List<FurnaceStep> steps = weldCase.afterWeld();
    boolean cool = steps.stream().anyMatch(step -> step instanceof Age age && isCool(age));
    return weldCase.hardensWrought() && cool
        ? Optional.of(
            new Warning(
                "cool-ageing",
                "Ageing under 174 °C (345 °F) is computed too slow: 18 h at 160 °C (320 °F) is a T6"
                    + " of 6061 sheet, and comes out about 5 % short of it here. Such a treatment"
                    + " rather gives more than is predicted."))
        : Optional.empty();
  }
}
