package afterweld.thermal;

import static afterweld.quantity.UnitSystem.ZERO_CELSIUS;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ConductionMaterialTest {

  /** Diffusivities of the model definition, mm²/s rounded to whole numbers. */
  @ParameterizedTest
  @CsvSource({
    "6063, 200, 3.7e-4, 2690, 616, 654, 80",
    "6082, 172, 5e-4, 2710, 575, 650, 70",
    "3003, 159, 4e-4, 2730, 643, 654, 64",
    "5083, 117, 8.5e-4, 2660, 580, 638, 51",
    "2219, 121, 1.2e-3, 2840, 543, 643, 51",
    "A356, 151, 4e-4, 2670, 557, 613, 62"
  })
  void takesTheDiffusivityAt150Degrees(
      String name,
      double conductivity,
      double slope,
      double density,
      double solidus,
      double liquidus,
      double expected) {
    ConductionMaterial metal =
        ConductionMaterial.of(
            Metals.alloy(
                name, solidus, liquidus, density, 380e3, Map.of("all", conductivity), slope),
            "T6");
    assertEquals(expected, metal.diffusivity() * 1e6, 0.85);
  }

  /** Heat potential of 6061 between 20 °C and solidus, fusion line and liquidus, W/mm. */
  @ParameterizedTest
  @CsvSource({"582, 114.75", "617, 122.50", "652, 129.28"})
  void knowsTheHeatPotentialOfMelting(double celsius, double expected) {
    HeatPotential potential = Metals.ALUMINIUM_6061.potential();
    double rise = potential.at(celsius + ZERO_CELSIUS) - potential.at(20 + ZERO_CELSIUS);
    assertEquals(expected, rise * 1e-3, 0.01);
  }

  @Test
  void knowsTheLatentTermAndTheFusionLineOf6061() {
    assertEquals(69.8e3, Metals.ALUMINIUM_6061.latentTerm(), 50);
    assertEquals(617 + ZERO_CELSIUS, Metals.ALUMINIUM_6061.fusionTemperature(), 1e-9);
    assertEquals(200, Metals.ALUMINIUM_6061.lossConductivity(), 1.5);
  }

  @Test
  void losesAQuarterOfTheConductivityOnMelting() {
    ConductionMaterial metal =
        ConductionMaterial.of(
            Metals.alloy("6063", 616, 654, 2690, 380e3, Map.of("T6", 200.0), 3.7e-4), "T6");
    double solid = metal.potential().conductivity(616 + ZERO_CELSIUS - 1);
    double liquid = metal.potential().conductivity(654 + ZERO_CELSIUS + 1);
    assertEquals(200 * (1 + 3.7e-4 * 595), solid, 0.01);
    assertEquals(0.75 * 200 * (1 + 3.7e-4 * 596), liquid, 0.01);
  }

  /** One watt over one metre and one kelvin: SI in, SI out. */
  @Test
  void countsInSiUnits() {
    HeatPotential potential = HeatPotential.constant(200);
    assertEquals(200, potential.at(301) - potential.at(300), 1e-9);
    assertEquals(0, potential.at(ZERO_CELSIUS), 1e-9);
  }

  @Property(tries = 200)
  void findsTheTemperatureBack(@ForAll @DoubleRange(min = 180, max = 4200) double kelvin) {
    HeatPotential potential = Metals.ALUMINIUM_6061.potential();
    assertEquals(kelvin, potential.temperature(potential.at(kelvin)), 1e-6);
  }

  @Test
  void staysAtTheTopOfItsTableInsideTheArc() {
    HeatPotential potential = Metals.ALUMINIUM_6061.potential();
    double top = potential.at(4000 + ZERO_CELSIUS);
    assertEquals(4000 + ZERO_CELSIUS, potential.temperature(2 * top), 1e-6);
    assertTrue(potential.insideArc(2 * top));
    assertFalse(potential.insideArc(0.99 * top));
  }

  @ParameterizedTest
  @CsvSource({
    "T6, 167",
    "T651, 167",
    "T4, 154",
    "T451, 154",
    "T5, 167",
    "O, 180",
    "F, 180",
    "H12, 180"
  })
  void takesTheNearestTemperListed(String temper, double expected) {
    Map<String, Double> listed = Map.of("O", 180.0, "T4", 154.0, "T6", 167.0);
    assertEquals(expected, NearestTemper.value(listed, temper));
  }

  @Test
  void readsSeveralTempersInOneKey() {
    Map<String, Double> listed = Map.of("O", 172.0, "T31/T37", 113.0, "T62/T81/T87", 121.0);
    assertEquals(113, NearestTemper.value(listed, "T37"));
    assertEquals(121, NearestTemper.value(listed, "T87"));
    assertEquals(138, NearestTemper.value(Map.of("all", 138.0), "H32"));
    assertThrows(IllegalArgumentException.class, () -> NearestTemper.value(Map.of(), "T6"));
  }

  @Test
  void refusesAMetalThatCannotBe() {
    assertThrows(IllegalArgumentException.class, () -> Metals.constant(200, 70e-6, 650, 580));
    assertThrows(IllegalArgumentException.class, () -> Metals.constant(200, -1, 580, 650));
  }
}
