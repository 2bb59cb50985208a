package afterweld.choice.filler;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import afterweld.choice.CaseObjections;
import afterweld.choice.answer.Objection;
import afterweld.choice.answer.Requirement;
import afterweld.choice.schedule.ScheduleCheck;
import afterweld.material.Alloy;
import afterweld.material.MaterialLibrary;
import afterweld.section.Cases;
import afterweld.section.Welded;
import afterweld.section.WrittenWelds;
import afterweld.thermal.furnace.FurnaceStep;
import afterweld.weld.Side;
import afterweld.weld.WeldCase;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** A reason beside a filler says nothing that its row of numbers may contradict. */
class FillerReasonsTest {
  private static final MaterialLibrary LIBRARY = MaterialLibrary.standard();
  private static final Requirement COLOUR = service(Optional.of(true), OptionalDouble.empty());

  private static Requirement service(Optional<Boolean> colour, OptionalDouble temperature) {
    OptionalDouble none = OptionalDouble.empty();
    return new Requirement(none, none, none, colour, temperature);
  }

  private static FillerOption option(WeldCase weld, Requirement asked, String filler) {
    return FillerComparison.of(Welded.SESSION, weld, asked).option(filler).orElseThrow();
  }

  @Test
  void strengthAndResponseAreToldByTheNumbersAlone() {
    Pattern judging = Pattern.compile("stronger|strength|undermatch|response|6082|crack-prone");
    List<String> judged =
        LIBRARY.bases().stream()
            .flatMap(FillerReasonsTest::notes)
            .filter(note -> judging.matcher(note.substring(note.indexOf(':'))).find())
            .toList();
    assertEquals(List.of(), judged);
  }

  private static Stream<String> notes(Alloy base) {
    return LIBRARY.fillers().stream()
        .flatMap(filler -> LIBRARY.guidance(base.name(), filler.name()).stream())
        .map(words -> words.filler() + " on " + words.base() + ": " + words.note());
  }

  @Test
  void whatTheGuidesCallSoftTakesPartInNoFullTreatment() {
    // Filler guides, from memory: 5554 on 6xxx does not answer to heat treatment.
    WeldCase treated = Cases.butt("6061", "T6").then(Cases.fullTreatment("6061")).weldCase();
    FillerOption soft = option(treated, Requirement.NONE, "5554");
    assertFalse(soft.allowed());
    assertTrue(Double.isNaN(soft.treatedYieldAt(0.7)));
    FillerOption welded = option(Cases.butt("6061", "T6").weldCase(), Requirement.NONE, "5554");
    assertTrue(welded.allowed(), "nobody asked for a furnace");
    assertEquals(FillerOption.Answer.NO, welded.answer());
  }

  @Test
  void aSiliconFillerIsKeptFromAColourWithoutAFigureForItsWeldMetal() {
    Cases diluted = Cases.butt("6061", "T6").withFiller(Cases.filler("4043", 0.7));
    FillerOption silicon = option(diluted.weldCase(), COLOUR, "4043");
    assertFalse(silicon.allowed());
    assertTrue(silicon.reasons().stream().noneMatch(reason -> reason.contains("2 %")));
  }

  @Test
  void anEighthOfAnInchIsThinEnoughForAWeldWithoutFiller() {
    // The trade's 3 mm and 1/8 in are one limit (common practice).
    Side eighth = Cases.side("1100", "O", 25.4e-3 / 8);
    Cases thin = Cases.butt("1100", "O").withLeft(eighth).withRight(eighth);
    assertTrue(option(thin.weldCase(), Requirement.NONE, "none").allowed());
  }

  /** Outside corners of thin sheet are fused without filler (common practice); a fillet is not. */
  @Test
  void aCornerWithSquareEdgesNeedsNoFiller() {
    String sheet = "left: {alloy: \"3003\", temper: H14, thickness: 1.5 mm}\nfiller: none\njoint: ";
    String pass = "process: GTAW-AC, current: 60 A, voltage: 12 V, travel_speed: 3 mm/s";
    WeldCase corner = WrittenWelds.of(sheet + "corner\n", pass, 1);
    WeldCase tee = WrittenWelds.of(sheet + "tee\n", pass, 1);
    assertTrue(option(corner, Requirement.NONE, "none").allowed());
    assertFalse(option(tee, Requirement.NONE, "none").allowed());
  }

  @Test
  void aNoteThatHoldsForOneBaseNamesIt() {
    Cases unlike = Cases.butt("5052", "O").withRight(Cases.side("5454", "O", 6e-3));
    List<String> reasons = option(unlike.weldCase(), Requirement.NONE, "5554").reasons();
    assertTrue(reasons.stream().anyMatch(reason -> reason.startsWith("Guide, on 5454: ")));
  }

