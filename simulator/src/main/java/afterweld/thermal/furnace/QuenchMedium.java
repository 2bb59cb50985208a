package afterweld.thermal.furnace;

/** What a part is quenched in. */
public enum QuenchMedium {
  WATER("water"),
  POLYMER("polymer"),
  SPRAY("spray"),
  FORCED_AIR("forced-air"),
  STILL_AIR("still-air"),
  BOILING_WATER("boiling-water");

  private final String label;

  QuenchMedium(String label) {
    this.label = label;
  }

  /** The name used in case files. */
  public String label() {
    return label;
  }
}
