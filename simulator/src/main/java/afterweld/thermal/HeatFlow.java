package afterweld.thermal;

/**
 * Which temperature field a weld needs: the steady one of a wide plate, or the transient one of a
 * small part in which the heat builds up.
 */
public enum HeatFlow {
  /** Long and steady, in plates. */
  PLATE("plate"),
  /** From start to end of the weld, in thin-walled parts of their own size. */
  SHELL("shell");

  private final String label;

  HeatFlow(String label) {
    this.label = label;
  }

  /** The name used in case files. */
  public String label() {
    return label;
  }

  /**
   * A choice and its reason.
   *
   * @param flow the field
   * @param reason a sentence
   * @param leavesHeatOut whether heat that builds up is known to be left out
   */
  public record Choice(HeatFlow flow, String reason, boolean leavesHeatOut) {
    /** A choice that leaves nothing out. */
    public Choice(HeatFlow flow, String reason) {
      this(flow, reason, false);
    }
  }
}
