package afterweld.strength;

import static afterweld.metallurgy.ReferenceTable.number;
import static afterweld.metallurgy.Treatments.ALLOY_6061;
import static afterweld.metallurgy.Treatments.DAY;
import static afterweld.metallurgy.Treatments.HOUR;
import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import afterweld.metallurgy.PrecipitateState;
import afterweld.metallurgy.PrecipitationModel;
import afterweld.metallurgy.ReferenceTable;
import afterweld.metallurgy.Treatments;
import afterweld.thermal.TemperatureHistory;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** 6061 after one weld cycle of any peak temperature. */
class HeatAffectedZoneTest {
  private static final double ROUNDING = 0.06;
  private static final PrecipitationModel METAL = PrecipitationModel.wrought(ALLOY_6061);
  private static final PrecipitateState T6 = METAL.follow(Treatments.t6(530));
  private static final PrecipitateState T4 = METAL.follow(Treatments.t4(530));

  static List<Map<String, String>> rows() {
    return ReferenceTable.rows("/afterweld/strength/haz_curves.csv");
  }

  /** 180 points computed by another implementation of the model definition, written to 0.1. */
  @ParameterizedTest
  @MethodSource("rows")
  void agreesWithReferenceCurves(Map<String, String> row) {
    PrecipitateState before = row.get("start").equals("T6") ? T6 : T4;
    PrecipitateState welded = welded(before, number(row, "peak_C"), number(row, "t400_200_s"));
    PrecipitateState aged = METAL.advance(welded, Treatments.aged(175, 8 * HOUR));
    assertAll(
        () -> check(row, "as_welded", welded),
        () -> check(row, "NA30d", METAL.advance(welded, Treatments.shelf(30 * DAY))),
        () -> check(row, "aged_only", aged),
        () -> check(row, "resolutioned", METAL.advance(aged, Treatments.retreatment(530))));
  }

  private static void check(Map<String, String> row, String column, PrecipitateState state) {
    Strength strength = PrecipitateStrength.of(state);
    assertEquals(number(row, "HV_" + column), strength.hardness(), ROUNDING, "HV " + column);
    assertEquals(number(row, "YS_" + column), strength.yield() / 1e6, ROUNDING, "YS " + column);
  }

  @Test
  void oneKelvinOfPeakTemperatureNeverMakesAJumpAfterNaturalAgeing() {
    assertSmooth(scan(Treatments.shelf(30 * DAY)), 3.55);
  }

  @Test
  void oneKelvinOfPeakTemperatureNeverMakesAJumpAfterArtificialAgeing() {
    assertSmooth(scan(Treatments.aged(175, 8 * HOUR)), 4.15);
  }

  /** Yield at peaks of 200 to 580 °C, every kelvin, MPa. */
  private static double[] scan(TemperatureHistory after) {
    return IntStream.rangeClosed(200, 580)
        .mapToObj(peak -> METAL.advance(welded(T6, peak, 45), after))
        .mapToDouble(state -> PrecipitateStrength.of(state).yield() / 1e6)
        .toArray();
  }

  /**
   * A step may exceed both neighbouring steps by 3 MPa at most. Noise and slope as the model
   * definition states them: fourth differences of 0.005 MPa in the median and 0.8 at worst.
   */
  private static void assertSmooth(double[] yield, double steepest) {
    double[] step = differences(yield);
    for (int i = 1; i < step.length - 1; i++) {
      double trend = Math.max(Math.abs(step[i - 1]), Math.abs(step[i + 1]));
      assertTrue(Math.abs(step[i]) <= trend + 3, "jump at " + (200 + i) + " °C: " + step[i]);
    }
    assertTrue(Arrays.stream(step).map(Math::abs).max().orElseThrow() <= steepest, "slope");
    double[] noise = noise(step);
    assertEquals(0.005, noise[noise.length / 2], 0.005, "median noise");
    assertTrue(noise[noise.length - 1] < 0.85, "worst noise " + noise[noise.length - 1]);
  }

  /** Fourth differences, scaled so that independent noise of 1 MPa gives values of 1 MPa. */
  private static double[] noise(double[] step) {
    double[] fourth = differences(differences(differences(step)));
    return Arrays.stream(fourth).map(d -> Math.abs(d) / Math.sqrt(70)).sorted().toArray();
  }

  private static double[] differences(double[] values) {
    return IntStream.range(1, values.length).mapToDouble(i -> values[i] - values[i - 1]).toArray();
  }

  private static PrecipitateState welded(PrecipitateState before, double peak, double cooling) {
    return METAL.advance(before, Treatments.weldCycle(peak, cooling));
  }
}
