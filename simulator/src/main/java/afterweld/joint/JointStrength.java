package afterweld.joint;

import afterweld.quantity.Check;
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
 * @param high the pull with the high end of every station's band
 * @param lowestYield lowest local yield of all stations, Pa; NaN if one is not predicted
 * @param lowestYieldLow low end of its band, Pa
 * @param lowestYieldHigh high end of its band, Pa
 * @param softestInGauge whether metal as soft as the softest lies within the gauge
 * @param withheld why no value is given although the metal's strengths are known; empty where
 *     values are given or the metal's are not known
 */
public record JointStrength(
    int state,
    Bead bead,
    double gauge,
    Optional<CrossWeldTension> middle,
    Optional<CrossWeldTension> low,
    Optional<CrossWeldTension> high,
    double lowestYield,
    double lowestYieldLow,
    double lowestYieldHigh,
    boolean softestInGauge,
    String withheld) {
  /** What stands in place of values that cannot be given. */
  public static final String NOT_PREDICTED = "not predicted, since one of its zones is not";

  /** Refuses what it cannot be. */
  public JointStrength {
    Check.notNegative("state", state, "");
    Check.positive("gauge", gauge, "m");
  }

  /** A joint of which nothing is claimed. */
  public static JointStrength withheld(int state, Bead bead, double gauge, String why) {
    return new JointStrength(
        state,
        bead,
        gauge,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Double.NaN,
        Double.NaN,
        Double.NaN,
        true,
        why);
  }

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
    return middle.map(CrossWeldTension::proofNote).orElse(note());
  }

  /** Why no value is given; empty if there are values. */
  public String note() {
    return middle.isPresent() ? "" : withheld.isEmpty() ? NOT_PREDICTED : withheld;
  }

  /**
   * The yield a requirement is judged on, Pa: the joint proof over the gauge, or the lowest local
   * yield where the softest metal lies outside the gauge and the part yields there first.
   */
  public OptionalDouble decidingYield() {
    return deciding(middle, lowestYield);
  }

  /** Which yield that is where it is not the joint proof; empty where it is, or there is none. */
  public String decidingNote() {
    return softestInGauge || middle.isEmpty()
        ? ""
        : "The softest metal lies outside the gauge: the lowest local yield decides, not the"
            + " proof.";
  }

  /** The same at the low end of the band, Pa. */
  public OptionalDouble decidingYieldLow() {
    return deciding(low, lowestYieldLow);
  }

  /** The same at the high end of the band, Pa. */
  public OptionalDouble decidingYieldHigh() {
    return deciding(high, lowestYieldHigh);
  }

  private OptionalDouble deciding(Optional<CrossWeldTension> pull, double local) {
    OptionalDouble proof = pull.map(CrossWeldTension::proof).orElse(OptionalDouble.empty());
    if (softestInGauge || proof.isEmpty()) {
      return proof;
    }
    return OptionalDouble.of(Math.min(proof.getAsDouble(), local));
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
