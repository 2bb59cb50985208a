package afterweld.choice;

import afterweld.choice.answer.Verdict;

/**
 * One hard condition of a route: if it is not met the route is out, whatever else speaks for it.
 *
 * @param name what is looked at
 * @param state how it stands; an open question is not a pass
 * @param text a sentence with the numbers
 */
public record RouteConstraint(String name, State state, String text) {
  /** Name of the constraint on strength, which stands first. */
  static final String STRENGTH = "strength";

  /** How a constraint stands. */
  public enum State {
    MET("met"),
    NOT_MET("not met"),
    NEEDS_ANSWER("needs an answer");

    /** Where a coupon or a test piece decides, an answer is needed. */
    static State of(Verdict verdict) {
      return switch (verdict) {
        case MET -> MET;
        case LIKELY, OPEN -> NEEDS_ANSWER;
        case UNLIKELY, NOT_MET -> NOT_MET;
      };
    }

    private final String label;

    State(String label) {
      this.label = label;
    }

    /** The words used in results. */
    public String label() {
      return label;
    }
  }
}
