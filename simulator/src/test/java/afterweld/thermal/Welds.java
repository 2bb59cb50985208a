package afterweld.thermal;

import static afterweld.quantity.UnitSystem.ZERO_CELSIUS;

import java.util.OptionalDouble;

/** Passes and heats for the tests. */
public final class Welds {
  public static final double ROOM = 20 + ZERO_CELSIUS;

  private Welds() {}

  /** A pass of 200 A and 15 V at 3 mm/s from 20 °C that says nothing of its heat. */
  public static Pass plain() {
    return pass(200, 3e-3, ROOM, OptionalDouble.empty(), OptionalDouble.empty());
  }

  public static Pass pass(
      double current, double speed, double start, OptionalDouble bead, OptionalDouble penetration) {
    return new Pass(
        WeldingProcess.GTAW_AC,
        current,
        15,
        speed,
        start,
        bead,
        penetration,
        OptionalDouble.empty(),
        0,
        OptionalDouble.empty());
  }

  public static Pass withBead(double width) {
    return pass(105, 3e-3, ROOM, OptionalDouble.of(width), OptionalDouble.empty());
  }

  static Pass startingAt(Pass pass, double start) {
    return changed(pass, start, 0, OptionalDouble.empty());
  }

  public static Pass changed(Pass pass, double start, double offset, OptionalDouble pause) {
    return new Pass(
        pass.process(),
        pass.current(),
        pass.voltage(),
        pass.travelSpeed(),
        start,
        pass.beadWidth(),
        pass.penetration(),
        pass.efficiency(),
        offset,
        pause);
  }

  public static Pass withEfficiency(Pass pass, double efficiency) {
    return new Pass(
        pass.process(),
        pass.current(),
        pass.voltage(),
        pass.travelSpeed(),
        pass.startTemperature(),
        OptionalDouble.empty(),
        pass.penetration(),
        OptionalDouble.of(efficiency),
        pass.offset(),
        pass.pause());
  }

  /** A row of typical welds, calibrated on its bead without losses. */
  static PassHeat calibrated(Table.Row row, ConductionMaterial metal) {
    Pass pass =
        pass(
            row.number("q_W") / 9,
            row.millimetres("speed_mm_s"),
            row.kelvin("start_C"),
            OptionalDouble.of(row.millimetres("bead_mm")),
            OptionalDouble.of(row.millimetres("source_depth_mm")));
    WeldLegs plate = WeldLegs.plate(row.millimetres("thickness_mm"), metal);
    return HeatInput.into(plate, SurfaceLoss.none(ROOM)).of(pass);
  }
}
