package afterweld.choice.schedule;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import afterweld.choice.answer.Objection.Severity;
import afterweld.choice.answer.Requirement;
import afterweld.material.Composition;
import afterweld.material.Element;
import afterweld.section.Cases;
import afterweld.thermal.furnace.FurnaceStep;
import afterweld.thermal.furnace.FurnaceStep.Age;
import afterweld.thermal.furnace.FurnaceStep.Ramp;
import afterweld.weld.Side;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Bases and lots that a furnace does nothing for, or harm to; common practice where not named. */
class UnsuitedMetalTest {
  private static Side stated(Side side, Composition composition, Element... certified) {
    return new Side(
        side.alloy(),
        side.temper(),
        side.thickness(),
        side.width(),
        composition,
        Set.of(certified));
  }

  private static List<String> said(Severity severity, Cases cases, List<FurnaceStep> steps) {
    return ScheduleCheck.of(cases.then(steps).weldCase(), Requirement.NONE, severity);
  }

  private static void assertSaid(String word, List<String> found) {
    assertTrue(found.stream().anyMatch(text -> text.contains(word)), found.toString());
  }

  /** 443.0, with hardly any magnesium, is cast and used as it is (ASTM B26). */
  @Test
  void aLotWithoutWhatTheAlloyHardensByIsNotSentToTheFurnace() {
    Side plain = Cases.side("A356", "T6", 0.008);
    Side lean = stated(plain, plain.composition().with(Element.MG, 0.03), Element.MG);
    Cases castings = Cases.butt("A356", "T6").withFiller(Cases.filler("4043", 0.4));
    List<FurnaceStep> treatment = Cases.fullTreatment("A356");
    assertTrue(
        said(Severity.OBJECTED, castings.withLeft(plain).withRight(plain), treatment).stream()
            .noneMatch(text -> text.contains("certificate")));
    assertSaid(
        "Mg 0.03 %, under the 0.25 %",
        said(Severity.OBJECTED, castings.withLeft(lean).withRight(lean), treatment));
  }

  /** A repair melts what a 4043 weld left: no certificate is wrong, and the furnace may have it. */
  @Test
  void oldWeldMetalStatedAsCompositionIsNoLeanLot() {
    Side plain = Cases.side("6061", "T6", 0.006);
    Composition left = plain.composition().with(Element.MG, 0.45).with(Element.SI, 3.3);
    Cases repair =
        Cases.butt("6061", "T6")
            .withLeft(plain)
            .withRight(stated(plain, left, Element.MG, Element.SI))
            .withFiller(Cases.filler("4643", 0.35));
    List<FurnaceStep> treatment = Cases.fullTreatment("6061");
    assertEquals(List.of(), said(Severity.OBJECTED, repair, treatment));
    assertSaid(
        "With Si 3.3 % the metal stated is no 6061", said(Severity.NOTED, repair, treatment));
    Side lean = stated(plain, plain.composition().with(Element.MG, 0.45), Element.MG, Element.SI);
    assertSaid(
        "Find out which alloy",
        said(Severity.OBJECTED, repair.withRight(lean).withLeft(lean), treatment));
  }

  /** Metal with more than 3 % Mg is sensitized by time at 65 to 200 °C (ASTM G67 tests for it). */
  @ParameterizedTest
  @CsvSource({"H116, costs", "O, hardens nothing"})
  void aBakeOfMetalRichInMagnesiumSaysWhatItBegins(String temper, String word) {
    Cases plate = Cases.butt("5083", temper).withFiller(Cases.filler("5183", 0.35));
    List<FurnaceStep> bake = List.of(new Age(463.15, 1800, Ramp.BY_FURNACE, false));
    assertEquals(List.of(), said(Severity.OBJECTED, plate, bake));
    String noted = String.join(" ", said(Severity.NOTED, plate, bake));
    assertTrue(noted.contains(word) && noted.contains("line its grain boundaries"), noted);
  }
}
