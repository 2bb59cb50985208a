package afterweld.choice;

/** How a requirement stands against a prediction with its error band. */
public enum Verdict {
  /** Even the low end of the band is not below what is asked. */
  MET("met"),
  /** The best estimate is below what is asked. */
  NOT_MET("not met"),
  /** Between: only a test coupon can tell. */
  UNCLEAR("unclear");

  private final String label;

  Verdict(String label) {
    this.label = label;
  }

  /** The word used in results. */
  public String label() {
    return label;
  }

  /** The worse of two: one miss spoils the whole, one doubt clouds it. */
  Verdict and(Verdict other) {
    if (this == NOT_MET || other == NOT_MET) {
      return NOT_MET;
    }
    return this == UNCLEAR || other == UNCLEAR ? UNCLEAR : MET;
  }
}
