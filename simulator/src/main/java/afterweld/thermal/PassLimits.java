package afterweld.thermal;

import static afterweld.quantity.UnitSystem.ZERO_CELSIUS;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Which passes the field takes, and which it takes with a word of caution. */
final class PassLimits {
  /** Thickest plate that was checked, m: 25 mm in one trade, an inch in the other. */
  private static final double INCH = 25.4e-3 + 1e-9;

  private static final double MM = 1e-3;

  private final PassHeat heat;
  private final Pass pass;
  private final WeldLegs legs;
  private final List<ThermalWarning> warnings = new ArrayList<>();

  private PassLimits(PassHeat heat, WeldLegs legs) {
    this.heat = heat;
    this.pass = heat.pass();
    this.legs = legs;
  }

  /**
   * Refuses what cannot be a weld of aluminium.
   *
   * @throws HeatInputException naming the first number that is out of range
   */
  static void check(Pass pass, WeldLegs legs) {
    between("travel_speed", pass.travelSpeed() / MM, "mm/s", 0.3, 40);
    between("arc power", pass.arcPower(), "W", 0, 20000);
    between("start temperature", celsius(pass.startTemperature()), "°C", -20, hottest(legs));
    pass.beadWidth()
        .ifPresent(width -> between("bead_width", width / MM, "mm", 0.1, widest(legs) / MM));
    pass.penetration()
        .ifPresent(
            depth -> between("penetration", depth / MM, "mm", 0, legs.thickest() / MM + 1e-9));
  }

  /** Widest bead that can be one, m: twenty thicknesses and 20 mm. */
  static double widest(WeldLegs legs) {
    return 20 * legs.thinnest() + 20 * MM;
  }

  private static void between(String field, double value, String unit, double low, double high) {
    if (!(value >= low && value <= high)) {
      String expected = String.format(Locale.ROOT, "%.4g to %.4g %s", low, high, unit);
      throw HeatInputException.outside(field, value, unit, expected);
    }
  }

  private static double celsius(double kelvin) {
    return kelvin - ZERO_CELSIUS;
  }

  /** A part may be preheated to nine tenths of its solidus on the Celsius scale. */
  private static double hottest(WeldLegs legs) {
    return legs.legs().stream()
        .mapToDouble(leg -> 0.9 * celsius(leg.material().solidus()))
        .min()
        .orElseThrow();
  }

  static List<ThermalWarning> warnings(PassHeat heat, WeldLegs legs) {
    PassLimits limits = new PassLimits(heat, legs);
    limits.efficiency();
    limits.range();
    limits.shape();
    limits.pool();
    limits.widths();
    return List.copyOf(limits.warnings);
  }

  private void warn(boolean when, String code, String text, Object... numbers) {
    if (when) {
      warnings.add(new ThermalWarning(code, String.format(Locale.ROOT, text, numbers)));
    }
  }

  private void efficiency() {
    double value = heat.efficiency();
    warn(
        value < 0.4 || value > 0.85,
        "efficiency-unusual",
        "Arc efficiency %.2f is unusual: check amps, volts, travel speed and bead width.",
        value);
  }

  private void range() {
    double speed = pass.travelSpeed() / MM;
    double start = celsius(pass.startTemperature());
    boolean thickness = legs.thinnest() < 1 * MM || legs.thickest() > INCH;
    boolean power = heat.netPower() < 500 || heat.netPower() > 8000;
    boolean temperature = start < 20 - 1e-6 || start > 200;
    warn(
        thickness || speed < 1 || speed > 15 || power || temperature,
        "heat-outside-checked-range",
        "Temperatures were checked for 1 to 25 mm (0.04 to 1 in), 1 to 15 mm/s (2.4 to 35 in/min),"
            + " 0.5 to 8 kW into the metal and 20 to 200 °C (68 to 390 °F) before the pass; this"
            + " pass has %.0f W, %.1f mm/s (%.1f in/min), %.0f °C (%.0f °F), in %.1f to %.1f mm.",
        heat.netPower(),
        speed,
        speed * 60 / 25.4,
        start,
        start * 1.8 + 32,
        legs.thinnest() / MM,
        legs.thickest() / MM);
  }

  private void shape() {
    double ratio = legs.thickest() / legs.thinnest();
    warn(
        ratio > 2,
        "thickness-ratio",
        "Thicknesses differ %.1f times: the temperature rise beside the weld is uncertain by 15 %%.",
        ratio);
    warn(
        pass.travelSpeed() * legs.thinnest() < 10e-6,
        "thin-and-slow",
        "So thin and slow a weld loses much heat to the air and to fixtures: the width of the"
            + " heat-affected zone depends on how the part lies.");
    warn(
        pass.beadWidth().orElse(2 * heat.fusionHalfWidth()) > 4 * legs.thinnest(),
        "bead-wide",
        "The bead is more than four times as wide as the plate is thick.");
  }

  private void pool() {
    double peclet =
        legs.legs().stream()
            .mapToDouble(
                leg ->
                    MissingHeat.peclet(heat.fusionHalfWidth(), leg.material(), pass.travelSpeed()))
            .max()
            .orElseThrow();
    warn(
        peclet > 0.4,
        "pool-wide-and-fast",
        "The pool is wide for so fast a weld: temperatures right beside the fusion line are"
            + " unchecked.");
  }

  private void widths() {
    warn(
        legs.narrow(pass.travelSpeed()),
        "narrow-legs",
        "The legs end so near the weld that their heat builds up along it: temperatures far from"
            + " the weld are rough.");
  }
}
