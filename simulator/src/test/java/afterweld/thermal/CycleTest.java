package afterweld.thermal;

import static afterweld.quantity.UnitSystem.ZERO_CELSIUS;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class CycleTest {
  private static final double LIQUIDUS = 652 + ZERO_CELSIUS;
  private static final double MELTING = 582 + ZERO_CELSIUS;
  private static final double COLD = 40 + ZERO_CELSIUS;

  private static PlateField field(
      double thickness, double source, double speed, double startCelsius, double width) {
    double power = 300 * thickness * Math.pow(speed / 3, 0.4);
    double d = thickness * 1e-3;
    return PlateField.of(
        new LegGeometry(d, d, d, source * d, d / 2, width, width),
        Metals.ALUMINIUM_6061,
        SurfaceLoss.stillAir(Welds.ROOM),
        new PlateField.Heat(power, speed * 1e-3, startCelsius + ZERO_CELSIUS));
  }

  /** 1 K, 0.5 K at the peak, more only where it is liquid; and few points. */
  @Property(tries = 120)
  void followsTheCurveInFewPieces(
      @ForAll @DoubleRange(min = 1, max = 20) double thickness,
      @ForAll @DoubleRange(min = 0, max = 1) double source,
      @ForAll @DoubleRange(min = 1, max = 12) double speed,
      @ForAll @DoubleRange(min = 20, max = 150) double start,
      @ForAll boolean strip,
      @ForAll @DoubleRange(min = 1, max = 39) double y) {
    double width = strip ? 40e-3 : Double.POSITIVE_INFINITY;
    StationPass pass = field(thickness, source, speed, start, width).station(y * 1e-3);
    TemperatureHistory cycle = pass.cycle(COLD, 7200);
    double first = pass.startTime();
    for (int i = 0; i + 1 < cycle.size(); i++) {
      for (int part = 1; part < 8; part++) {
        double lapse = cycle.time(i + 1) - cycle.time(i);
        double time = cycle.time(i) + lapse * part / 8;
        double exact = pass.temperature(first + time);
        double allowed =
            Math.min(1, 0.5 + 0.01 * (pass.peakTemperature() - exact))
                + 0.1 * Math.max(0, exact - LIQUIDUS);
        // In the melting range the conductivity has kinks, and what melted starts anew below it.
        double slack = exact > MELTING ? 0.25 : 0.05;
        assertEquals(exact, cycle.at(time), allowed + slack);
      }
    }
    assertTrue(cycle.size() <= 90, cycle.size() + " points");
  }

  @Property(tries = 60)
  void reachesThePeakTemperature(
      @ForAll @DoubleRange(min = 1, max = 20) double thickness,
      @ForAll @DoubleRange(min = 1, max = 12) double speed,
      @ForAll @DoubleRange(min = 20, max = 150) double start,
      @ForAll @DoubleRange(min = 0, max = 60) double y) {
    PlateField field = field(thickness, 0.5, speed, start, Double.POSITIVE_INFINITY);
    TemperatureHistory cycle = field.cycle(y * 1e-3, COLD, 7200);
    assertEquals(field.peakTemperature(y * 1e-3), cycle.peakTemperature(), 1e-6);
  }

  @Test
  void beginsAndEndsAsAsked() {
    PlateField field = field(3, 1, 3, 20, Double.POSITIVE_INFINITY);
    TemperatureHistory cycle = field.cycle(10e-3, COLD, 7200);
    assertEquals(20.5 + ZERO_CELSIUS, cycle.temperature(0), 1e-3);
    assertEquals(COLD, cycle.endTemperature(), 1e-3);
    assertTrue(cycle.size() >= 30 && cycle.size() <= 80, cycle.size() + " points");
    TemperatureHistory broken = field.cycle(10e-3, COLD, 30);
    assertTrue(broken.endTemperature() > COLD + 50);
  }

  /** Without losses a preheated body never cools: the reading of 625 s from 400 to 200 °C. */
  @Test
  void coolsTheWarmBodyItself() {
    LegGeometry plate = LegGeometry.plate(3e-3, 3e-3, 1.5e-3);
    PlateField.Heat heat = new PlateField.Heat(924.3, 3e-3, 150 + ZERO_CELSIUS);
    ConductionMaterial metal = Metals.ALUMINIUM_6061;
    double from = 400 + ZERO_CELSIUS;
    double to = 200 + ZERO_CELSIUS;
    double insulated =
        PlateField.of(plate, metal, SurfaceLoss.none(Welds.ROOM), heat)
            .coolingTime(10e-3, from, to)
            .orElseThrow();
    double losing =
        PlateField.of(plate, metal, SurfaceLoss.stillAir(Welds.ROOM), heat)
            .coolingTime(10e-3, from, to)
            .orElseThrow();
    assertTrue(losing < 0.5 * insulated, insulated + " s to " + losing + " s");
    PlateField open = PlateField.of(plate, metal, SurfaceLoss.stillAir(Welds.ROOM), heat);
    assertEquals(Welds.ROOM, open.station(10e-3).temperature(20000), 0.5);
  }

  /** Typical welds of 3 and 6 mm: 45 and 78 s from 400 to 200 °C, 20 s and 35 s above 300 °C. */
  @Test
  void agreesWithTypicalTimes() {
    PlateField thin = typical(3e-3, 924.3, 3e-3);
    PlateField thick = typical(6e-3, 2023.5, 2.5e-3);
    double y = thin.isotherm(475 + ZERO_CELSIUS);
    assertEquals(45, cooling(thin, y), 2);
    assertEquals(20.5, thin.timeAbove(y, 300 + ZERO_CELSIUS).orElseThrow(), 1.5);
    double far = thick.isotherm(475 + ZERO_CELSIUS);
    assertEquals(78, cooling(thick, far), 2);
    assertEquals(35, thick.timeAbove(far, 300 + ZERO_CELSIUS).orElseThrow(), 2);
  }

  private static PlateField typical(double thickness, double power, double speed) {
    return PlateField.of(
        LegGeometry.plate(thickness, thickness, thickness / 2),
        Metals.ALUMINIUM_6061,
        SurfaceLoss.none(Welds.ROOM),
        new PlateField.Heat(power, speed, Welds.ROOM));
  }

  private static double cooling(PlateField field, double y) {
    return field.coolingTime(y, 400 + ZERO_CELSIUS, 200 + ZERO_CELSIUS).orElseThrow();
  }

  @Test
  void saysWhenATimeDoesNotExist() {
    PlateField field = typical(3e-3, 924.3, 3e-3);
    assertTrue(field.coolingTime(30e-3, 500 + ZERO_CELSIUS, 400 + ZERO_CELSIUS).isEmpty());
    assertTrue(field.coolingTime(10e-3, 400 + ZERO_CELSIUS, 20 + ZERO_CELSIUS).isEmpty());
    assertEquals(0, field.timeAbove(30e-3, 500 + ZERO_CELSIUS).orElseThrow());
  }
}
