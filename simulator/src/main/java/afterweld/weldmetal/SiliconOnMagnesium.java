package afterweld.weldmetal;

import afterweld.material.Element;
import afterweld.quantity.BothUnits;
import afterweld.strength.Strength;
import afterweld.weld.Warning;

/**
 * A silicon filler on a base with more magnesium than 6xxx alloys have, such as 4043 on 5052: the
 * guides allow it, but the model counts the magnesium of the base and the silicon of the filler as
 * if they hardened each other as in 6061, which nothing confirms. Such weld metal is taken no
 * stronger than the code's value for it, and never called the strongest.
 *
 * <p>From more than 3 wt% Si in the filler and more than 1.2 wt% Mg in a base on (1.2 is the end of
 * the range the model was fitted in). Cap: 165 MPa (24 ksi) tensile strength of 4043 weld metal, US
 * Aluminum Design Manual, Table J.2.1 (read), taken for every silicon filler; yield and hardness
 * fall with it (assumed).
 */
public final class SiliconOnMagnesium {
  private static final double MUCH_SILICON = 3.0;
  private static final double MUCH_MAGNESIUM = 1.2;
  private static final double CODE_TENSILE = 165e6;

  private SiliconOnMagnesium() {}

  /** Whether the rule is for these metals. */
  public static boolean holdsFor(PoolMetals metals) {
    return metals.fillerHolds(Element.SI, MUCH_SILICON)
        && metals.bases().stream().anyMatch(base -> base.of(Element.MG) > MUCH_MAGNESIUM);
  }

  /** A strength of the model, no higher than the code's. */
  public static Strength capped(Strength strength) {
    return strength.tensile() > CODE_TENSILE
        ? strength.times(CODE_TENSILE / strength.tensile())
        : strength;
  }

  /** What a reader of such a result must know. */
  public static Warning warning() {
    return new Warning(
        "silicon-on-magnesium",
        "A silicon filler on a base with more than 1.2 % Mg: its weld metal is taken no stronger"
            + " than the code's "
            + BothUnits.stress(CODE_TENSILE)
            + " tensile strength, whatever the treatment; a magnesium filler is the stronger and"
            + " tougher choice.");
  }
}
