package afterweld.choice.filler;

import afterweld.material.Alloy;
import afterweld.weld.Joint;
import afterweld.weld.Preparation;
import afterweld.weld.WeldCase;
import afterweld.weldmetal.CrackTendency;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * Where a weld without filler makes sense: a thin, well fitted butt or corner with square edges of
 * metal that does not crack as it freezes. A fillet has no throat without filler, a groove is not
 * filled, and 6xxx metal cracks (common practice; 3 mm or 1/8 in is the thickest that is usual). A
 * bead on plate joins nothing: nothing stands against it.
 */
final class WithoutFiller {
  private static final double THIN = 25.4e-3 / 8 + 1e-9;

  private WithoutFiller() {}

  /** What speaks against it, a sentence each; empty if nothing does. */
  static List<String> against(WeldCase weld, CrackTendency crack) {
    List<String> against = new ArrayList<>();
    if (weld.joint() == Joint.BEAD) {
      return against;
    }
    if (Stream.of(weld.left(), weld.right())
        .anyMatch(side -> side.alloy().family() == Alloy.Family.WROUGHT_HEAT_TREATABLE)) {
      against.add("6xxx metal melted without filler cracks as it freezes.");
    } else if (crack == CrackTendency.HIGH) {
      against.add("This base melted without filler lies where aluminium cracks as it freezes.");
    }
    if (weld.preparation() != Preparation.SQUARE) {
      against.add("Without filler a fillet has no throat and a groove is not filled.");
    } else if (Math.max(weld.left().thickness(), weld.right().thickness()) > THIN) {
      against.add("Without filler only up to 3 mm (1/8 in).");
    }
    return against;
  }
}
