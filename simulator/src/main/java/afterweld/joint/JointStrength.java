package afterweld.joint;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a joint carries in one state when it is pulled across the weld.
 *
 * @param state index of the state in the profile
 * @param bead how the bead is left
 * @param gauge gauge length, m
 * @param middle the pull with the best estimates; empty if a strength is not predicted
 * @param low the pull with the low end of every station's band
 * @param lowestYield lowest local yield of all stations, Pa; NaN if one is not predicted
 */
public record JointStrength(
    int state,
    Bead bead,
    double gauge,
    Optional<CrossWeldTension> middle,
    Optional<CrossWeldTension> low,
    double lowestYield) {

  /** What stands in place of values that cannot be given. */
  public static final String NOT_PREDICTED = "the strength of the weld metal is not predicted";

  /** How the bead is left. */
  public enum Bead {
    FLUSH("flush"),
    AS_DEPOSITED("as deposited");

    private final String label;

    Bead(String label) {
      this.label = label;
    }

    /** The words used in results. */
    public String label() {
      return label;
    }
  }

  /** Joint proof stress over the gauge, Pa; empty with the reason in {@link #proofNote}. */
  public OptionalDouble proof() {
    return middle.map(CrossWeldTension::proof).orElse(OptionalDouble.empty());
  }

  /** Why there is no proof stress; empty if there is one. */
  public String proofNote() {
    return middle.map(CrossWeldTension::proofNote).orElse(NOT_PREDICTED);
  }

  /** Joint tensile strength, Pa. */
  public OptionalDouble tensile() {
    return middle.map(pull -> OptionalDouble.of(pull.tensile())).orElse(OptionalDouble.empty());
  }

  /** Zone it fails in; two if the next is within 2 %. */
  public List<String> failsIn() {
    return middle.map(pull -> pull.failure().zones()).orElse(List.of());
  }
}
