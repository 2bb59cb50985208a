package afterweld.section.soundness;

import java.util.List;
import java.util.OptionalDouble;

/**
 * Whether a weld is a joint at all: strength belongs to metal that is joined from face to back. A
 * weld that is not sound, and one whose strength is not computed, has no strength anywhere: its
 * reasons stand in place of the values.
 *
 * @param state how it stands
 * @param reasons sentences: why it is not sound or not computed; empty where it is sound
 * @param remedies sentences: what would help, in the order in which a welder tries it
 * @param fusedShare share of the thickness that is fused, 0 to 1, where only the fused part of a
 *     weld that is not sound can carry; else empty
 */
public record Soundness(
    State state, List<String> reasons, List<String> remedies, OptionalDouble fusedShare) {

  /** A weld that nothing speaks against. */
  public static final Soundness SOUND =
      new Soundness(State.SOUND, List.of(), List.of(), OptionalDouble.empty());

  /** How a weld stands. */
  public enum State {
    /** A joint: its strength is computed. */
    SOUND("sound"),
    /** No joint: never met, whatever is asked. */
    NOT_SOUND("not sound"),
    /** Fused and filled, but with weld metal that is brittle: never met; another filler may do. */
    BRITTLE("not sound"),
    /** Perhaps a good one, but its strength is not computed. */
    NOT_COMPUTED("not computed");

    private final String label;

    State(String label) {
      this.label = label;
    }

    /** The words used in results. */
    public String label() {
      return label;
    }
  }

  /** Copies the lists and checks that all but a sound weld say why. */
  public Soundness {
    reasons = List.copyOf(reasons);
    remedies = List.copyOf(remedies);
    if ((state == State.SOUND) != reasons.isEmpty()) {
      throw new IllegalArgumentException(state + " with " + reasons.size() + " reasons");
    }
  }

  /** Whether it is a joint whose strength is computed. */
  public boolean sound() {
    return state == State.SOUND;
  }

  /** Whether it is no joint. */
  public boolean notSound() {
    return state == State.NOT_SOUND || state == State.BRITTLE;
  }

  /** Whether fillers can be compared on it by the strength of their weld metal. */
  public boolean comparesFillers() {
    return sound() || state == State.BRITTLE;
  }

  /**
   * Sentences in place of a strength: {@code not sound. The root is not fused: …}; empty where it
   * is sound.
   */
  public String note() {
    return sound() ? "" : state.label() + ". " + String.join(" ", reasons);
  }
}
