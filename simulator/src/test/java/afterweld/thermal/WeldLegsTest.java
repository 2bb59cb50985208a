package afterweld.thermal;

import static afterweld.quantity.UnitSystem.ZERO_CELSIUS;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class WeldLegsTest {
  private static final ConductionMaterial METAL = Metals.constant(200, 72e-6, 2000, 2000);

  private static WeldLegs legs(double weight, double... millimetres) {
    return new WeldLegs(
        Arrays.stream(millimetres).mapToObj(d -> Leg.wide(d > 5, d * 1e-3, METAL)).toList(),
        weight);
  }

  private static PlateField through(WeldLegs legs, int leg, double power, double speed) {
    Pass pass =
        Welds.pass(
            power / 7.5, speed, Welds.ROOM, OptionalDouble.empty(), OptionalDouble.of(40e-3));
    PassHeat heat = new PassHeat(pass, 0.5, 0.5, 0.5, false, power, 4e-3, OptionalDouble.empty());
    return PlateField.of(legs, leg, heat, SurfaceLoss.none(Welds.ROOM), 0);
  }

  /**
   * Three legs heated through, 170 W per millimetre of all thicknesses: the same in every leg, and
   * 602.0 and 305.8 °C in a finite-volume field, 1.3 K apart at most.
   */
  @ParameterizedTest
  @CsvSource({"3, 6, 2", "3, 3, 3", "2, 8, 0.5"})
  void sharesTheHeatByThickness(double first, double second, double third) {
    WeldLegs legs = legs(0, first, second, third);
    double power = 170 * (first + second + third);
    for (int leg = 0; leg < 3; leg++) {
      PlateField field = through(legs, leg, power, 5e-3);
      assertEquals(602.0, field.peakTemperature(4e-3) - ZERO_CELSIUS, 1.3);
      assertEquals(305.8, field.peakTemperature(15e-3) - ZERO_CELSIUS, 1.3);
    }
  }

  static Stream<Table.Row> shell() {
    return Table.read("thermal_reference.csv").stream()
        .filter(row -> row.text("geometry").startsWith("3 legs"));
  }

  /** The shell solver's value stands in the method as the second one. */
  @ParameterizedTest
  @MethodSource("shell")
  void agreesWithAShellOfThreeLegs(Table.Row row) {
    PlateField field =
        through(legs(0, 3, 6, 2), 0, row.number("q_W(net)"), row.millimetres("v_mm_s"));
    double peak = field.peakTemperature(row.millimetres("y_mm")) - ZERO_CELSIUS;
    assertEquals(row.number("value"), peak, 0.06);
    assertEquals(second(row), peak, row.number("tolerance"));
  }

  static Stream<Table.Row> finiteVolume() {
    return Table.read("thermal_reference.csv").stream()
        .filter(row -> row.text("quantity").equals("Tpeak rise"));
  }

  /** The plate starts at 0 °C, so that the rise is the temperature; finite volumes second. */
  @ParameterizedTest
  @MethodSource("finiteVolume")
  void agreesWithAThreeDimensionalPlate(Table.Row row) {
    double rise = ReferenceCase.of(row, 0).computed();
    assertEquals(row.number("value"), rise, 0.06);
    assertEquals(second(row), rise, row.number("tolerance"));
  }

  private static double second(Table.Row row) {
    Matcher value = Pattern.compile("2nd=([\\d.]+)").matcher(row.text("method"));
    assertTrue(value.find());
    return Double.parseDouble(value.group(1));
  }

  static Stream<Table.Row> unequal() {
    return Table.read("unequal_legs.csv").stream();
  }

  /** The fit's own statement: thin leg within 6 % in the temperature rise. */
  @ParameterizedTest
  @MethodSource("unequal")
  void warmsTheThinLegMore(Table.Row row) {
    WeldLegs legs = legs(1, row.number("thin_mm"), row.number("thick_mm"));
    double factor = legs.correction(0).factor(5e-3 / (2 * 72e-6), row.millimetres("y_mm"));
    assertEquals(1 + row.number("thin_leg_gain_percent") / 100, factor, 0.06 * factor);
  }

  @Property(tries = 100)
  void keepsTheHeatOverUnequalLegs(
      @ForAll @DoubleRange(min = 1, max = 12) double first,
      @ForAll @DoubleRange(min = 1, max = 12) double second,
      @ForAll @DoubleRange(min = 1, max = 12) double third,
      @ForAll @DoubleRange(min = 0, max = 1) double weight,
      @ForAll @DoubleRange(min = 1, max = 50) double y) {
    double[] thicknesses = {first, second, third};
    WeldLegs legs = legs(weight, thicknesses);
    double heat = 0;
    for (int i = 0; i < 3; i++) {
      heat += thicknesses[i] * legs.correction(i).factor(30, y * 1e-3);
    }
    double sum = Arrays.stream(thicknesses).sum();
    assertEquals(sum, heat, 1e-9 * sum);
  }

  @Test
  void givesBothEndsOfTheBand() {
    WeldLegs legs = legs(WeldLegs.UNKNOWN_WEIGHT, 3, 6);
    double none = legs.withUnequalWeight(0).correction(0).factor(30, 5e-3);
    double half = legs.correction(0).factor(30, 5e-3);
    double full = legs.withUnequalWeight(1).correction(0).factor(30, 5e-3);
    assertEquals(1, none);
    assertEquals((none + full) / 2, half, 1e-12);
  }

  /** Conductivity decides what a leg takes: twice as conductive counts as twice as thick. */
  @Test
  void countsLegsByConductivity() {
    ConductionMaterial poor = Metals.constant(100, 72e-6, 2000, 2000);
    WeldLegs legs =
        new WeldLegs(List.of(Leg.wide(true, 4e-3, METAL), Leg.wide(false, 4e-3, poor)), 0);
    assertEquals(3e-3, legs.seenFrom(0, 0, 0, 0).jointThickness(), 1e-12);
    assertEquals(6e-3, legs.seenFrom(1, 0, 0, 0).jointThickness(), 1e-12);
    double rich = through(legs, 0, 1000, 3e-3).peakTemperature(8e-3);
    assertEquals(rich, through(legs, 1, 1000, 3e-3).peakTemperature(8e-3), 1e-6);
  }

  @Test
  void measuresWidthsFromTheBead() {
    Leg left = new Leg(true, 4e-3, OptionalDouble.of(50e-3), METAL);
    Leg right = new Leg(false, 4e-3, OptionalDouble.of(80e-3), METAL);
    WeldLegs legs = new WeldLegs(List.of(left, right), 0);
    assertEquals(48e-3, legs.seenFrom(0, 0, 0, -2e-3).ownWidth(), 1e-12);
    assertEquals(82e-3, legs.seenFrom(0, 0, 0, -2e-3).otherWidth(), 1e-12);
    assertEquals(78e-3, legs.seenFrom(1, 0, 0, 2e-3).ownWidth(), 1e-12);
    HeatInputException fault =
        assertThrows(HeatInputException.class, () -> legs.seenFrom(0, 0, 0, -60e-3));
    assertEquals("offset", fault.field());
  }

  @Test
  void refusesLegsThatCannotBe() {
    Leg leg = Leg.wide(true, 3e-3, METAL);
    assertThrows(HeatInputException.class, () -> new WeldLegs(List.of(leg), 0));
    assertThrows(IllegalArgumentException.class, () -> legs(1.5, 3, 3));
    assertThrows(HeatInputException.class, () -> Leg.wide(true, 0.4e-3, METAL));
    assertThrows(HeatInputException.class, () -> Leg.wide(true, 41e-3, METAL));
    assertThrows(HeatInputException.class, () -> Leg.wide(true, Double.NaN, METAL));
    assertThrows(HeatInputException.class, () -> new Leg(true, 3e-3, OptionalDouble.of(-1), METAL));
  }
}
