package afterweld.weld;

import afterweld.thermal.ConductionMaterial;
import afterweld.thermal.Leg;
import afterweld.thermal.WeldLegs;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Which plates lead the heat away from a joint: a butt, corner, socket or bead has a leg on either
 * side; a tee has two legs of its base and the web; a lap counts the through sheet twice, and the
 * lapped edge once.
 */
public final class JointLegs {
  private JointLegs() {}

  /** The legs of a case: the left one first, the right one last. */
  public static WeldLegs of(WeldCase weldCase) {
    Leg left = leg(weldCase.left(), true);
    Leg right = leg(weldCase.right(), false);
    List<Leg> legs = new ArrayList<>();
    legs.add(left);
    if (weldCase.joint() == Joint.TEE || weldCase.joint() == Joint.LAP) {
      legs.add(left);
    }
    legs.add(right);
    return new WeldLegs(legs, unequalWeight(weldCase));
  }

  private static Leg leg(Side side, boolean left) {
    return new Leg(
        left,
        side.thickness(),
        side.width(),
        ConductionMaterial.of(side.alloy(), side.temper().name()));
  }

  /**
   * Fillets heat the top of the thick leg only; a butt does so unless its stated penetration
   * reaches through the thicker part, and of one without it is not known.
   */
  private static double unequalWeight(WeldCase weldCase) {
    if (weldCase.preparation() == Preparation.FILLET) {
      return 1;
    }
    OptionalDouble deepest =
        weldCase.passes().stream().flatMapToDouble(pass -> pass.penetration().stream()).max();
    double thickest = Math.max(weldCase.left().thickness(), weldCase.right().thickness());
    return deepest.isEmpty() ? WeldLegs.UNKNOWN_WEIGHT : deepest.getAsDouble() < thickest ? 1 : 0;
  }
}
