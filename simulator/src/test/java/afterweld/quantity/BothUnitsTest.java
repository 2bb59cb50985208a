package afterweld.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Temperatures as furnaces are set and limits are written on both sides of the ocean (common
 * practice: 350, 985, 500, 150 °F).
 */
class BothUnitsTest {
  @ParameterizedTest
  @CsvSource({
    "177, 177 °C (350 °F)",
    "530, 530 °C (985 °F)",
    "260, 260 °C (500 °F)",
    "65, 65 °C (150 °F)",
    "25, 25 °C (77 °F)",
    "100, 100 °C (212 °F)",
    "581.6, 582 °C (1079 °F)"
  })
  void celsiusLeadsAndFahrenheitIsTheTradesStep(double celsius, String expected) {
    assertEquals(expected, BothUnits.temperature(celsius + UnitSystem.ZERO_CELSIUS));
  }

  /** 50 mm and 2 in are one gauge (ISO 6892, ASTM E8, from memory). */
  @ParameterizedTest
  @CsvSource({"0.05, 50 mm (2 in)", "0.0508, 50.8 mm (2 in)", "0.08, 80 mm (3.15 in)"})
  void aGaugeIsCalledByItsNameOnEitherSide(double metres, String expected) {
    assertEquals(expected, BothUnits.gauge(metres));
  }

  @ParameterizedTest
  @CsvSource({"0.006, 6 mm (0.24 in)", "0.00524, 5.24 mm (0.21 in)", "1.2, 1200 mm (47.24 in)"})
  void aLengthHasNoEmptyDecimals(double metres, String expected) {
    assertEquals(expected, BothUnits.length(metres));
  }

  @Test
  void aSettingInOneSystemIsTheTradesToo() {
    double kelvin = 177 + UnitSystem.ZERO_CELSIUS;
    assertEquals("350 °F", BothUnits.temperature(UnitSystem.US, kelvin));
    assertEquals("177 °C", BothUnits.temperature(UnitSystem.METRIC, kelvin));
  }

  @ParameterizedTest
  @CsvSource({"350, 350 °F (177 °C)", "985, 985 °F (529 °C)", "151, 151 °F (66 °C)"})
  void whatIsSetInFahrenheitLeadsWithIt(double fahrenheit, String expected) {
    assertEquals(expected, BothUnits.temperature((fahrenheit + 459.67) / 1.8));
  }
}
