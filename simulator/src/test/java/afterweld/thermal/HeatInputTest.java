package afterweld.thermal;

import static afterweld.quantity.UnitSystem.ZERO_CELSIUS;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HeatInputTest {
  private static final OptionalDouble NONE = OptionalDouble.empty();

  private static HeatInput plate(double millimetres) {
    return HeatInput.into(
        WeldLegs.plate(millimetres * 1e-3, Metals.ALUMINIUM_6061),
        SurfaceLoss.stillAir(Welds.ROOM));
  }

  /** 110 A and 14 V on 3 mm with an 8 mm bead at 3 mm/s: efficiency 0.60 (without losses). */
  @Test
  void takesTheEfficiencyFromTheBead() {
    Pass pass = Welds.pass(110 * 14 / 15.0, 3e-3, Welds.ROOM, OptionalDouble.of(8e-3), NONE);
    WeldLegs legs = WeldLegs.plate(3e-3, Metals.ALUMINIUM_6061);
    PassHeat heat = HeatInput.into(legs, SurfaceLoss.none(Welds.ROOM)).of(pass);
    assertEquals(0.60, heat.efficiency(), 0.005);
    assertTrue(heat.calibrated());
    assertEquals(8e-3, heat.calibratedBy().orElseThrow());
    assertEquals(4e-3, heat.fusionHalfWidth());
    assertEquals(heat.efficiency(), heat.efficiencyLow());
    assertEquals(heat.efficiency() * pass.arcPower(), heat.netPower(), 1e-9);
  }

  /** The bead that an efficiency makes is the bead that gives the efficiency, in every joint. */
  @Property(tries = 60)
  void beadAndEfficiencyAgree(
      @ForAll @DoubleRange(min = 1.5, max = 12) double left,
      @ForAll @DoubleRange(min = 1.5, max = 12) double right,
      @ForAll @DoubleRange(min = 1.5, max = 8) double speed,
      @ForAll @DoubleRange(min = 5, max = 14) double bead,
      @ForAll @DoubleRange(min = 20, max = 150) double start) {
    WeldLegs legs =
        new WeldLegs(
            List.of(
                Leg.wide(true, left * 1e-3, Metals.ALUMINIUM_6061),
                Leg.wide(false, right * 1e-3, Metals.ALUMINIUM_6061)),
            WeldLegs.UNKNOWN_WEIGHT);
    HeatInput input = HeatInput.into(legs, SurfaceLoss.stillAir(Welds.ROOM));
    double kelvin = start + ZERO_CELSIUS;
    Pass guess = Welds.pass(100, speed * 1e-3, kelvin, NONE, NONE);
    double power = 1500 * netPower(input, guess, bead * 1e-3);
    Pass pass =
        Welds.pass(power / 0.6 / 15, speed * 1e-3, kelvin, OptionalDouble.of(bead * 1e-3), NONE);
    PassHeat calibrated = input.of(pass);
    assertEquals(0.6, calibrated.efficiency(), 1e-6);
    PassHeat following = input.of(pass, calibrated.efficiency());
    assertEquals(bead * 1e-3 / 2, following.fusionHalfWidth(), 1e-8);
  }

  /** Efficiency at 1500 W that melts a bead, by halving. */
  private static double netPower(HeatInput input, Pass pass, double bead) {
    double low = 0.001;
    double high = 40;
    for (int i = 0; i < 60; i++) {
      double middle = (low + high) / 2;
      boolean wider = input.of(pass, middle).fusionHalfWidth() > bead / 2;
      low = wider ? low : middle;
      high = wider ? middle : high;
    }
    return low;
  }

  @Property(tries = 40)
  void morePowerMeltsAWiderBead(
      @ForAll @DoubleRange(min = 1, max = 20) double thickness,
      @ForAll @DoubleRange(min = 0.3, max = 0.8) double efficiency) {
    HeatInput input = plate(thickness);
    Pass pass = Welds.pass(80 * thickness, 3e-3, Welds.ROOM, NONE, NONE);
    double narrow = input.of(pass, efficiency).fusionHalfWidth();
    double wide = input.of(pass, efficiency + 0.1).fusionHalfWidth();
    assertTrue(wide > narrow || wide == 0, narrow + " to " + wide);
  }

  /** One joint width in 6 mm: 5 % in the power is half a millimetre of the half-width or so. */
  @Test
  void isSensitiveAsMeasured() {
    HeatInput input = plate(3);
    double narrow = input.of(Welds.withBead(7e-3)).netPower();
    double middle = input.of(Welds.withBead(8e-3)).netPower();
    double wide = input.of(Welds.withBead(9e-3)).netPower();
    assertEquals(0.05, 1 - narrow / middle, 0.015);
    assertEquals(0.05, wide / middle - 1, 0.015);
  }

  /** Default efficiencies with their band: EN 1011-1 and the review by Stenbacka and others. */
  @ParameterizedTest
  @CsvSource({
    "GTAW_AC, 0.60, 0.45, 0.75",
    "GTAW_DCEN, 0.72, 0.60, 0.82",
    "GMAW, 0.80, 0.70, 0.87",
    "GMAW_PULSED, 0.80, 0.70, 0.87"
  })
  void takesTheProcessWithoutABead(WeldingProcess process, double middle, double low, double high) {
    Pass plain = Welds.plain();
    Pass pass =
        new Pass(process, 200, 15, 5e-3, plain.startTemperature(), NONE, NONE, NONE, 0, NONE);
    PassHeat heat = plate(3).of(pass);
    assertEquals(middle, heat.efficiency());
    assertEquals(low, heat.efficiencyLow());
    assertEquals(high, heat.efficiencyHigh());
    assertFalse(heat.calibrated());
    assertTrue(heat.fusionHalfWidth() > 1e-3);
  }

  @Test
  void handsACalibrationToLaterPassesOfTheProcess() {
    Pass bead = Welds.withBead(8e-3);
    Pass plain = Welds.pass(105, 3e-3, 66 + ZERO_CELSIUS, NONE, NONE);
    Pass given = Welds.withEfficiency(plain, 0.5);
    List<PassHeat> heats = plate(3).of(List.of(plain, bead, plain, given));
    assertEquals(0.60, heats.get(0).efficiency());
    assertFalse(heats.get(0).calibrated());
    assertEquals(heats.get(1).efficiency(), heats.get(2).efficiency());
    assertTrue(heats.get(2).calibrated());
    assertEquals(8e-3, heats.get(2).calibratedBy().orElseThrow());
    assertTrue(heats.get(2).fusionHalfWidth() > 4e-3, "wider on warm metal");
    assertEquals(0.5, heats.get(3).efficiency());
    assertEquals(0.5, heats.get(3).efficiencyLow());
  }

  @ParameterizedTest
  @CsvSource({"40, 8", "400, 8"})
  void refusesNumbersThatDoNotFitTogether(double current, double bead) {
    Pass pass = Welds.pass(current, 3e-3, Welds.ROOM, OptionalDouble.of(bead * 1e-3), NONE);
    HeatInputException fault = assertThrows(HeatInputException.class, () -> plate(3).of(pass));
    assertEquals("bead_width", fault.field());
    assertTrue(fault.getMessage().contains("efficiency"));
    assertTrue(fault.getMessage().contains("fused"), fault.getMessage());
  }

  @Test
  void refusesHeatThatMeltsNothing() {
    HeatInputException fault = assertThrows(HeatInputException.class, () -> plate(20).of(faint()));
    assertTrue(fault.getMessage().startsWith("this heat would not melt a bead"));
  }

  @ParameterizedTest
  @CsvSource({"200, 20", "80, 12", "81, 12", "90, 12", "60, 8", "63, 8"})
  void whoeverFollowsTheAdviceMeltsABead(double current, double thickness) {
    HeatInput plate = plate(thickness);
    Pass pass = Welds.pass(current, 3e-3, Welds.ROOM, NONE, OptionalDouble.of(thickness * 1e-3));
    String said = assertThrows(HeatInputException.class, () -> plate.of(pass)).getMessage();
    assertMelts(plate, pass.withCurrent(advised(said, "from about ([\\d.]+) A")));
    if (said.contains("mm/s")) {
      double slow = advised(said, "at about ([\\d.]+) mm/s");
      assertMelts(plate, pass.withTravelSpeed(slow * 1e-3));
      double inches = advised(said, "mm/s \\(([\\d.]+) in/min");
      assertMelts(plate, pass.withTravelSpeed(inches * 0.0254 / 60));
    }
    if (said.contains("preheated")) {
      double warm = advised(said, "preheated to about ([\\d.]+) °C");
      assertMelts(plate, pass.withStartTemperature(warm + ZERO_CELSIUS));
    }
  }

  private static void assertMelts(HeatInput plate, Pass pass) {
    assertTrue(plate.of(pass).fusionHalfWidth() >= HeatInput.NARROWEST_FUSION);
  }

  private static double advised(String said, String pattern) {
    Matcher number = Pattern.compile(pattern).matcher(said);
    assertTrue(number.find(), said);
    return Double.parseDouble(number.group(1));
  }

  @ParameterizedTest
  @CsvSource({"110, 30, 3", "200, 5, 3", "180, 24, 6"})
  void aBeadOfTheWidthThatIsSaidToFitFits(double current, double bead, double thickness) {
    HeatInput plate = plate(thickness);
    Pass wrong = Welds.pass(current, 3e-3, Welds.ROOM, OptionalDouble.of(bead * 1e-3), NONE);
    String said = assertThrows(HeatInputException.class, () -> plate.of(wrong)).getMessage();
    for (String pattern : List.of("settings ([\\d.]+) to", "to ([\\d.]+) mm would fit")) {
      OptionalDouble fits = OptionalDouble.of(advised(said, pattern) * 1e-3);
      assertTrue(plate.of(Welds.pass(current, 3e-3, Welds.ROOM, fits, NONE)).calibrated());
    }
  }

  @Test
  void letsALowEndMeltNothing() {
    assertEquals(0, plate(20).of(faint(), 0.3).fusionHalfWidth());
  }

  /** Too little for 20 mm heated through. */
  private static Pass faint() {
    return Welds.pass(200, 3e-3, Welds.ROOM, NONE, OptionalDouble.of(20e-3));
  }

  @ParameterizedTest
  @CsvSource({
    "travel_speed, 200, 0.2, 20, 8, 3",
    "travel_speed, 200, 41, 20, 8, 3",
    "arc power, 1400, 3, 20, 8, 3",
    "start temperature, 200, 3, -30, 8, 3",
    "start temperature, 200, 3, 530, 8, 3",
    "bead_width, 200, 3, 20, 81, 3",
    "penetration, 200, 3, 20, 8, 3.2"
  })
  void refusesNumbersOutOfRange(
      String field, double current, double speed, double start, double bead, double depth) {
    Pass pass =
        Welds.pass(
            current,
            speed * 1e-3,
            start + ZERO_CELSIUS,
            OptionalDouble.of(bead * 1e-3),
            OptionalDouble.of(depth * 1e-3));
    HeatInputException fault = assertThrows(HeatInputException.class, () -> plate(3).of(pass));
    assertEquals(field, fault.field());
    assertTrue(fault.getMessage().contains("expected"), fault.getMessage());
  }

  @Test
  void refusesAnEfficiencyOutOfRange() {
    Pass pass = Welds.withEfficiency(Welds.plain(), 0.95);
    assertThrows(HeatInputException.class, () -> plate(3).of(pass));
  }

  private static List<String> codes(double millimetres, PassHeat heat) {
    return plate(millimetres).warnings(heat).stream().map(ThermalWarning::code).toList();
  }

  private static PassHeat heat(double efficiency, double speed, double start, OptionalDouble bead) {
    Pass pass = Welds.pass(100, speed, start + ZERO_CELSIUS, bead, NONE);
    double power = efficiency * pass.arcPower();
    return new PassHeat(pass, efficiency, efficiency, efficiency, true, power, 4e-3, bead);
  }

  @Test
  void warnsOfWhatIsDoubtful() {
    OptionalDouble bead = OptionalDouble.of(8e-3);
    assertEquals(List.of(), codes(4, heat(0.6, 4e-3, 20, bead)));
    assertEquals(List.of("efficiency-unusual"), codes(4, heat(0.35, 4e-3, 20, bead)));
    assertEquals(List.of("efficiency-unusual"), codes(4, heat(0.88, 4e-3, 20, bead)));
    assertEquals(List.of("thin-and-slow"), codes(4, heat(0.6, 2e-3, 20, bead)));
    assertEquals(List.of("bead-wide"), codes(4, heat(0.6, 4e-3, 20, OptionalDouble.of(17e-3))));
    assertEquals(List.of("heat-outside-checked-range"), codes(4, heat(0.6, 4e-3, 210, bead)));
    assertEquals(
        List.of("heat-outside-checked-range", "pool-wide-and-fast"),
        codes(4, heat(0.6, 16e-3, 20, bead)));
  }

  @Test
  void warnsOfTheJoint() {
    WeldLegs legs =
        new WeldLegs(
            List.of(
                new Leg(true, 4e-3, OptionalDouble.of(0.3), Metals.ALUMINIUM_6061),
                new Leg(false, 10e-3, OptionalDouble.of(0.1), Metals.ALUMINIUM_6061)),
            0.5);
    HeatInput input = HeatInput.into(legs, SurfaceLoss.stillAir(Welds.ROOM));
    List<ThermalWarning> warnings = input.warnings(heat(0.6, 4e-3, 20, OptionalDouble.of(8e-3)));
    assertEquals(
        List.of("thickness-ratio", "narrow-legs"),
        warnings.stream().map(ThermalWarning::code).toList());
    assertTrue(warnings.get(0).text().contains("2.5 times"));
    assertTrue(warnings.get(0).text().contains("15 %"));
  }
}
