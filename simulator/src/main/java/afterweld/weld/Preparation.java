package afterweld.weld;

/** How the edges are prepared. */
public enum Preparation {
  SQUARE("square"),
  SINGLE_V("single-v"),
  DOUBLE_V("double-v"),
  FILLET("fillet");

  private final String label;

  Preparation(String label) {
    this.label = label;
  }

  /** The name used in case files. */
  public String label() {
    return label;
  }
}
