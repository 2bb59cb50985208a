package afterweld.casefile;

import afterweld.quantity.UnitSystem;
import afterweld.strength.HardnessScale;
import java.util.List;
import java.util.Optional;

/**
 * What a quantity of a case file measures, with the units it may be written in. Inside, everything
 * is SI and kelvin; angles are radians, shares are 0 to 1, contents are wt%, hardness is HV.
 *
 * <p>The inch is 25.4 mm and the pound-force per square inch 6894.757 Pa, both exact by definition
 * (international yard and pound, 1959, with the standard acceleration of fall). Brinell hardness
 * (500 kgf, 10 mm) and Rockwell B go through the table that results are shown with.
 */
enum Dimension {
  LENGTH(
      "a length",
      Unit.part("mm", 1e3),
      Unit.part("cm", 100),
      Unit.of("m", 1),
      Unit.of("in", 0.0254, "\"", "inch", "inches"),
      Unit.of("ft", 0.3048, "foot", "feet")),
  AREA(
      "an area",
      Unit.part("mm²", 1e6, "sq mm"),
      Unit.part("cm²", 1e4, "sq cm"),
      Unit.of("in²", 0.0254 * 0.0254, "sq in")),
  TEMPERATURE(
      "a temperature",
      Unit.shifted("°C", 1, UnitSystem.ZERO_CELSIUS, "C", "Celsius"),
      Unit.shifted("°F", 5 / 9.0, 459.67, "F", "Fahrenheit"),
      Unit.of("K", 1, "kelvin")),
  TEMPERATURE_DIFFERENCE(
      "a difference of temperature", Unit.of("K", 1, "°C", "C"), Unit.part("°F", 1.8, "F")),
  TIME(
      "a time",
      Unit.of("s", 1, "sec", "second", "seconds"),
      Unit.of("min", 60, "minute", "minutes"),
      Unit.of("h", 3600, "hr", "hrs", "hour", "hours"),
      Unit.of("days", 86_400, "d", "day")),
  SPEED(
      "a speed",
      Unit.part("mm/s", 1e3, "mm/sec"),
      Unit.part("mm/min", 60e3),
      Unit.part("cm/min", 6e3),
      Unit.part("m/min", 60),
      Unit.of("in/min", 0.0254 / 60, "ipm", "\"/min", "inch/min", "inches/min")),
  CURRENT("a current", Unit.of("A", 1, "amp", "amps"), Unit.of("kA", 1000)),
  VOLTAGE("a voltage", Unit.of("V", 1, "volt", "volts")),
  STRESS(
      "a stress",
      Unit.of("MPa", 1e6, "N/mm²"),
      Unit.of("ksi", 6.894757293168361e6),
      Unit.of("psi", 6.894757293168361e3)),
  PRESSURE(
      "a pressure",
      Unit.of("bar", 1e5),
      Unit.of("psi", 6.894757293168361e3),
      Unit.of("ksi", 6.894757293168361e6),
      Unit.of("MPa", 1e6)),
  HARDNESS(
      "a hardness",
      Unit.of("HV", 1),
      new Unit(
          "HB",
          brinell -> HardnessScale.vickersFromBrinell(brinell).value(),
          vickers -> HardnessScale.brinell(vickers).value(),
          List.of(),
          ""),
      new Unit(
          "HRB",
          rockwell -> HardnessScale.vickersFromRockwellB(rockwell).orElse(Double.NaN),
          vickers -> HardnessScale.rockwellB(vickers).orElse(Double.NaN),
          List.of("HRBW"),
          HardnessScale.ROCKWELL_REACH)),
  TEMPERATURE_RATE(
      "a rate of temperature",
      Unit.of("K/s", 1, "°C/s", "C/s"),
      Unit.part("K/min", 60, "°C/min", "C/min"),
      Unit.part("K/h", 3600, "°C/h", "C/h", "K/hr", "°C/hr", "C/hr"),
      Unit.part("°F/s", 1.8, "F/s"),
      Unit.part("°F/min", 1.8 * 60, "F/min"),
      Unit.part("°F/h", 1.8 * 3600, "F/h", "°F/hr", "F/hr")),
  SHARE("a share", Unit.part("%", 100, "percent", "pct")),
  CONTENT("a content by weight", Unit.of("%", 1, "wt%", "wt.%", "% wt")),
  ANGLE("an angle", Unit.of("deg", Math.PI / 180, "°", "degrees")),
  RATIO("a number without a unit", Unit.of("", 1));

  private final String words;
  private final List<Unit> units;

  Dimension(String words, Unit... units) {
    this.words = words;
    this.units = List.of(units);
  }

  /** What it is, as a message says it. */
  String words() {
    return words;
  }

  /** The names of the units it may be written in. */
  List<String> unitNames() {
    return units.stream().map(Unit::name).toList();
  }

  /** The unit that a text names. */
  Optional<Unit> unit(String written) {
    return units.stream().filter(unit -> unit.isWritten(written)).findFirst();
  }

  /** Whether it is a plain number. */
  boolean unitless() {
    return this == RATIO;
  }
}
