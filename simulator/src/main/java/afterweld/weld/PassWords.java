package afterweld.weld;

import afterweld.quantity.OutputQuantity;
import afterweld.quantity.UnitSystem;
import afterweld.thermal.Pass;
import afterweld.thermal.PassHeat;
import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * A pass in a line for people: how it was welded and how much heat went in.
 *
 * @param units what it is written in
 */
public record PassWords(UnitSystem units) {
  private static final double KILO = 1e3;
  private static final double MILLIMETRES = 1e3;
  private static final double INCHES = 1 / 0.0254;
  private static final double MINUTE = 60;

  /**
   * The line.
   *
   * @param number of the pass, from 0
   */
  public String of(PassHeat heat, int number) {
    Pass pass = heat.pass();
    return pass.process().label()
        + " "
        + rounded(pass.current(), 0)
        + " A, "
        + rounded(pass.voltage(), 1)
        + " V, "
        + speed(pass.travelSpeed())
        + ", "
        + start(pass, number)
        + "; "
        + efficiency(heat)
        + "; heat into the metal "
        + heatInput(heat.netPower() / pass.travelSpeed());
  }

  private String start(Pass pass, int number) {
    return pass.pause().isPresent()
        ? "pause " + rounded(pass.pause().getAsDouble() / 60, 1) + " min"
        : (number == 0 ? "preheat " : "interpass ") + temperature(pass.startTemperature());
  }

  private String efficiency(PassHeat heat) {
    return "arc efficiency " + rounded(heat.efficiency(), 2) + efficiencyOrigin(heat);
  }

  private String efficiencyOrigin(PassHeat heat) {
    if (heat.calibratedBy().isPresent()) {
      boolean own = heat.pass().beadWidth().isPresent();
      String width = " from the bead width " + length(heat.calibratedBy().getAsDouble());
      return own ? width : width + " of an earlier pass";
    }
    if (heat.pass().efficiency().isPresent()) {
      return " as stated";
    }
    return ", the usual for the process ("
        + rounded(heat.efficiencyLow(), 2)
        + " to "
        + rounded(heat.efficiencyHigh(), 2)
        + "; a bead width would settle it)";
  }

  private String heatInput(double joulesPerMetre) {
    return units == UnitSystem.METRIC
        ? rounded(joulesPerMetre / KILO / MILLIMETRES, 2) + " kJ/mm"
        : rounded(joulesPerMetre / KILO / INCHES, 1) + " kJ/in";
  }

  private String speed(double metresPerSecond) {
    return units == UnitSystem.METRIC
        ? rounded(metresPerSecond * MILLIMETRES, 2) + " mm/s"
        : rounded(metresPerSecond * INCHES * MINUTE, 1) + " in/min";
  }

  private String length(double metres) {
    return OutputQuantity.DISTANCE.text(units, metres) + " " + units.lengthUnit();
  }

  private String temperature(double kelvin) {
    return OutputQuantity.PEAK_TEMPERATURE.text(units, kelvin) + " " + units.temperatureUnit();
  }

  private static String rounded(double value, int decimals) {
    return BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP).toPlainString();
  }
}
