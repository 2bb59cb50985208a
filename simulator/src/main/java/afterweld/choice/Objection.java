package afterweld.choice;

/**
 * Something that stands against a heat treatment as it is ordered.
 *
 * @param severity how much
 * @param text a sentence for people: what is ordered, what is allowed, and its source
 */
public record Objection(Severity severity, String text) {
  /** From the gravest on. */
  public enum Severity {
    /** It must not be run: nothing is computed from it. */
    REFUSED("refused"),
    /** It is computed, and no command takes it for the best or for done. */
    OBJECTED("objected"),
    /** It may be run; the reader must know. */
    NOTED("noted");

    private final String label;

    Severity(String label) {
      this.label = label;
    }

    /** The word used in results. */
    public String label() {
      return label;
    }
  }

  /** Checks that it says something. */
  public Objection {
    if (text.isBlank()) {
      throw new IllegalArgumentException("an objection without a sentence");
    }
  }

  static Objection refused(String text) {
    return new Objection(Severity.REFUSED, text);
  }

  static Objection objected(String text) {
    return new Objection(Severity.OBJECTED, text);
  }

  static Objection noted(String text) {
    return new Objection(Severity.NOTED, text);
  }
}
