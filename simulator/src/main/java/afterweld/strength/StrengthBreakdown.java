package afterweld.strength;

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

  /** The sum: 0.2 % proof stress, Pa. */
  public double total() {
    return solidSolution + clusters + precipitates + cast;
  }
}
