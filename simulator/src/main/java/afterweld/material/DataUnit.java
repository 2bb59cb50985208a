package afterweld.material;

import afterweld.quantity.UnitSystem;

/** Units of the data files, and how a value in one becomes SI. Composition stays in wt%. */
enum DataUnit {
  WEIGHT_PERCENT("wt%", 1, 0),
  CELSIUS("°C", 1, UnitSystem.ZERO_CELSIUS),
  GRAM_PER_CUBIC_CENTIMETRE("g/cm³", 1e3, 0),
  KILOJOULE_PER_KILOGRAM("kJ/kg", 1e3, 0),
  WATT_PER_METRE_KELVIN("W/(m K)", 1, 0),
  PER_KELVIN("1/K", 1, 0),
  MEGAPASCAL("MPa", 1e6, 0),
  HOUR("h", 3600, 0),
  RATING("1 best to 4 poor", 1, 0);

  private final String symbol;
  private final double factor;
  private final double offset;

  DataUnit(String symbol, double factor, double offset) {
    this.symbol = symbol;
    this.factor = factor;
    this.offset = offset;
  }

  String symbol() {
    return symbol;
  }

  double toSi(double value) {
    return value * factor + offset;
  }
}
