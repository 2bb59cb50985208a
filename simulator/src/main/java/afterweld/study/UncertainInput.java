package afterweld.study;

import afterweld.weld.WeldCase;
import java.util.function.BiFunction;

/**
 * One input of the spread.
 *
 * @param name such as {@code travel speed}
 * @param group inputs that are reported together, such as {@code composition}
 * @param words what is assumed of it, with unit, as a welder says it
 * @param spread how it spreads
 * @param change the case with the input at a drawn value
 */
public record UncertainInput(
    String name,
    String group,
    String words,
    Distribution spread,
    BiFunction<WeldCase, Double, WeldCase> change) {
  private static final double END = 0.01;

  /** A case with the input where a share (0 to 1) of the draws lie below it. */
  WeldCase at(WeldCase weldCase, double share) {
    return change.apply(weldCase, spread.quantile().at(share));
  }

  /** Whether it does not vary. */
  boolean held() {
    return spread.quantile().at(END) == spread.quantile().at(1 - END);
  }
}
