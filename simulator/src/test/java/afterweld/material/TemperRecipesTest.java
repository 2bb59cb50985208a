package afterweld.material;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import afterweld.material.TemperRecipe.Leg;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The recipes against the histories that the strength model was calibrated with (model definition):
 * seconds and °C, in full.
 */
class TemperRecipesTest {
  private static final MaterialLibrary LIBRARY = MaterialLibrary.standard();

  /** The tolerance is the rounding of the reference: 1 ms, and 0.1 s in the slow leg of O. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          6061  | T4 | 0:530 3600:530 3601.68333:25 2595601.683:25 | 0.001
          6061  | T6 | 0:530 3600:530 3601.68333:25 90001.68333:25 90301.68333:175 119101.6833:175 119176.6833:25 | 0.001
          6061  | O  | 0:530 3600:530 3601.68333:25 5551.68333:415 14551.68333:415 34480.28333:260 39180.28333:25 | 0.05
          6063  | T4 | 0:520 3600:520 3601.65:25 2595601.65:25 | 0.001
          6063  | T6 | 0:520 3600:520 3601.65:25 90001.65:25 90301.65:175 119101.65:175 119176.65:25 | 0.001
          6063  | T5 | 0:520 3600:520 3765:25 90165:25 90525:205 94125:205 94215:25 | 0.001
          6082  | T4 | 0:540 3600:540 3601.71667:25 2595601.717:25 | 0.001
          6082  | T6 | 0:540 3600:540 3601.71667:25 90001.71667:25 90301.71667:175 119101.7167:175 119176.7167:25 | 0.001
          6005A | T6 | 0:530 3600:530 3601.68333:25 90001.68333:25 90301.68333:175 119101.6833:175 119176.6833:25 | 0.001
          A356  | T6 | 0:25 600:540 29400:540 29405.15:25 115805.15:25 116065.15:155 152065.15:155 152130.15:25 | 0.001
          A357  | T6 | 0:25 600:540 29400:540 29405.15:25 115805.15:25 116085.15:165 144885.15:165 144955.15:25 | 0.001
          """)
  void followTheHistoriesOfTheCalibration(
      String alloy, String temper, String history, double tolerance) {
    List<String> expected = List.of(history.split(" ", -1));
    List<double[]> points = points(recipe(alloy, temper));
    assertEquals(expected.size(), points.size());
    for (int i = 0; i < points.size(); i++) {
      String[] point = expected.get(i).split(":", -1);
      assertEquals(Double.parseDouble(point[0]), points.get(i)[0], tolerance, "time of point " + i);
      assertEquals(Double.parseDouble(point[1]), points.get(i)[1], 1e-9, "point " + i);
    }
  }

  /** Model definition: solution temperature, 300 K/s quench and 3 K/s press cooling. */
  @ParameterizedTest
  @CsvSource({"6061, 530", "6063, 520", "6060, 520", "6082, 540", "6005A, 530", "6351, 520"})
  void startDissolvedAtTheSolutionTemperature(String alloy, double celsius) {
    for (String temper : List.of("O", "T1", "T4", "T5", "T6")) {
      TemperRecipe recipe = recipe(alloy, temper);
      double rate = temper.equals("T1") || temper.equals("T5") ? 3 : 300;
      assertEquals(celsius + 273.15, recipe.startTemperature());
      assertEquals(new Leg(3600, celsius + 273.15), recipe.legs().get(0));
      assertEquals((celsius - 25) / rate, recipe.legs().get(1).duration(), 1e-9);
      assertEquals(25 + 273.15, recipe.legs().get(recipe.legs().size() - 1).endTemperature());
      assertTrue(!recipe.asCast());
    }
    assertEquals(30 * 86400.0, recipe(alloy, "T1").legs().get(2).duration());
  }

  @Test
  void age6351AtItsOwnTemperature() {
    assertEquals(174 + 273.15, recipe("6351", "T6").legs().get(4).endTemperature());
    assertEquals(8 * 3600.0, recipe("6351", "T6").legs().get(4).duration());
  }

  @Test
  void castingsStartAsSolidified() {
    assertTrue(recipe("A356", "T6").asCast());
    assertTrue(recipe("A357", "T61").asCast());
  }

  @ParameterizedTest
  @ValueSource(strings = {"6061", "6060", "6082", "6005A", "6351"})
  void pressTempersOfOtherAlloysThan6063AreMarkedAssumed(String alloy) {
    assertEquals(Status.ASSUMED, temper(alloy, "T1").source().status());
    assertEquals(Status.ASSUMED, temper(alloy, "T5").source().status());
    assertNotEquals(Status.ASSUMED, temper("6063", "T1").source().status());
    assertNotEquals(Status.ASSUMED, temper("6063", "T5").source().status());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "melted at 700 °C; hold 1 h",
        "dissolved at 530 °C; hold 1 week",
        "dissolved at 530 °C; 300 K/s to 25",
        "dissolved at 530 °C;"
      })
  void refuseWhatIsNotInTheNotation(String text) {
    assertThrows(IllegalArgumentException.class, () -> RecipeNotation.read(text));
  }

  private static Temper temper(String alloy, String temper) {
    return LIBRARY.base(alloy).orElseThrow().temper(temper).orElseThrow();
  }

  private static TemperRecipe recipe(String alloy, String temper) {
    return temper(alloy, temper).recipe().orElseThrow();
  }

  /** Time in s and temperature in °C of every point. */
  private static List<double[]> points(TemperRecipe recipe) {
    List<double[]> points = new ArrayList<>();
    double time = 0;
    points.add(new double[] {time, recipe.startTemperature() - 273.15});
    for (Leg leg : recipe.legs()) {
      time += leg.duration();
      points.add(new double[] {time, leg.endTemperature() - 273.15});
    }
    return points;
  }
}
