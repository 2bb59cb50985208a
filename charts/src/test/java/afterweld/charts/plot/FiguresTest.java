package afterweld.charts.plot;

import static org.junit.jupiter.api.Assertions.assertEquals;

import afterweld.quantity.OutputQuantity;
import afterweld.quantity.UnitSystem;
import org.junit.jupiter.api.Test;

class FiguresTest {
  @Test
  void everyQuantityHasItsUnitAndItsDigits() {
    assertEquals("62 HV", Figures.of(OutputQuantity.HARDNESS, UnitSystem.US, 61.6));
    assertEquals("193 MPa", Figures.of(OutputQuantity.YIELD, UnitSystem.METRIC, 193.05e6));
    assertEquals("28.0 ksi", Figures.of(OutputQuantity.TENSILE, UnitSystem.US, 193.05e6));
    assertEquals("−9.5 mm", Figures.of(OutputQuantity.DISTANCE, UnitSystem.METRIC, -0.0095));
    assertEquals("−0.37 in", Figures.of(OutputQuantity.DISTANCE, UnitSystem.US, -0.0095));
    assertEquals("582 °C", Figures.of(OutputQuantity.PEAK_TEMPERATURE, UnitSystem.METRIC, 855.15));
    assertEquals("1080 °F", Figures.of(OutputQuantity.PEAK_TEMPERATURE, UnitSystem.US, 855.15));
  }

  @Test
  void nothingIsNotNegative() {
    assertEquals("0.0", Figures.rounded(-0.04, 1));
    assertEquals("0", Figures.shortest(-0.00001));
  }

  @Test
  void axesCarryNoNeedlessZeros() {
    assertEquals("100", Figures.shortest(100));
    assertEquals("−0.25", Figures.shortest(-0.25));
    assertEquals("0.2", Figures.shortest(0.1 + 0.1));
  }
}