  /** Advice that is followed must not end at another refusal. */
  @Test
  void noFillerIsAdvisedThatCracksAtTheDilutionOfTheJoint() {
    FurnaceStep aged = Cases.fullTreatment("6060").get(3);
    Cases extruded = Cases.butt("6060", "T4").then(List.of(aged));
    String thin = objection(extruded.withFiller(Cases.filler("5356", 0.6)).weldCase(), COLOUR);
    assertFalse(thin.contains("Take"), thin);
    assertTrue(
        thin.contains("5554 would suit, but at the dilution of this joint it tends to crack"),
        thin);
    Cases warm = Cases.butt("5454", "H34").withFiller(Cases.filler("5356", 0.3));
    Requirement tank = service(Optional.empty(), OptionalDouble.of(373.15));
    String clear = objection(warm.weldCase(), tank);
    assertTrue(clear.contains("Take 5554"), clear);
  }

  private static String objection(WeldCase weld, Requirement asked) {
    return FillerCheck.objection(weld, asked).orElseThrow().text();
  }

  /** Work-hardened sheet is annealed in the solution furnace, whatever the filler (textbooks). */
  @Test
  void noFillerIsAdvisedForATreatmentThatAnnealsOneSide() {
    Cases unlike = Cases.butt("6061", "T6").withRight(Cases.side("5052", "H34", 3e-3));
    Cases rich = unlike.withFiller(Cases.filler("5356", 0.4)).then(Cases.fullTreatment("6061"));
    String refusal = MagnesiumRule.refusal(rich.weldCase(), Requirement.NONE);
    assertTrue(refusal.endsWith("The furnace anneals 5052 too: leave it as welded."), refusal);
  }

  /** A silicon filler goes grey, one rich in magnesium bears no furnace (filler guides, memory). */
  @Test
  void whereNoFillerServesBothTheDrawingIsToldWhatToGiveUp() {
    Cases rich = Cases.butt("6082", "T6").withFiller(Cases.filler("5183", 0.3));
    WeldCase treated = rich.then(Cases.fullTreatment("6082")).weldCase();
    List<String> said =
        List.of(
            MagnesiumRule.refusal(treated, COLOUR),
            ScheduleCheck.of(treated, COLOUR).get(0).text(),
            objection(rich.then(List.of(Cases.fullTreatment("6082").get(3))).weldCase(), COLOUR));
    for (String text : said) {
      assertFalse(text.contains("Take"), text);
      assertTrue(text.contains("leave the joint as welded, or give up the match in colour"), text);
    }
    assertTrue(MagnesiumRule.refusal(treated, Requirement.NONE).contains("Take 4643"));
  }

  @Test
  void everyFillerThatIsAdvisedSuitsWhatTheCaseRequires() {
    Requirement warm = service(Optional.empty(), OptionalDouble.of(373.15));
    for (String base : List.of("6061", "6063", "6082", "6005A", "A356")) {
      Cases rich = Cases.butt(base, "T6").withFiller(Cases.filler("5356", 0.4));
      Cases treated = rich.then(Cases.fullTreatment(base));
      for (Requirement asked : List.of(Requirement.NONE, COLOUR, warm)) {
        String text = MagnesiumRule.refusal(treated.weldCase(), asked);
        for (String name : named(text)) {
          WeldCase followed = treated.withFiller(Cases.filler(name, 0.4)).weldCase();
          assertEquals("", ofFiller(followed, asked), base + ": " + text);
        }
      }
    }
  }

  private static String ofFiller(WeldCase weld, Requirement asked) {
    return CaseObjections.serious(weld, asked).stream()
        .filter(objection -> objection.subject() == Objection.Subject.FILLER)
        .map(Objection::text)
        .collect(Collectors.joining(" "));
  }

  private static List<String> named(String text) {
    Matcher advice = Pattern.compile(" Take ((?:\\d{4}(?: or )?)+)").matcher(text);
    return advice.find() ? List.of(advice.group(1).split(" or ")) : List.of();
  }

  @Test
  void everyFillerThatIsComparedHasAReasonWithAndWithoutStrengths() {
    for (FillerOption option :
        FillerComparison.of(Welded.SESSION, Cases.butt("5083", "O").weldCase(), Requirement.NONE)
            .options()) {
      assertFalse(option.sentences().isEmpty(), option.filler());
      assertFalse(option.withoutStrength().sentences().isEmpty(), option.filler());
    }
  }
}
