package afterweld.section;

import afterweld.material.Composition;

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
  /** How prone it is to cracking while it freezes. */
  public CrackTendency crackTendency() {
    return CrackTendency.of(composition);
  }
}
