package afterweld.choice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import afterweld.choice.answer.Objection;
import afterweld.choice.answer.Objection.Severity;
import afterweld.choice.answer.Requirement;
import afterweld.choice.schedule.ScheduleCheck;
import afterweld.quantity.UnitSystem;
import afterweld.section.Welded;
import afterweld.section.WrittenWelds;
import afterweld.weld.WeldCase;
import afterweld.weldmetal.FurnaceMargin;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Treatments that the trade orders every day, and those that it does not, as orders write them. */
class TradeFiguresTest {
  private static final String PASS =
      "process: GTAW-AC, current: 190 A, voltage: 15 V, travel_speed: 2.5 mm/s";
  private static final String WATER = "{medium: water, temperature: 25 °C, delay: 8 s}";

  private static WeldCase treated(String metal, String temper, String filler, String... steps) {
    String order =
        List.of(steps).stream().map(step -> "  - " + step + "\n").collect(Collectors.joining());
    return WrittenWelds.of(
        ("left: {alloy: \"%s\", temper: %s, thickness: 6 mm}%njoint: butt%n"
                + "filler: {alloy: \"%s\", dilution: 40 %%}%nafter_weld:%n%s")
            .formatted(metal, temper, filler, order),
        PASS,
        2);
  }

  private static WeldCase cast(String bath, String age) {
    return treated(
        "A356",
        "T6",
        "4008",
        "solution_treat: {temperature: 1000 °F, soak: 8 h}",
        "quench: " + bath,
        age);
  }

  private static List<String> objected(WeldCase weldCase) {
    return ScheduleCheck.of(weldCase, Requirement.NONE, Severity.OBJECTED);
  }

  private static List<String> said(WeldCase weldCase) {
    return ScheduleCheck.of(weldCase, Requirement.NONE).stream().map(Objection::text).toList();
  }

  private static WeldCase aged(String temper, String temperature, String time) {
    return treated(
        "6061",
        temper,
        "4643",
        "solution_treat: {temperature: 985 °F, soak: 60 min}",
        "quench: " + WATER,
        "age: {temperature: " + temperature + ", time: " + time + "}");
  }

  /** 325 °F 8 h and 350 °F 4 h are 163 and 177 °C to the trade (data sheets of 6061 and 6063). */
  @ParameterizedTest
  @CsvSource({"325 °F, 8 h", "350 °F, 4 h", "163 °C, 8 h", "177 °C, 4 h", "400 °F, 1 h"})
  void theUsualAgeingsAreNotShort(String temperature, String time) {
    String all = said(aged("T6", temperature, time)).toString();
    assertFalse(all.contains("short"), all);
  }

  @Test
  void anHourLessIsShort() {
    assertTrue(said(aged("T6", "325 °F", "7 h")).toString().contains("short of the 8 h"));
  }

  /** Aged metal gains nothing by any time, so no time is too short for it (fact of the trade). */
  @Test
  void noAgeingIsTooShortForMetalThatComesAged() {
    String age = "age: {temperature: 205 °C, time: 1 h}";
    WeldCase mixed =
        WrittenWelds.of(
            "left: {alloy: A356, temper: T6, thickness: 6 mm}\n"
                + "right: {alloy: \"6063\", temper: T5, thickness: 6 mm}\n"
                + "joint: butt\nafter_weld:\n  - "
                + age
                + "\n",
            PASS,
            2);
    assertEquals(List.of(), objected(mixed));
  }

  /**
   * 1016 °F is 546 °C: 10 °F for the furnace and 5 °C of margin under the 557 °C of the silicon
   * eutectic with Mg2Si.
   */
  @Test
  void theLimitIsOneTemperatureInBothUnits() {
    double fahrenheit = (1016 - 32) / 1.8 + 273.15;
    assertTrue(FurnaceMargin.allows(fahrenheit, 557 + 273.15));
    assertFalse(FurnaceMargin.allows(fahrenheit + 1 / 1.8, 557 + 273.15));
  }

  /**
   * Peak-aged A356 loses some 33 MPa for every ten times slower quench (Zhang and Zheng, Metall.
   * Mater. Trans. A 27, 1996): in moving air, near 2 °C/s, a quarter of its yield.
   */
  @ParameterizedTest
  @CsvSource({"forced-air, true", "still-air, true", "water, false"})
  void castingsAreNotQuenchedInAir(String medium, boolean against) {
    String bath =
        medium.equals("water") ? "{medium: water, temperature: 70 °C}" : "{medium: " + medium + "}";
    WeldCase casting = cast(bath, "age: {temperature: 310 °F, time: 5 h}");
    assertEquals(against, !objected(casting).isEmpty(), objected(casting).toString());
  }

  /** 300 °F is what the trade calls 150 °C. */
  @Test
  void threeHundredFahrenheitIsAnAgeing() {
    WeldCase casting =
        cast("{medium: water, temperature: 70 °C}", "age: {temperature: 300 °F, time: 16 h}");
    assertEquals(List.of(), objected(casting));
  }

  /** Castings are annealed at 600 to 650 °F for 2 to 4 h (AMS 2771 practice, from memory). */
  @Test
  void castingsAnnealColderThanWroughtMetal() {
    String anneal = "anneal: {temperature: 650 °F, time: 3 h}";
    assertEquals(List.of(), objected(treated("A356", "T6", "4008", anneal)));
    assertFalse(objected(treated("6061", "T6", "4043", anneal)).isEmpty());
  }

