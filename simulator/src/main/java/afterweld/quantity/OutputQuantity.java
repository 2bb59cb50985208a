package afterweld.quantity;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * The quantities that results show: one list for table heads, CSV headers, JSON keys and chart
 * axes, so that a number always carries the same name and unit. Values inside are SI and kelvin.
 */
public enum OutputQuantity {
  DISTANCE("distance", "distance from weld centre", "mm", "in"),
  PEAK_TEMPERATURE("peak_temperature", "peak temperature", "°C", "°F"),
  HARDNESS("hardness", "hardness", "HV", "HV"),
  YIELD("yield", "yield strength", "MPa", "ksi"),
  TENSILE("tensile", "tensile strength", "MPa", "ksi");

  private final String key;
  private final String title;
  private final String metricUnit;
  private final String usUnit;

  OutputQuantity(String key, String title, String metricUnit, String usUnit) {
    this.key = key;
    this.title = title;
    this.metricUnit = metricUnit;
    this.usUnit = usUnit;
  }

  /** Name in words. */
  public String title() {
    return title;
  }

  /** Unit as printed. */
  public String unit(UnitSystem units) {
    return units == UnitSystem.METRIC ? metricUnit : usUnit;
  }

  /** Key with its unit, such as {@code yield_MPa} or {@code peak_temperature_C}. */
  public String key(UnitSystem units) {
    return key + "_" + unit(units).replace("°", "");
  }

  /** Name with unit for an axis or a column head. */
  public String label(UnitSystem units) {
    return title + " (" + unit(units) + ")";
  }

  /** A value from SI and kelvin into the unit of the system. */
  public double in(UnitSystem units, double si) {
    return switch (this) {
      case DISTANCE -> units.length(si);
      case PEAK_TEMPERATURE -> units.temperature(si);
      case HARDNESS -> si;
      case YIELD, TENSILE -> units.stress(si);
    };
  }

  /**
   * A value from SI and kelvin as people read it, without its unit: as many decimals as the model
   * is worth, a dash where it is not predicted.
   */
  public String text(UnitSystem units, double si) {
    return text(units, si, decimals(units));
  }

  /**
   * The same with as many decimals more as it takes to tell the value from another, two at most: so
   * that a value that falls short by a hair is not shown as equal.
   */
  public String textBeside(UnitSystem units, double si, double other) {
    int decimals = decimals(units);
    int most = decimals + 2;
    while (decimals < most && text(units, si, decimals).equals(text(units, other, decimals))) {
      decimals++;
    }
    return text(units, si, decimals);
  }

  private String text(UnitSystem units, double si, int decimals) {
    if (!Double.isFinite(si)) {
      return "–";
    }
    return BigDecimal.valueOf(in(units, si))
        .setScale(decimals, RoundingMode.HALF_UP)
        .toPlainString();
  }

  private int decimals(UnitSystem units) {
    boolean metric = units == UnitSystem.METRIC;
    return switch (this) {
      case DISTANCE -> metric ? 1 : 2;
      case PEAK_TEMPERATURE, HARDNESS -> 0;
      case YIELD, TENSILE -> metric ? 0 : 1;
    };
  }
}
