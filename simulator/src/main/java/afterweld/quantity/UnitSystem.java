package afterweld.quantity;

/** The units results are shown in: millimetres, °C, MPa or inches, °F, ksi. */
public enum UnitSystem {
  METRIC("mm", "°C", "MPa"),
  US("in", "°F", "ksi");

  private static final double INCH = 0.0254;
  private static final double KSI = 6.894757293168361e6;
  private static final double NEWTON_PER_KILONEWTON = 1e3;
  private static final double NEWTON_PER_KIP = 4448.2216152605;

  /** 0 °C in K. */
  public static final double ZERO_CELSIUS = 273.15;

  /**
   * The trade's whole °F and whole °C of one temperature differ by no more than this, K (rounding).
   */
  public static final double ROUNDED = 0.6;

  private final String lengthUnit;
  private final String temperatureUnit;
  private final String stressUnit;

  UnitSystem(String lengthUnit, String temperatureUnit, String stressUnit) {
    this.lengthUnit = lengthUnit;
    this.temperatureUnit = temperatureUnit;
    this.stressUnit = stressUnit;
  }

  /** Unit of lengths. */
  public String lengthUnit() {
    return lengthUnit;
  }

  /** Unit of temperatures. */
  public String temperatureUnit() {
    return temperatureUnit;
  }

  /** Unit of stresses. */
  public String stressUnit() {
    return stressUnit;
  }

  /** A length given in m. */
  public double length(double metres) {
    return this == METRIC ? metres * 1e3 : metres / INCH;
  }

  /** A temperature given in K. */
  public double temperature(double kelvin) {
    double celsius = kelvin - ZERO_CELSIUS;
    return this == METRIC ? celsius : celsius * 1.8 + 32;
  }

  /** A difference of temperature given in K. */
  public double temperatureDifference(double kelvin) {
    return this == METRIC ? kelvin : kelvin * 1.8;
  }

  /** Unit of forces. */
  public String forceUnit() {
    return this == METRIC ? "kN" : "kip";
  }

  /** A force given in N. */
  public double force(double newton) {
    return newton / (this == METRIC ? NEWTON_PER_KILONEWTON : NEWTON_PER_KIP);
  }

  /** A stress given in Pa. */
  public double stress(double pascal) {
    return this == METRIC ? pascal * 1e-6 : pascal / KSI;
  }
}
