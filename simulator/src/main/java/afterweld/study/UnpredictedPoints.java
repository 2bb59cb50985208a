package afterweld.study;

import afterweld.quantity.BothUnits;
import afterweld.study.HardnessTraverse.Point;
import java.util.List;

/** A traverse through metal whose hardness is not predicted: there is nothing to fit it to. */
public final class UnpredictedPoints extends IllegalArgumentException {
  private static final long serialVersionUID = 1;

  /**
   * A fault.
   *
   * @param without the points without a prediction, in order, not empty
   * @param measured how many points the traverse has
   */
  UnpredictedPoints(List<Point> without, int measured) {
    super(
        "no hardness is predicted for the metal at "
            + without.size()
            + " of "
            + measured
            + " points, from "
            + BothUnits.length(without.get(0).distance())
            + " to "
            + BothUnits.length(without.get(without.size() - 1).distance())
            + "; expected a traverse without them. The warnings of 'afterweld profile' say why.");
  }
}
