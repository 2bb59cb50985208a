package afterweld.thermal.furnace;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import afterweld.material.Alloy;
import afterweld.material.MaterialLibrary;
import afterweld.thermal.TemperatureHistory;
import afterweld.thermal.furnace.FurnaceStep.Age;
import afterweld.thermal.furnace.FurnaceStep.Anneal;
import afterweld.thermal.furnace.FurnaceStep.Furnace;
import afterweld.thermal.furnace.FurnaceStep.Quench;
import afterweld.thermal.furnace.FurnaceStep.QuenchAtRate;
import afterweld.thermal.furnace.FurnaceStep.Ramp;
import afterweld.thermal.furnace.FurnaceStep.SolutionTreat;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FurnaceHistoryTest {
  private static final double CELSIUS = 273.15;
  private static final Alloy ALLOY = MaterialLibrary.standard().base("6061").orElseThrow();
  private static final SolutionTreat SOLUTION = new SolutionTreat(530 + CELSIUS, 3600, Furnace.AIR);

  private static List<TemperatureHistory> schedule(double thickness, FurnaceStep... steps) {
    return new FurnaceHistory(ALLOY, "T6", thickness).of(List.of(steps));
  }

  @ParameterizedTest
  @CsvSource({"0.001, 46", "0.003, 16", "0.006, 8"})
  void stillAirTakesWhatAHandCalculationGives(double thickness, double loss) {
    // Worked by hand from h = 10 W/(m² K), emissivity 0.1 and the heat capacity of EN 1999-1-2,
    // 1120 J/(kg K) at 530 °C, where the table of 6061 has 1165. Rounded to 1 K, chords within 0.3
    // K.
    Quench late = new Quench(QuenchMedium.WATER, 25 + CELSIUS, 10);
    TemperatureHistory quench = schedule(thickness, SOLUTION, late).get(1);
    assertEquals(loss * 1120 / 1165, quench.temperature(0) - quench.at(10), 0.8);
  }

  /** Ten degrees Fahrenheit: AMS 2770, from memory. */
  @Test
  void soakCountsFromTheUniformityBelowTheSetTemperature() {
    TemperatureHistory solution = schedule(0.006, SOLUTION).get(0);
    double ready = firstAt(solution, 530 - 10 / 1.8 + CELSIUS);
    assertEquals(3600, solution.duration() - ready, 1e-6);
    assertEquals(530 + CELSIUS, solution.endTemperature(), 1e-9);
  }

  @Test
  void saltHeatsFasterThanAir() {
    TemperatureHistory air = schedule(0.006, SOLUTION).get(0);
    TemperatureHistory salt =
        schedule(0.006, new SolutionTreat(530 + CELSIUS, 3600, Furnace.SALT)).get(0);
    assertEquals(20, (air.duration() - 3600) / (salt.duration() - 3600), 0.2, "films 1000 and 50");
  }

  @Test
  void stillWaterCoolsThinMetalFasterThanThick() {
    Quench water = new Quench(QuenchMedium.WATER, 25 + CELSIUS, 7);
    double thin = rate(schedule(0.003, SOLUTION, water).get(1));
    double thick = rate(schedule(0.012, SOLUTION, water).get(1));
    assertTrue(thin > 3.5 * thick, thin + " against " + thick + " K/s");
    assertTrue(thin > 100 && thin < 2000, "order of magnitude of practice: " + thin + " K/s");
  }

  @Test
  void aMeasuredRateIsKept() {
    assertEquals(120, rate(schedule(0.006, SOLUTION, new QuenchAtRate(120)).get(1)), 1e-6);
  }

  @Test
  void everyTreatmentEndsAtRoomTemperature() {
    Age age = new Age(177 + CELSIUS, 8 * 3600, Ramp.BY_FURNACE, false);
    Anneal anneal = new Anneal(413 + CELSIUS, 2.5 * 3600, OptionalDouble.of(28.0 / 3600));
    Quench boiling = new Quench(QuenchMedium.BOILING_WATER, 100 + CELSIUS, 5);
    for (TemperatureHistory history : schedule(0.006, SOLUTION, boiling, age, anneal)) {
      if (history.peakTemperature() != history.endTemperature()) {
        assertEquals(FurnaceHistory.ROOM, history.endTemperature(), 1e-9);
      }
    }
  }

  @Test
  void annealCoolsSlowlyDownTo260() {
    Anneal anneal = new Anneal(413 + CELSIUS, 2.5 * 3600, OptionalDouble.of(28.0 / 3600));
    TemperatureHistory history = schedule(0.006, anneal).get(0);
    double from = lastAt(history, 400 + CELSIUS);
    double to = lastAt(history, 270 + CELSIUS);
    assertEquals(28.0, 130 / (to - from) * 3600, 1e-3);
  }

  @Test
  void aRampIsFollowed() {
    Ramp ramp = new Ramp(OptionalDouble.of(3600), OptionalDouble.empty());
    TemperatureHistory history =
        schedule(0.006, new Age(175 + CELSIUS, 8 * 3600, ramp, false)).get(0);
    assertEquals(100 + CELSIUS, history.at(1800), 1e-6);
    assertEquals(175 + CELSIUS, history.at(3600 + 8 * 3600), 1e-9);
  }

  @Test
  void halvingTheDistanceTakesEqualTimes() {
    // Law of a lumped plate with constant film; the heat capacity of 6061 rises on the way.
    TemperatureHistory heating = schedule(0.006, SOLUTION).get(0);
    double half = firstAt(heating, 530 + CELSIUS - 505.0 / 2);
    double quarter = firstAt(heating, 530 + CELSIUS - 505.0 / 4);
    assertEquals(1.1, (quarter - half) / half, 0.05, "heat capacity rises by about a tenth");
  }

  private static double rate(TemperatureHistory history) {
    return FurnaceHistory.coolingRate(history).orElseThrow();
  }

  private static double firstAt(TemperatureHistory history, double temperature) {
    double low = 0;
    double high = history.duration();
    for (int i = 0; i < 80; i++) {
      double middle = (low + high) / 2;
      boolean reached = history.until(middle).peakTemperature() >= temperature;
      low = reached ? low : middle;
      high = reached ? middle : high;
    }
    return high;
  }

  private static double lastAt(TemperatureHistory history, double temperature) {
    double low = 0;
    double high = history.duration();
    for (int i = 0; i < 80; i++) {
      double middle = (low + high) / 2;
      boolean above = history.at(middle) >= temperature || middle < 9000;
      low = above ? middle : low;
      high = above ? high : middle;
    }
    return low;
  }
}
