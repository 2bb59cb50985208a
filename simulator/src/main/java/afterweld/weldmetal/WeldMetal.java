package afterweld.weldmetal;

import afterweld.material.Composition;
import afterweld.quantity.Check;

/**
 * The weld metal: one composition per case.
 *
 * @param filler filler name; {@code none} without filler
 * @param dilution share of base, 0 to 1
 * @param dilutionLow low end of the band
 * @param dilutionHigh high end of the band
 * @param composition wt%
 * @param solidus of the metal as deposited, K
 */
public record WeldMetal(
    String filler,
    double dilution,
    double dilutionLow,
    double dilutionHigh,
    Composition composition,
    double solidus) {
  /** Refuses what it cannot be. */
  public WeldMetal {
    Check.rising("dilution", 0, dilutionLow, dilution, dilutionHigh, 1);
    Check.positive("solidus", solidus, "K");
  }

  /** How prone it is to cracking while it freezes. */
  public CrackTendency crackTendency() {
    return CrackTendency.of(composition);
  }
}
