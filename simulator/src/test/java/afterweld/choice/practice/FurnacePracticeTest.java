package afterweld.choice.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FurnacePracticeTest {
  /** Rows of MIL-H-6088 as they are written, in inches: each goes up to its gauge (from memory). */
  @ParameterizedTest
  @CsvSource({
    "0.016,20",
    "0.020,20",
    "0.032,25",
    "0.063,30",
    "0.090,35",
    "0.124,40",
    "0.125,50",
    "0.250,50",
    "0.500,60",
    "1.0,90",
    "1.5,120",
    "2.0,150"
  })
  void aGaugeInInchesSoaksByItsOwnRow(double inches, double minutes) {
    assertEquals(minutes, FurnacePractice.of("soak in air", inches * 0.0254).value());
  }

  @ParameterizedTest
  @CsvSource({"0.016,5", "0.031,7", "0.032,10", "0.090,10", "0.091,15", "0.25,15"})
  void aGaugeInInchesWaitsByItsOwnRow(double inches, double seconds) {
    assertEquals(seconds, FurnacePractice.of("longest quench delay", inches * 0.0254).value());
  }
}
