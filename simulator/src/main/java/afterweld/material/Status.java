package afterweld.material;

/** How well a value of the library is supported, best first. */
public enum Status {
  READ("read"),
  SECOND_HAND("second-hand"),
  MEMORY("memory"),
  COMMON_PRACTICE("common practice"),
  COMPUTED("computed"),
  ASSUMED("assumed");

  private final String label;

  Status(String label) {
    this.label = label;
  }

  /** The word used in the data files and on screen. */
  public String label() {
    return label;
  }

  /**
   * The status that a data file names.
   *
   * @throws IllegalArgumentException if there is none of that name
   */
  public static Status of(String label) {
    for (Status status : values()) {
      if (status.label.equals(label)) {
        return status;
      }
    }
    throw new IllegalArgumentException("unknown status '" + label + "'");
  }
}
