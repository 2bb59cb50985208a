package afterweld.casefile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import afterweld.strength.HardnessScale;
import java.util.Locale;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Numbers with units. The factors checked against are those of NIST SP 811, appendix B (from
 * memory): inch 25.4 mm, foot 304.8 mm, psi 6894.757 Pa, °F = 1.8 °C + 32.
 */
class QuantityTest {
  private static double inside(Dimension dimension, String text) {
    Quantity quantity = Quantity.parse(text).orElseThrow();
    return dimension
        .unit(quantity.unit())
        .orElseThrow()
        .toInside()
        .applyAsDouble(quantity.number());
  }

  @ParameterizedTest
  @CsvSource({
    "LENGTH, 6 mm, 0.006",
    "LENGTH, 6mm, 0.006",
    "LENGTH, 1.2 cm, 0.012",
    "LENGTH, 2 m, 2",
    "LENGTH, 1 in, 0.0254",
    "LENGTH, 1/4 in, 0.00635",
    "LENGTH, 1 1/2 in, 0.0381",
    "LENGTH, 1-1/2 in, 0.0381",
    "LENGTH, 3 / 8 inch, 0.009525",
    "LENGTH, '1/4\"', 0.00635",
    "LENGTH, 1/4″, 0.00635",
    "LENGTH, -3 mm, -0.003",
    "LENGTH, −3 mm, -0.003",
    "LENGTH, .5 in, 0.0127",
    "LENGTH, 5. mm, 0.005",
    "LENGTH, 2 ft, 0.6096",
    "AREA, 12 mm2, 1.2e-5",
    "AREA, 12 mm², 1.2e-5",
    "AREA, 12 mm^2, 1.2e-5",
    "AREA, 0.5 cm², 5e-5",
    "AREA, 1 in2, 6.4516e-4",
    "AREA, 1 sq in, 6.4516e-4",
    "TEMPERATURE, 0 °C, 273.15",
    "TEMPERATURE, 25 C, 298.15",
    "TEMPERATURE, 25 degC, 298.15",
    "TEMPERATURE, 25 ℃, 298.15",
    "TEMPERATURE, 25ºC, 298.15",
    "TEMPERATURE, 212 °F, 373.15",
    "TEMPERATURE, 32F, 273.15",
    "TEMPERATURE, 500 degF, 533.15",
    "TEMPERATURE, 300 K, 300",
    "TEMPERATURE_DIFFERENCE, 6 °C, 6",
    "TEMPERATURE_DIFFERENCE, 9 °F, 5",
    "TIME, 90 s, 90",
    "TIME, 1.5 min, 90",
    "TIME, 1/2 h, 1800",
    "TIME, 8 hours, 28800",
    "TIME, 1 hour, 3600",
    "TIME, 1 day, 86400",
    "TIME, 30 days, 2592000",
    "SPEED, 2.5 mm/s, 0.0025",
    "SPEED, 6 in/min, 0.00254",
    "SPEED, 6 ipm, 0.00254",
    "SPEED, 15 cm/min, 0.0025",
    "SPEED, 0.15 m/min, 0.0025",
    "SPEED, 150 mm/min, 0.0025",
    "CURRENT, 180 A, 180",
    "CURRENT, 0.18 kA, 180",
    "VOLTAGE, 15 V, 15",
    "STRESS, 40 ksi, 275790280",
    "STRESS, 276 MPa, 276e6",
    "STRESS, 276 N/mm², 276e6",
    "STRESS, 1000 psi, 6894757",
    "PRESSURE, 10 bar, 1e6",
    "PRESSURE, 100 psi, 689475.7",
    "TEMPERATURE_RATE, 120 K/s, 120",
    "TEMPERATURE_RATE, 120 K/min, 2",
    "TEMPERATURE_RATE, 90 °F/min, 0.8333333333",
    "TEMPERATURE_RATE, 50 °F/h, 0.0077160494",
    "TEMPERATURE_RATE, 36 °C/h, 0.01",
    "SHARE, 30 %, 0.3",
    "CONTENT, 0.6 %, 0.6",
    "CONTENT, 0.6 wt%, 0.6",
    "ANGLE, 90 deg, 1.5707963268",
    "ANGLE, 90°, 1.5707963268",
    "HARDNESS, 90 HV, 90",
    "RATIO, 0.6, 0.6"
  })
  void unitsOfTheTradeBecomeSi(Dimension dimension, String text, double expected) {
    assertEquals(expected, inside(dimension, text), 1e-7 * Math.abs(expected));
  }

