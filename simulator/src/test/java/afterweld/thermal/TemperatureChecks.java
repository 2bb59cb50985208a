package afterweld.thermal;

import static afterweld.quantity.UnitSystem.ZERO_CELSIUS;

import java.util.List;
import java.util.OptionalDouble;

/** Peak temperatures of the plate field against values from elsewhere. */
public final class TemperatureChecks {
  private TemperatureChecks() {}

  /**
   * Two answers to one question.
   *
   * @param reference °C
   * @param computed °C
   */
  public record Peak(double reference, double computed) {}

  /**
   * Sections computed before by another program of the same equations: line source, 10 W/(m² K) per
   * face without radiation, losses related to 200 W/(m K).
   */
  public static List<Peak> sections() {
    return Table.read("section_peaks.csv").stream().map(TemperatureChecks::peak).toList();
  }

  static Peak peak(Table.Row row) {
    double thickness = row.millimetres("thickness_mm");
    WeldLegs legs = WeldLegs.plate(thickness, Metals.ALUMINIUM_6061.withLossConductivity(200));
    SurfaceLoss loss = new SurfaceLoss(10, false, 20 + ZERO_CELSIUS);
    PassHeat heat = HeatInput.into(legs, loss).of(pass(row, thickness));
    WeldTimeline timeline = WeldTimeline.of(legs, 1, List.of(heat), loss, thickness / 2);
    double computed =
        timeline.at(row.millimetres("distance_mm")).history().peakTemperature() - ZERO_CELSIUS;
    return new Peak(row.number("peak_temperature_C"), computed);
  }

  static Pass pass(Table.Row row, double thickness) {
    return new Pass(
        WeldingProcess.GTAW_AC,
        row.number("net_power_W") / 10,
        15,
        row.millimetres("travel_speed_mm_s"),
        row.kelvin("preheat_C"),
        OptionalDouble.of(row.millimetres("bead_width_mm")),
        OptionalDouble.of(thickness),
        OptionalDouble.empty(),
        0,
        OptionalDouble.empty());
  }

  /**
   * Peak temperature in a steel sheet of 5 mm with 720 J/mm net (AWS Welding Handbook vol. 1, from
   * memory), °C.
   *
   * @param outside distance outside the fusion line, m
   */
  public static double steelSheet(double outside) {
    PlateField sheet = steelSheet();
    return sheet.peakTemperature(sheet.fusionHalfWidth() + outside) - ZERO_CELSIUS;
  }

  static PlateField steelSheet() {
    double conductivity = 28;
    double diffusivity = conductivity / 4.4e6;
    return PlateField.of(
        LegGeometry.plate(5e-3, 5e-3, 2.5e-3),
        Metals.constant(conductivity, diffusivity, 1510, 1510),
        SurfaceLoss.none(298.15),
        new PlateField.Heat(720e3 * 5e-3, 5e-3, 25 + ZERO_CELSIUS));
  }
}
