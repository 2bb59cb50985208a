package afterweld.weld;

/** How the parts meet. */
public enum Joint {
  BUTT("butt"),
  LAP("lap"),
  TEE("tee"),
  CORNER("corner"),
  SOCKET("socket"),
  BEAD("bead");

  private final String label;

  Joint(String label) {
    this.label = label;
  }

  /** The name used in case files. */
  public String label() {
    return label;
  }
}
