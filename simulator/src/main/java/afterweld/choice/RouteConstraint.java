package afterweld.choice;

/**
 * One hard condition of a route: if it is not met the route is out, whatever else speaks for it.
 *
 * @param name what is looked at
 * @param state how it stands; an open question is not a pass
 * @param text a sentence with the numbers
 */
public record RouteConstraint(String name, State state, String text) {
  /** How a constraint stands. */
  public enum State {
    MET("met"),
    NOT_MET("not met"),
    NEEDS_ANSWER("needs an answer");

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
