package afterweld.section;

/**
 * A weld around a tube.
 *
 * @param diameter m
 * @param position where on the circumference the section is taken
 */
public record Ring(double diameter, Position position) {
  /** Where on the circumference the section is taken. */
  public enum Position {
    WORST("worst"),
    START("start"),
    HALF_LAP("half lap"),
    LAP_END("lap end");

    private final String label;

    Position(String label) {
      this.label = label;
    }

    /** The name used in case files. */
    public String label() {
      return label;
    }
  }
}
