package afterweld.strength;

import afterweld.quantity.Check;

/**
 * What a yield strength is made of, all in Pa.
 *
 * @param solidSolution pure metal and solute in solution
 * @param clusters clusters of natural ageing
 * @param precipitates needles and coarse precipitates
 * @param cast eutectic silicon; 0 in wrought metal
 */
public record StrengthBreakdown(
    double solidSolution, double clusters, double precipitates, double cast) {
  /** Refuses what it cannot be. */
  public StrengthBreakdown {
    Check.notNegative("part of the yield", solidSolution, "Pa");
    Check.notNegative("part of the yield", clusters, "Pa");
    Check.notNegative("part of the yield", precipitates, "Pa");
    Check.notNegative("part of the yield", cast, "Pa");
  }

  /** The sum: 0.2 % proof stress, Pa. */
  public double total() {
    return solidSolution + clusters + precipitates + cast;
  }
}
