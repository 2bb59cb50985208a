package afterweld.material;

/** The alloying elements a composition names, with their symbol. */
public enum Element {
  SI("Si"),
  FE("Fe"),
  CU("Cu"),
  MN("Mn"),
  MG("Mg"),
  CR("Cr"),
  ZN("Zn"),
  TI("Ti");

  private final String symbol;

  Element(String symbol) {
    this.symbol = symbol;
  }

  /** The chemical symbol, such as {@code Mg}. */
  public String symbol() {
    return symbol;
  }
}