  private static FurnaceSheet sheet(WeldCase weldCase, Requirement asked) {
    return FurnaceSheet.of(weldCase, asked, UnitSystem.METRIC, Welded.SESSION::profile)
        .orElseThrow();
  }

  private static List<String> heads(FurnaceSheet sheet) {
    return sheet.lines().stream().map(FurnaceSheet.Line::what).toList();
  }

  @Test
  void aTreatmentThatOnlyHarmsIsLeftOutWhole() {
    WeldCase tank =
        treated(
            "3003",
            "H14",
            "4043",
            "solution_treat: {temperature: 985 °F, soak: 60 min}",
            "quench: " + WATER,
            "age: {temperature: 350 °F, time: 8 h}");
    List<String> heads = heads(sheet(tank, Requirement.NONE));
    assertEquals(3, heads.stream().filter("Leave out"::equals).count(), heads.toString());
    assertFalse(heads.contains("Quench"), heads.toString());
  }

  @Test
  void aSheetOrdersWhatItsHardnessIsComputedFor() {
    WeldCase panel = treated("5454", "H34", "5554", "age: {temperature: 350 °F, time: 8 h}");
    FurnaceSheet sheet = sheet(panel, Requirement.NONE);
    assertTrue(heads(sheet).contains("Ageing"), heads(sheet).toString());
  }

  /** T7 is overaged, T72 overaged by the user (ANSI H35.1, from memory). */
  @Test
  void overagedMetalIsNotMarkedT6() {
    String age = "age: {temperature: 475 °F, time: 3 h, overage: true}";
    WeldCase casting = cast("{medium: water, temperature: 70 °C}", age);
    assertTrue(
        FurnaceSheetTest.text(sheet(casting, Requirement.NONE), "Mark as").startsWith("T7,"));
    WeldCase wrought =
        treated(
            "6061",
            "T6",
            "4643",
            "solution_treat: {temperature: 985 °F, soak: 60 min}",
            "quench: " + WATER,
            "age: {temperature: 200 °C, time: 20 h, overage: true}");
    assertTrue(
        FurnaceSheetTest.text(sheet(wrought, Requirement.NONE), "Mark as").startsWith("T72,"));
  }

  private static Requirement hardness(double vickers) {
    OptionalDouble none = OptionalDouble.empty();
    return new Requirement(none, none, OptionalDouble.of(vickers), Optional.empty(), none);
  }

  /** What the drawing refuses no reading passes. */
  @ParameterizedTest
  @ValueSource(doubles = {60, 90, 105})
  void noReadingUnderTheDrawingPasses(double asked) {
    for (FurnaceSheet.Expected one :
        sheet(aged("T6", "350 °F", "8 h"), hardness(asked)).expected()) {
      assertTrue(one.recheck().limit() >= asked, one.toString());
    }
  }

  /** A part that never saw the furnace is found by the readings that the sheet orders. */
  @Test
  void aPartThatMissedItsAnnealIsFound() {
    WeldCase annealed = treated("6061", "T6", "4043", "anneal: {temperature: 775 °F, time: 2 h}");
    double softestAsWelded =
        Welded.SESSION.profile(annealed.withAfterWeld(List.of())).stations().stream()
            .mapToDouble(station -> station.estimates().get(1).middle().hardness())
            .min()
            .orElseThrow();
    FurnaceSheet.Expected beside =
        sheet(annealed, Requirement.NONE).expected().stream()
            .filter(one -> one.place().equals("beside the weld"))
            .findFirst()
            .orElseThrow();
    assertTrue(
        beside.recheck().limit() < softestAsWelded, beside + ", as welded " + softestAsWelded);
  }

  /** Weld metal of 4043 reads annealed about as it was deposited: it cannot tell of the furnace. */
  @Test
  void aReadingThatCannotFindAMissedAnnealSaysSo() {
    WeldCase annealed =
        WrittenWelds.of(
            """
            left: {alloy: "6061", temper: O, thickness: 3 mm}
            joint: butt
            filler: {alloy: "4043", dilution: 20 %}
            after_weld:
              - anneal: {temperature: 775 °F, time: 2 h}
            """,
            "process: GTAW-AC, current: 125 A, voltage: 14 V, travel_speed: 3.2 mm/s", 1);
    FurnaceSheet.Expected weld =
        sheet(annealed, Requirement.NONE).expected().stream()
            .filter(one -> one.place().equals("weld metal"))
            .findFirst()
            .orElseThrow();
    assertTrue(weld.recheck().means().contains("the other places tell"), weld.toString());
  }

  /** A treatment that is good for two castings alone is good for them joined (ASTM B917, read). */
  @Test
  void whatSuitsTwoCastingsSuitsThemJoined() {
    WeldCase joined =
        WrittenWelds.of(
            """
            left: {alloy: A357, temper: T6, thickness: 9 mm}
            right: {alloy: A356, temper: T6, thickness: 9 mm}
            joint: butt
            filler: {alloy: "4643", dilution: 30 %}
            after_weld:
              - solution_treat: {temperature: 1000 °F, soak: 10 h}
              - quench: {medium: water, temperature: 150 °F, delay: 10 s}
              - age: {temperature: 310 °F, time: 4 h}
            """,
            PASS, 2);
    assertEquals(List.of(), objected(joined));
  }
}