  /** Pairs of ASTM E140, table 9, for wrought aluminium (from memory), true to one point. */
  @ParameterizedTest
  @CsvSource({"160, 189", "120, 141", "95, 111", "70, 80", "60, 68", "40, 44"})
  void brinellBecomesVickersWithinOnePoint(int brinell, int vickers) {
    assertEquals(vickers, inside(Dimension.HARDNESS, brinell + " HB"), 1.0);
  }

  @ParameterizedTest
  @ValueSource(ints = {30, 45, 70, 95, 118, 170})
  void brinellTypedInIsBrinellShown(int brinell) {
    double vickers = inside(Dimension.HARDNESS, brinell + " HB");
    assertEquals(brinell, HardnessScale.brinell(vickers).value(), 1e-9);
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "mm", "about 6 mm", "six mm", "--6 mm", "e3 mm", ".", "%"})
  void textWithoutANumberIsNotAQuantity(String text) {
    assertTrue(Quantity.parse(text).isEmpty());
  }

  @Test
  void everyUnitWritesAndReadsItself() {
    for (Dimension dimension : Dimension.values()) {
      for (String name : dimension.unitNames()) {
        Unit unit = dimension.unit(name).orElseThrow();
        assertEquals(name, unit.name());
        double inside = unit.toInside().applyAsDouble(37.5);
        assertEquals(37.5, unit.fromInside().applyAsDouble(inside), 1e-9, name);
      }
    }
  }

  @Test
  void aUnitOfAnotherDimensionIsNotTaken() {
    assertFalse(Dimension.LENGTH.unit("mm/s").isPresent());
    assertFalse(Dimension.LENGTH.unit("min").isPresent());
    assertFalse(Dimension.SPEED.unit("mm").isPresent());
    assertFalse(Dimension.RATIO.unit("mm").isPresent());
    assertFalse(Dimension.LENGTH.unit("").isPresent());
  }

  @Property
  void inchesAndMillimetresAgree(@ForAll @DoubleRange(min = -1e3, max = 1e3) @Scale(6) double x) {
    String inches = String.format(Locale.ROOT, "%.6f in", x);
    double millimetres = inside(Dimension.LENGTH, inches) * 1000;
    assertEquals(x * 25.4, millimetres, 1e-9 * (1 + Math.abs(x)));
  }

  @Property
  void fractionsAndDecimalsAgree(
      @ForAll @IntRange(max = 40) int whole,
      @ForAll @IntRange(min = 1, max = 63) int over,
      @ForAll @IntRange(min = 1, max = 64) int under) {
    double expected = (whole + (double) over / under) * 0.0254;
    double mixed = inside(Dimension.LENGTH, whole + " " + over + "/" + under + " in");
    double joined = inside(Dimension.LENGTH, whole + "-" + over + "/" + under + "\"");
    assertEquals(expected, mixed, 1e-12);
    assertEquals(mixed, joined, 0);
  }

  @Property
  void fahrenheitAndCelsiusAgree(@ForAll @DoubleRange(min = -200, max = 700) double celsius) {
    double fahrenheit = celsius * 1.8 + 32;
    double metric = inside(Dimension.TEMPERATURE, celsius + " °C");
    double american = inside(Dimension.TEMPERATURE, fahrenheit + " °F");
    assertEquals(metric, american, 1e-9);
  }

  @Property
  void speedsInAnyUnitAgree(@ForAll @DoubleRange(min = 0.3, max = 40) double millimetres) {
    double expected = inside(Dimension.SPEED, millimetres + " mm/s");
    double tolerance = 1e-12;
    assertEquals(expected, inside(Dimension.SPEED, millimetres * 60 / 25.4 + " in/min"), tolerance);
    assertEquals(expected, inside(Dimension.SPEED, millimetres * 6 + " cm/min"), tolerance);
    assertEquals(expected, inside(Dimension.SPEED, millimetres * 0.06 + " m/min"), tolerance);
  }

  @Property
  void ratesPerHourAndPerSecondAgree(@ForAll @DoubleRange(min = 0.01, max = 100) double rate) {
    double expected = inside(Dimension.TEMPERATURE_RATE, rate + " K/s");
    double american = inside(Dimension.TEMPERATURE_RATE, rate * 1.8 * 3600 + " °F/h");
    assertEquals(expected, american, 1e-12 * rate * 10);
  }
}
