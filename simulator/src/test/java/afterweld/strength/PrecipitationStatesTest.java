package afterweld.strength;

import static afterweld.metallurgy.ReferenceTable.number;
import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;

import afterweld.metallurgy.PrecipitateState;
import afterweld.metallurgy.PrecipitationModel;
import afterweld.metallurgy.ReferenceTable;
import afterweld.metallurgy.SizeDistribution;
import afterweld.metallurgy.Treatments;
import afterweld.thermal.TemperatureHistory;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * 87 states of tempers, ageing, heat-affected zones, weld metal and castings, computed by another
 * implementation of the model definition. They are written with five digits, so strengths agree to
 * 0.01 MPa.
 */
class PrecipitationStatesTest {
  private static final double STRESS = 0.01;
  private static final double HARDNESS = 0.002;
  private static final double SHARE = 1e-4;
  private static final double RELATIVE = 1e-3;

  static List<Map<String, String>> rows() {
    return ReferenceTable.rows("/afterweld/strength/precipitation_states.csv");
  }

  @ParameterizedTest
  @MethodSource("rows")
  void strengthAndState(Map<String, String> row) {
    PrecipitateState state = model(row).follow(history(row));
    assertAll(
        () -> strength(row, PrecipitateStrength.of(state)),
        () -> breakdown(row, PrecipitateStrength.breakdown(state)),
        () -> matrix(row, state),
        () -> needles(row, state),
        () -> coarse(row, state));
  }

  private static void strength(Map<String, String> row, Strength strength) {
    assertEquals(number(row, "YS"), strength.yield() / 1e6, STRESS, "YS");
    assertEquals(number(row, "UTS"), strength.tensile() / 1e6, STRESS, "UTS");
    assertEquals(number(row, "HV"), strength.hardness(), HARDNESS + STRESS / 2, "HV");
  }

  private static void breakdown(Map<String, String> row, StrengthBreakdown parts) {
    assertEquals(number(row, "ss_MPa"), parts.solidSolution() / 1e6, STRESS, "solution");
    assertEquals(number(row, "cl_MPa"), parts.clusters() / 1e6, STRESS, "clusters");
    assertEquals(number(row, "ppt_MPa"), parts.precipitates() / 1e6, STRESS, "precipitates");
    assertEquals(number(row, "cast_MPa"), parts.cast() / 1e6, STRESS, "cast");
  }

  private static void matrix(Map<String, String> row, PrecipitateState state) {
    assertEquals(number(row, "Mg_matrix_wt"), state.matrixMagnesium(), SHARE, "Mg");
    assertEquals(number(row, "Si_matrix_wt"), state.matrixSilicon(), SHARE, "Si");
    assertEquals(number(row, "y"), state.clusterDegree(), SHARE, "clusters");
    assertEquals(number(row, "X"), state.spheroidisation(), SHARE, "spheroidisation");
    double eutectic = state.cast() ? 1.16 * state.siliconPhase() : 0;
    assertEquals(number(row, "f_eutSi"), eutectic, SHARE, "eutectic silicon");
  }

  private static void needles(Map<String, String> row, PrecipitateState state) {
    assertFraction(number(row, "f_H"), state.needleUnits(), "needles");
    assertRelative(number(row, "r_H_nm"), state.meanNeedleRadius() * 1e9, "needle radius");
    assertRelative(number(row, "N_H_m3"), state.needleNumberDensity(), "needle number");
  }

  private static void coarse(Map<String, String> row, PrecipitateState state) {
    assertFraction(number(row, "f_betaP"), state.intermediateUnits(), "intermediate");
    assertFraction(number(row, "f_beta"), state.equilibriumUnits(), "equilibrium");
    SizeDistribution intermediate = state.intermediate();
    assertRelative(number(row, "N_betaP"), intermediate.numberDensity(), "intermediate number");
    assertRelative(number(row, "N_beta"), state.equilibrium().numberDensity(), "beta number");
  }

  private static void assertFraction(double expected, double formulaUnits, String what) {
    assertRelative(expected, PrecipitateState.volumeFraction(formulaUnits), what);
  }

  private static void assertRelative(double expected, double actual, String what) {
    assertEquals(expected, actual, RELATIVE * Math.abs(expected), what);
  }

  static PrecipitationModel model(Map<String, String> row) {
    var composition =
        Treatments.composition(
            number(row, "Si"),
            number(row, "Mg"),
            number(row, "Cu"),
            number(row, "Fe"),
            number(row, "Mn"),
            number(row, "Cr"));
    return row.get("start").equals("cast")
        ? PrecipitationModel.asCast(composition)
        : PrecipitationModel.wrought(composition);
  }

  static TemperatureHistory history(Map<String, String> row) {
    String[] points = row.get("history_t_s:T_C").split(" ", -1);
    double[] time = new double[points.length];
    double[] temperature = new double[points.length];
    for (int i = 0; i < points.length; i++) {
      int colon = points[i].indexOf(':');
      time[i] = Double.parseDouble(points[i].substring(0, colon));
      temperature[i] = Treatments.kelvin(Double.parseDouble(points[i].substring(colon + 1)));
    }
    return TemperatureHistory.of(time, temperature);
  }
}
