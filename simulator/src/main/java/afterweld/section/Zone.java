package afterweld.section;

/** Zones across a weld, from the weld outwards. */
public enum Zone {
  FUSION("fusion"),
  PARTIALLY_MELTED("partially melted"),
  SOLUTIONIZED("solutionized"),
  ANNEALED("annealed"),
  OVERAGED("overaged"),
  RECRYSTALLIZED("recrystallized"),
  RECOVERED("recovered"),
  BASE("base");

  private final String label;

  Zone(String label) {
    this.label = label;
  }

  /** The trade's word for it. */
  public String label() {
    return label;
  }
}
