package afterweld.section;

/** How many stations a section is computed at. */
enum StationDensity {
  /** A step of 14 K in peak temperature, and stations added twice where neighbours differ. */
  FULL(14, true),
  /**
   * A step of 56 K, stations added twice where neighbours differ in the last state and beside its
   * lowest, one run only: a quarter of the work.
   */
  THIN(56, false);

  private final double step;
  private final boolean full;

  StationDensity(double step, boolean full) {
    this.step = step;
    this.full = full;
  }

  /** Difference of peak temperature between two stations at first, K. */
  double step() {
    return step;
  }

  /**
   * Whether every state counts, the middle of the weld has stations of its own, and the ends of
   * default inputs are run as well.
   */
  boolean full() {
    return full;
  }
}
