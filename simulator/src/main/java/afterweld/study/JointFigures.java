package afterweld.study;

/**
 * The strengths of one finished joint, dressed flush, in its last state.
 *
 * @param proof the yield that is judged, Pa; NaN if not predicted
 * @param tensile of the joint, Pa; NaN if not predicted
 * @param hardness of the softest place, HV; NaN if not predicted
 */
public record JointFigures(double proof, double tensile, double hardness) {
  /** Nothing is claimed. */
  public static final JointFigures NONE = new JointFigures(Double.NaN, Double.NaN, Double.NaN);

  double of(Aim.Strength strength) {
    return switch (strength) {
      case PROOF -> proof;
      case TENSILE -> tensile;
      case HARDNESS -> hardness;
    };
  }
}
