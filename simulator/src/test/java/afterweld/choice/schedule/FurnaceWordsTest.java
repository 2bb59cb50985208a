package afterweld.choice.schedule;

import static org.junit.jupiter.api.Assertions.assertEquals;

import afterweld.thermal.furnace.FurnaceStep.Age;
import afterweld.thermal.furnace.FurnaceStep.Anneal;
import afterweld.thermal.furnace.FurnaceStep.Furnace;
import afterweld.thermal.furnace.FurnaceStep.Quench;
import afterweld.thermal.furnace.FurnaceStep.QuenchAtRate;
import afterweld.thermal.furnace.FurnaceStep.Ramp;
import afterweld.thermal.furnace.FurnaceStep.SolutionTreat;
import afterweld.thermal.furnace.QuenchMedium;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is ordered is what stands on the sheet. */
class FurnaceWordsTest {
  @ParameterizedTest
  @CsvSource({
    "9000, 2.5 h",
    "16200, 4.5 h",
    "7800, 130 min",
    "3600, 60 min",
    "3601, 3601 s",
    "90, 90 s",
    "7, 7 s",
    "0.5, 0.5 s",
    "86400, 24 h",
    "216000, 2.5 days",
    "2592000, 30 days",
    "0, 0 s"
  })
  void aTimeIsSaidExactly(double seconds, String words) {
    assertEquals(words, FurnaceWords.time(seconds));
  }

  @Test
  void aStepIsSaidWithAllItHolds() {
    assertEquals(
        "age at 260 °C (500 °F) for 2 h, heated in 90 min, meant to overage",
        FurnaceWords.of(
            new Age(
                533.15, 7200, new Ramp(OptionalDouble.of(5400), OptionalDouble.empty()), true)));
    assertEquals(
        "anneal at 415 °C (780 °F) for 2.5 h, cooled at 28 °C/h (50.4 °F/h) down to 260 °C (500 °F)",
        FurnaceWords.of(new Anneal(688.15, 9000, OptionalDouble.of(28 / 3600.0))));
    assertEquals(
        "solution treat at 530 °C (985 °F) for 60 min in a salt bath",
        FurnaceWords.of(new SolutionTreat(803.15, 3600, Furnace.SALT)));
    assertEquals(
        "quench in moving air of 25 °C (77 °F) within 10 s",
        FurnaceWords.of(new Quench(QuenchMedium.FORCED_AIR, 298.15, 10)));
    assertEquals("quench at 0.3 °C/s (0.54 °F/s)", FurnaceWords.of(new QuenchAtRate(0.3)));
  }
}
