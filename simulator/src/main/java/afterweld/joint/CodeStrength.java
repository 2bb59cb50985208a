package afterweld.joint;

import afterweld.quantity.Check;

/**
 * Characteristic strengths that a design code gives a base metal and its heat-affected zone. They
 * are minima of a code; predicted strengths are means and don't belong here.
 *
 * @param proof of the base, Pa
 * @param tensile of the base, Pa
 * @param hazProof of the heat-affected zone, Pa, at most {@code proof}
 * @param hazTensile of the heat-affected zone, Pa, at most {@code tensile}
 */
public record CodeStrength(double proof, double tensile, double hazProof, double hazTensile) {
  /** Checks the order of the strengths. */
  public CodeStrength {
    SliceMetal.checkStrengths(proof, tensile);
    SliceMetal.checkStrengths(hazProof, hazTensile);
    Check.within("proof stress of the heat-affected zone", hazProof, 0, proof, "Pa");
    Check.within("tensile strength of the heat-affected zone", hazTensile, 0, tensile, "Pa");
  }
}
