package afterweld.section;

import afterweld.strength.Strength;
import afterweld.thermal.FurnaceStep;
import afterweld.thermal.FurnaceStep.Age;
import afterweld.thermal.FurnaceStep.SolutionTreat;
import java.util.List;

/**
 * How far a prediction may be off, as a share of its value: alike for yield, tensile strength and
 * hardness (from the deviations of the calibration and of published welds).
 */
enum ErrorBand {
  /** Base metal in T6, and any base metal after a full treatment. */
  TREATED(0.10, 0.10),
  /** Other tempers and the heat-affected zone. */
  AFFECTED(0.15, 0.15),
  /** Between solidus and fusion line: liquation is not modelled. */
  PARTIALLY_MELTED(0.20, 0.15),
  /** Weld metal in every state: dilution and solidification dominate. */
  WELD_METAL(0.20, 0.20);

  private static final String PEAK_AGED = "T6";

  private final double below;
  private final double above;

  ErrorBand(double below, double above) {
    this.below = below;
    this.above = above;
  }

  /**
   * The band of a station in one state.
   *
   * @param temper of its side before welding
   * @param zone it lies in
   * @param state 0 before welding, 1 as welded, then one after each furnace step
   * @param steps all furnace steps
   */
  static ErrorBand of(String temper, Zone zone, int state, List<FurnaceStep> steps) {
    if (state == 0) {
      return temper.equals(PEAK_AGED) ? TREATED : AFFECTED;
    }
    if (zone == Zone.FUSION) {
      return WELD_METAL;
    }
    if (zone == Zone.PARTIALLY_MELTED) {
      return PARTIALLY_MELTED;
    }
    boolean untouched = zone == Zone.BASE && temper.equals(PEAK_AGED);
    return untouched || fullyTreated(steps.subList(0, state - 1)) ? TREATED : AFFECTED;
  }

  private static boolean fullyTreated(List<FurnaceStep> steps) {
    int solution = -1;
    for (int i = 0; i < steps.size(); i++) {
      if (steps.get(i) instanceof SolutionTreat) {
        solution = i;
      } else if (solution >= 0 && steps.get(i) instanceof Age) {
        return true;
      }
    }
    return false;
  }

  Strength low(Strength middle) {
    return middle.times(1 - below);
  }

  Strength high(Strength middle) {
    return middle.times(1 + above);
  }
}
