package afterweld.metallurgy;

import static afterweld.metallurgy.Treatments.HOUR;
import static afterweld.metallurgy.Treatments.kelvin;
import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SiliconPhaseTest {
  /**
   * Al-Si diagram: 1.65 wt% silicon dissolved at 577 °C; 1.3 at 550 and 0.8 at 500 °C (from
   * memory).
   */
  @ParameterizedTest
  @CsvSource({"577,1.65,0.02", "550,1.30,0.03", "500,0.80,0.03"})
  void aLongSoakReachesTheSolvus(double celsius, double dissolved, double tolerance) {
    PrecipitationModel metal = PrecipitationModel.asCast(Treatments.composition(5, 0, 0, 0, 0, 0));
    PrecipitateState start = metal.start(kelvin(25));
    PrecipitateState soaked = metal.advance(start, Treatments.hold(celsius, 200 * HOUR));
    assertEquals(dissolved, soaked.matrixSilicon(), tolerance);
  }
}
