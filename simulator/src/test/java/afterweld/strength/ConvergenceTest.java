package afterweld.strength;

import static afterweld.metallurgy.ReferenceTable.number;
import static afterweld.metallurgy.Treatments.ALLOY_6061;
import static afterweld.metallurgy.Treatments.DAY;
import static afterweld.metallurgy.Treatments.HOUR;
import static org.junit.jupiter.api.Assertions.assertEquals;

import afterweld.metallurgy.NumericalSettings;
import afterweld.metallurgy.PrecipitationModel;
import afterweld.metallurgy.ReferenceTable;
import afterweld.metallurgy.Treatments;
import afterweld.thermal.TemperatureHistory;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * How far results depend on the numerical settings: the convergence study of the model definition,
 * reproduced. It shows that strengths converge to 1 % but for ageing without solution treatment
 * below a peak of 450 °C, which finer steps and classes shift by 3 to 5 %.
 */
class ConvergenceTest {
  private static final double ROUNDING = 0.011;
  private static final Map<String, NumericalSettings> SETTINGS =
      Map.of(
          "reference", NumericalSettings.DEFAULT,
          "tolerance 0.005", new NumericalSettings(100, 0.005, 3),
          "tolerance 0.002 and 1 K", new NumericalSettings(100, 0.002, 1),
          "tolerance 0.02", new NumericalSettings(100, 0.02, 3),
          "40 classes", new NumericalSettings(40, 0.01, 3),
          "50 classes", new NumericalSettings(50, 0.01, 3),
          "80 classes", new NumericalSettings(80, 0.01, 3),
          "120 classes", new NumericalSettings(120, 0.01, 3),
          "240 classes", new NumericalSettings(240, 0.01, 3));
  private static final Map<String, TemperatureHistory> CASES =
      Map.ofEntries(
          Map.entry("T6", Treatments.t6(530)),
          Map.entry("haz350", natural(350)),
          Map.entry("haz375", natural(375)),
          Map.entry("haz375+aged", aged(375)),
          Map.entry("haz400+aged", aged(400)),
          Map.entry("haz450+aged", aged(450)),
          Map.entry("haz525+aged", aged(525)),
          Map.entry("260/10h", overaged(260)),
          Map.entry("204/10h", overaged(204)),
          Map.entry("O", annealed()),
          Map.entry("pulse300", pulse()),
          Map.entry(
              "T4h350+aged",
              Treatments.t4(530)
                  .then(Treatments.weldCycle(350, 45))
                  .then(Treatments.aged(175, 8 * HOUR))));

  static List<Map<String, String>> rows() {
    return ReferenceTable.rows("/afterweld/strength/convergence.csv");
  }

  @ParameterizedTest
  @MethodSource("rows")
  void reproducesTheConvergenceStudy(Map<String, String> row) {
    TemperatureHistory history = CASES.get(row.get("case"));
    SETTINGS.forEach(
        (name, settings) -> {
          PrecipitationModel metal = PrecipitationModel.wrought(ALLOY_6061, settings);
          double yield = PrecipitateStrength.of(metal.follow(history)).yield() / 1e6;
          assertEquals(number(row, name), yield, ROUNDING, name);
        });
  }

  private static TemperatureHistory natural(double peak) {
    return welded(peak).then(Treatments.shelf(30 * DAY));
  }

  private static TemperatureHistory aged(double peak) {
    return welded(peak).then(Treatments.aged(175, 8 * HOUR));
  }

  private static TemperatureHistory welded(double peak) {
    return Treatments.t6(530).then(Treatments.weldCycle(peak, 45));
  }

  private static TemperatureHistory overaged(double celsius) {
    TemperatureHistory sheet = Treatments.solution(530).then(Treatments.shelf(7 * DAY));
    TemperatureHistory hot = Treatments.ramp(sheet, celsius, 0.5);
    return Treatments.ramp(hot.then(Treatments.hold(celsius, 10 * HOUR)), 25, 2);
  }

  private static TemperatureHistory annealed() {
    TemperatureHistory hot = Treatments.ramp(Treatments.solution(530), 415, 0.2);
    TemperatureHistory slow =
        Treatments.ramp(hot.then(Treatments.hold(415, 2.5 * HOUR)), 260, 28 / HOUR);
    return Treatments.ramp(slow, 25, 0.05);
  }

  private static TemperatureHistory pulse() {
    return Treatments.ramp(Treatments.ramp(Treatments.t6(530), 300, 15), 25, 15);
  }
}
