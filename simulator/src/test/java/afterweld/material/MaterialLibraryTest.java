package afterweld.material;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import afterweld.material.Alloy.Family;
import afterweld.material.Alloy.Limit;
import afterweld.material.Alloy.StandardSchedule;
import afterweld.material.Alloy.Use;
import afterweld.material.FillerGuidance.AnodizedMatch;
import afterweld.material.FillerGuidance.HeatTreatmentResponse;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class MaterialLibraryTest {
  private static final MaterialLibrary LIBRARY = MaterialLibrary.standard();

  static Stream<Alloy> bases() {
    return LIBRARY.bases().stream();
  }

  static Stream<Alloy> alloys() {
    return Stream.concat(bases(), LIBRARY.fillers().stream()).distinct();
  }

  @Test
  void isReadOnce() {
    assertSame(LIBRARY, MaterialLibrary.standard());
  }

  @Test
  void listsBasesAndFillersInFileOrder() {
    assertEquals(
        List.of(
            "6061", "6063", "6060", "6082", "6005A", "6351", "A356", "A357", "1100", "3003", "5052",
            "5083", "5086", "5454"),
        bases().map(Alloy::name).toList());
    assertEquals(
        List.of(
            "4043", "4047", "4643", "4943", "4145", "4008", "4010", "4011", "5356", "5183", "5554",
            "5556", "5654", "1100", "2319"),
        LIBRARY.fillers().stream().map(Alloy::name).toList());
  }

  @ParameterizedTest
  @CsvSource({
    "6061, 6061",
    "AA6061, 6061",
    "aa 6061, 6061",
    "EN AW-6082, 6082",
    "en aw 6082, 6082",
    "EN AW-6005a, 6005A",
    "A356.0, A356",
    "a356, A356",
    "' 5083 ', 5083"
  })
  void understandsBaseNamesOfTheTrade(String written, String name) {
    assertEquals(name, LIBRARY.base(written).orElseThrow().name());
  }

  @ParameterizedTest
  @CsvSource({"ER4043, 4043", "er 5356, 5356", "ER-4643, 4643", "1100, 1100", "AA2319, 2319"})
  void understandsFillerNamesOfTheTrade(String written, String name) {
    assertEquals(name, LIBRARY.filler(written).orElseThrow().name());
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "7075", "4043", "6061-T6", "A3560"})
  void knowsNoOtherBase(String written) {
    assertTrue(LIBRARY.base(written).isEmpty());
  }

  @Test
  void pureAluminiumIsBaseAndFiller() {
    Alloy base = LIBRARY.base("1100").orElseThrow();
    assertSame(base, LIBRARY.filler("1100").orElseThrow());
    assertEquals(List.of(Use.BASE, Use.FILLER), base.uses());
    assertTrue(LIBRARY.filler("6061").isEmpty());
  }

  @ParameterizedTest
  @MethodSource("alloys")
  void givesPlausibleSiValues(Alloy alloy) {
    assertTrue(alloy.solidus() < alloy.liquidus(), "melting range");
    // aluminium melts at 660.3 °C, weighs 2700 kg/m³ and conducts 237 W/(m K) (CRC Handbook)
    assertTrue(alloy.solidus() > 500 + 273.15 && alloy.liquidus() < 660.3 + 273.15);
    assertTrue(alloy.density() > 2600 && alloy.density() < 2900, "density " + alloy.density());
    assertTrue(alloy.latentHeat() > 370e3 && alloy.latentHeat() < 400e3);
    alloy.conductivityByTemper().values().forEach(w -> assertTrue(w > 100 && w < 237, "" + w));
    assertTrue(alloy.conductivitySlope() > 0 && alloy.conductivitySlope() < 2e-3);
    assertTrue(alloy.composition().of(Element.SI) > 0 && alloy.composition().of(Element.FE) > 0);
  }

  @ParameterizedTest
  @MethodSource("bases")
  void everyTemperHasConductivityAndStrengthOrRecipe(Alloy alloy) {
    assertFalse(alloy.tempers().isEmpty());
    for (Temper temper : alloy.tempers()) {
      boolean conducts =
          alloy.conductivityByTemper().containsKey(temper.name())
              || alloy.conductivityByTemper().containsKey("all");
      assertTrue(conducts, temper.name());
      assertEquals(alloy.heatTreatable(), temper.recipe().isPresent(), temper.name());
      assertTrue(alloy.heatTreatable() || temper.handbook().isPresent(), temper.name());
    }
    assertEquals(alloy.heatTreatable(), alloy.schedule().isPresent());
  }

  @ParameterizedTest
  @CsvSource({
    "6061, O T1 T4 T5 T6",
    "6063, O T1 T4 T5 T6",
    "6060, O T1 T4 T5 T6",
    "6082, O T1 T4 T5 T6",
    "6005A, O T1 T4 T5 T6",
    "6351, O T1 T4 T5 T6",
    "A356, T6",
    "A357, T6",
    "1100, O H12 H14 H16 H18",
    "3003, O H12 H14 H16 H18",
    "5052, O H32 H34 H36 H38",
    "5083, O H116",
    "5086, O H112 H32 H116 H34",
    "5454, O H111 H32 H34"
  })
  void hasTheTempersOfTheTrade(String alloy, String tempers) {
    assertEquals(
        List.of(tempers.split(" ", -1)),
        LIBRARY.base(alloy).orElseThrow().tempers().stream().map(Temper::name).toList());
  }

  @Test
  void typicalWorkHardenedTempersAreNotMinima() {
    bases()
        .filter(alloy -> alloy.family() == Family.WORK_HARDENED)
        .flatMap(alloy -> alloy.tempers().stream())
        .forEach(temper -> assertFalse(temper.handbook().orElseThrow().minimum()));
  }

  @Test
  void marksTheMinimumOfAStandard() {
    Alloy alloy = LIBRARY.base("6060").orElseThrow();
    Temper.Handbook handbook = alloy.temper("T6").orElseThrow().handbook().orElseThrow();
    assertTrue(handbook.minimum());
    assertEquals(140e6, handbook.yield());
    assertEquals(Status.READ, handbook.source().status());
  }

  @ParameterizedTest
  @MethodSource("alloys")
  void modelAndNominalCompositionKeepTheLimits(Alloy alloy) {
    alloy
        .limits()
        .forEach(
            (element, limit) -> within(alloy, element, alloy.composition().of(element), limit));
    alloy.facts().stream()
        .filter(fact -> fact.property().equals("nominal"))
        .forEach(fact -> nominalWithin(alloy, fact));
  }

  private static void nominalWithin(Alloy alloy, Fact fact) {
    for (Element element : Element.values()) {
      if (element.symbol().equals(fact.qualifier()) && alloy.limits().containsKey(element)) {
        within(alloy, element, Double.parseDouble(fact.value()), alloy.limits().get(element));
      }
    }
  }

  private static void within(Alloy alloy, Element element, double share, Limit limit) {
    assertTrue(
        share >= limit.min() && share <= limit.max(),
        alloy.name() + " " + element.symbol() + " " + share + " outside " + limit);
  }

  @Test
  void compositionsKeepTheLimitsOnSums() {
    Composition pure = LIBRARY.base("1100").orElseThrow().composition();
    assertTrue(pure.of(Element.SI) + pure.of(Element.FE) <= 0.95);
    Composition filler = LIBRARY.filler("5654").orElseThrow().composition();
    assertTrue(filler.of(Element.SI) + filler.of(Element.FE) <= 0.45);
    Composition extrusion = LIBRARY.base("6005A").orElseThrow().composition();
    double both = extrusion.of(Element.MN) + extrusion.of(Element.CR);
    assertTrue(both >= 0.12 && both <= 0.50);
  }

  @ParameterizedTest
  @MethodSource("bases")
  void scheduleStaysBelowTheSolidus(Alloy alloy) {
    // furnace tolerance 6 K (AMS 2770) and 5 K more
    alloy
        .schedule()
        .map(StandardSchedule::solutionTemperature)
        .ifPresent(solution -> assertTrue(solution + 11 < alloy.solidus(), alloy.name()));
  }

  @Test
  void scheduleIsInSiUnitsWithItsWeakestStatus() {
    StandardSchedule wrought = LIBRARY.base("6061").orElseThrow().schedule().orElseThrow();
    assertEquals(530 + 273.15, wrought.solutionTemperature());
    assertEquals(3600, wrought.soak());
    assertEquals(177 + 273.15, wrought.ageTemperature());
    assertEquals(8 * 3600, wrought.ageTime());
    StandardSchedule casting = LIBRARY.base("A357").orElseThrow().schedule().orElseThrow();
    assertEquals(Status.ASSUMED, casting.source().status());
    assertTrue(casting.source().text().contains("ASTM B917"));
  }

  @Test
  void guidanceKnowsFillersOfEveryBase() {
    for (Alloy base : LIBRARY.bases()) {
      long guided =
          LIBRARY.fillers().stream()
              .filter(filler -> LIBRARY.guidance(base.name(), filler.name()).isPresent())
              .count();
      assertTrue(guided >= 3, base.name() + " has " + guided);
    }
  }

  @Test
  void guidanceSpeaksOnlyOfAlloysOfTheLibrary() {
    MaterialLibrary.guidanceRows()
        .forEach(
            row -> {
              assertTrue(LIBRARY.base(row.alloy()).isPresent(), row.toString());
              assertTrue(LIBRARY.filler(row.qualifier()).isPresent(), row.toString());
            });
  }

  @Test
  void noFillerWithMoreThanThreePercentMagnesiumServesHot() {
    for (Alloy base : LIBRARY.bases()) {
      for (Alloy filler : LIBRARY.fillers()) {
        boolean cool = filler.composition().of(Element.MG) <= 3;
        LIBRARY
            .guidance(base.name(), filler.name())
            .ifPresent(words -> assertEquals(cool, words.serviceAbove65C(), words.toString()));
      }
    }
  }

  @Test
  void guidanceTellsWhatAWelderAsks() {
    FillerGuidance silicon = LIBRARY.guidance("aa6061", "ER4043").orElseThrow();
    assertEquals(HeatTreatmentResponse.WITH_DILUTION, silicon.response());
    assertEquals(AnodizedMatch.NO, silicon.anodizedMatch());
    assertEquals(1, silicon.crackResistance());
    FillerGuidance magnesium = LIBRARY.guidance("6061", "5356").orElseThrow();
    assertEquals(HeatTreatmentResponse.NO, magnesium.response());
    assertEquals(AnodizedMatch.YES, magnesium.anodizedMatch());
    assertFalse(magnesium.serviceAbove65C());
    assertTrue(magnesium.strength() < silicon.strength());
    assertEquals(
        HeatTreatmentResponse.YES, LIBRARY.guidance("6061", "4643").orElseThrow().response());
    assertTrue(LIBRARY.guidance("5083", "4043").isEmpty());
  }

  @ParameterizedTest
  @MethodSource("alloys")
  void showsItsFacts(Alloy alloy) {
    assertTrue(alloy.facts().size() > 20);
    assertTrue(
        alloy.facts().stream()
            .anyMatch(fact -> fact.property().equals("solidus") && fact.unit().equals("°C")));
  }
}
