package afterweld.section;

import afterweld.thermal.PassHeat;
import java.util.List;
import java.util.Optional;

/**
 * Whether a butt weld in one pass melts through: joints are computed as fused through, and a root
 * left open is a notch that no strength here knows of. In several passes a prepared root is taken
 * for fused.
 */
final class RootFusion {
  private static final double THROUGH = 0.95;

  private RootFusion() {}

  static Optional<Warning> warning(WeldCase weldCase, List<PassHeat> heats) {
    double thickness = Math.min(weldCase.left().thickness(), weldCase.right().thickness());
    boolean onePass = heats.size() == 1 && weldCase.joint() == Joint.BUTT;
    double depth = heats.get(0).depth(thickness);
    if (!onePass || depth >= THROUGH * thickness) {
      return Optional.empty();
    }
    return Optional.of(
        new Warning(
            "root-not-reached",
            "The pool reaches "
                + BothUnits.length(depth)
                + " deep in "
                + BothUnits.length(thickness)
                + (heats.get(0).pass().penetration().isPresent() ? "" : ", by rule")
                + ": the joint is computed as fused through, so look at the root on a macro"
                + " section."));
  }
}
