package afterweld.choice.answer;

/**
 * Something that stands against a case as it is ordered.
 *
 * @param severity how much
 * @param subject what it stands against
 * @param text a sentence for people: what is ordered, what is allowed, and its source
 */
public record Objection(Severity severity, Subject subject, String text) {
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

  /** What it stands against. */
  public enum Subject {
    FILLER("the choice of filler"),
    HEAT_TREATMENT("the heat treatment as ordered");

    private final String label;

    Subject(String label) {
      this.label = label;
    }

    /** As a sentence names it. */
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

  /** What cannot be done. */
  public static Objection refused(String text) {
    return new Objection(Severity.REFUSED, Subject.HEAT_TREATMENT, text);
  }

  /** What speaks against doing it. */
  public static Objection objected(String text) {
    return new Objection(Severity.OBJECTED, Subject.HEAT_TREATMENT, text);
  }

  /** What is good to know. */
  public static Objection noted(String text) {
    return new Objection(Severity.NOTED, Subject.HEAT_TREATMENT, text);
  }
}
