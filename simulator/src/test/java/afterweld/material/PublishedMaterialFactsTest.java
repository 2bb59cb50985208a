package afterweld.material;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The library against figures that were published elsewhere. */
class PublishedMaterialFactsTest {
  private static final MaterialLibrary LIBRARY = MaterialLibrary.standard();

  /**
   * Typical properties of the Aluminum Association in its own unit, ksi (Aluminum Standards and
   * Data, from memory); castings from ASM Handbook vol. 2. Half a ksi is the rounding of the table;
   * metric tables round to 5 MPa.
   */
  @ParameterizedTest
  @CsvSource({
    "6061, O, 8, 18",
    "6061, T4, 21, 35",
    "6061, T6, 40, 45",
    "6063, T1, 13, 22",
    "6063, T4, 13, 25",
    "6063, T5, 21, 27",
    "6063, T6, 31, 35",
    "6351, T6, 41, 45",
    "A356, T6, 30, 41",
    "A357, T6, 42, 52",
    "1100, O, 5, 13",
    "1100, H18, 22, 24",
    "3003, O, 6, 16",
    "3003, H14, 21, 22",
    "5052, O, 13, 28",
    "5052, H32, 28, 33",
    "5052, H34, 31, 38",
    "5083, O, 21, 42",
    "5083, H116, 33, 46",
    "5086, H32, 30, 42",
    "5454, H34, 35, 44"
  })
  void handbookStrengthIsTheTypicalOne(String alloy, String temper, double yield, double tensile) {
    Temper.Handbook handbook =
        LIBRARY.base(alloy).orElseThrow().temper(temper).orElseThrow().handbook().orElseThrow();
    double halfKsi = 3.45e6;
    assertEquals(yield * 6.895e6, handbook.yield(), halfKsi);
    assertEquals(tensile * 6.895e6, handbook.tensile(), halfKsi);
    assertTrue(!handbook.minimum());
  }

  /** Aluminum Association typical 6061-T6: 276 MPa proof, 310 MPa tensile. */
  @Test
  void sixtySixtyOneT6() {
    Temper.Handbook handbook =
        LIBRARY.base("6061").orElseThrow().temper("T651").orElseThrow().handbook().orElseThrow();
    assertEquals(276e6, handbook.yield());
    assertEquals(310e6, handbook.tensile());
  }

  /**
   * The binary aluminium-silicon eutectic melts at 577 °C with 12.6 % Si (Murray and McAlister).
   */
  @Test
  void eutecticFillerMeltsAtTheEutectic() {
    Alloy filler = LIBRARY.filler("4047").orElseThrow();
    assertEquals(577 + 273.15, filler.solidus(), 1);
    assertTrue(filler.liquidus() - filler.solidus() < 10);
  }

  /** No aluminium-silicon-magnesium metal starts to melt below the ternary eutectic, 555 °C. */
  @ParameterizedTest
  @CsvSource({"6061", "6063", "6060", "6082", "6005A", "6351", "A356", "A357"})
  void noBaseMeltsBelowTheTernaryEutectic(String alloy) {
    assertTrue(LIBRARY.base(alloy).orElseThrow().solidus() >= 555 + 273.15);
  }

  /**
   * Wiedemann-Franz: conductivity = 2.44e-8 V²/K² x electrical conductivity x temperature, here
   * with the IACS values of 6061 that the trade checks tempers by (O 47, T4 40, T6 43, from
   * memory). The law is good to 10 % in alloys.
   */
  @ParameterizedTest
  @CsvSource({"O, 47", "T4, 40", "T6, 43"})
  void conductivityOf6061GoesWithItsElectricalConductivity(String temper, double iacs) {
    double siemensPerMetre = iacs / 100 * 58.0e6;
    double expected = 2.44e-8 * siemensPerMetre * 293.15;
    double heat = LIBRARY.base("6061").orElseThrow().conductivityByTemper().get(temper);
    assertEquals(expected, heat, 0.1 * expected);
  }

  /** Worked examples of dilution: 6061 with 4043 and with 5356, linear mix. */
  @Test
  void weldMetalMixesLinearly() {
    Composition base = LIBRARY.base("6061").orElseThrow().composition();
    Composition silicon = LIBRARY.filler("4043").orElseThrow().composition();
    Composition magnesium = LIBRARY.filler("5356").orElseThrow().composition();
    assertEquals(3.36, base.mixedWith(silicon, 0.4).of(Element.SI), 0.005);
    assertEquals(0.41, base.mixedWith(silicon, 0.4).of(Element.MG), 0.005);
    assertEquals(3.4, base.mixedWith(magnesium, 0.4).of(Element.MG), 0.05);
    assertEquals(1.8, base.mixedWith(magnesium, 0.8).of(Element.MG), 0.05);
  }

  /**
   * Kissell and Ferry, Aluminum Structures: the welded tensile strength of the Aluminum Design
   * Manual is the qualification minimum of AWS D1.2. Both tables are rounded from ksi, to 1 and to
   * 5 MPa.
   */
  @Test
  void weldedMinimaAgreeBetweenTheCodes() throws IOException {
    List<Map<String, String>> rows = DataFilesTest.read("design_codes.csv");
    List<Map<String, String>> qualified =
        rows.stream().filter(row -> row.get("code").equals("AWS D1.2")).toList();
    assertTrue(qualified.size() >= 10);
    for (Map<String, String> row : qualified) {
      double minimum = Double.parseDouble(row.get("value"));
      assertTrue(
          rows.stream()
              .filter(other -> other.get("quantity").equals("welded minimum tensile strength"))
              .filter(other -> other.get("alloy").equals(row.get("alloy")))
              .anyMatch(other -> Math.abs(Double.parseDouble(other.get("value")) - minimum) <= 2.5),
          row.toString());
    }
  }

  /** EN 1999-1-1, Table 3.2b: 6061-T6 has 115 MPa proof and 175 MPa tensile strength in the HAZ. */
  @ParameterizedTest
  @CsvSource({"'proof in the HAZ, MIG', 115", "'tensile strength in the HAZ, MIG', 175"})
  void designCodeSoftensTheWeldOf6061T6(String quantity, double megapascal) throws IOException {
    List<Double> values =
        DataFilesTest.read("design_codes.csv").stream()
            .filter(row -> row.get("alloy").equals("6061") && row.get("temper").equals("T6"))
            .filter(row -> row.get("quantity").equals(quantity))
            .map(row -> Double.parseDouble(row.get("value")))
            .distinct()
            .toList();
    assertEquals(List.of(megapascal), values);
  }
}
