package afterweld.choice;

import afterweld.material.Composition;
import afterweld.material.Element;

/**
 * How prone weld metal is to cracking while it solidifies, from its composition.
 *
 * <p>Free silicon is what magnesium does not bind (Si - Mg/1.73), free magnesium what silicon does
 * not bind (Mg - 1.73 Si), wt%. Low from 2 % free silicon or 3 % free magnesium, moderate from 1.2
 * or 2 %; with 1 % copper and more the Al-Cu range decides (high to 3.5 %, low from 5 %); pure
 * aluminium and 3xxx low to moderate; anything else lies near a peak of the published curves (0.8 %
 * Si, 1.2 % Mg, 1 % Mg2Si, 2.5 % Cu) and is high. Source: crack sensitivity curves of the Aluminum
 * Association and AWS after Dudas and Collins (1966), from memory; thresholds assumed from them.
 * Restraint and weld shape are not in it.
 */
public enum CrackTendency {
  LOW("low"),
  MODERATE("moderate"),
  HIGH("high");

  private static final double SILICON_PER_MAGNESIUM = 1 / 1.73;
  private static final double NEARLY_PURE = 0.3;

  private final String label;

  CrackTendency(String label) {
    this.label = label;
  }

  /** The word used in results. */
  public String label() {
    return label;
  }

  /** The tendency of a weld metal. */
  public static CrackTendency of(Composition metal) {
    double silicon = metal.of(Element.SI);
    double magnesium = metal.of(Element.MG);
    double copper = metal.of(Element.CU);
    if (copper >= 1) {
      return copper >= 5 ? LOW : copper > 3.5 ? MODERATE : HIGH;
    }
    double freeSilicon = silicon - magnesium * SILICON_PER_MAGNESIUM;
    double freeMagnesium = magnesium - silicon / SILICON_PER_MAGNESIUM;
    if (freeSilicon >= 2 || freeMagnesium >= 3) {
      return LOW;
    }
    if (freeSilicon >= 1.2 || freeMagnesium >= 2) {
      return MODERATE;
    }
    return silicon < NEARLY_PURE && magnesium < NEARLY_PURE ? MODERATE : HIGH;
  }
}
