package afterweld.choice.filler;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import afterweld.choice.answer.Requirement;
import afterweld.choice.filler.FillerOption.Answer;
import afterweld.material.Element;
import afterweld.quantity.UnitSystem;
import afterweld.section.Cases;
import afterweld.section.Welded;
import afterweld.thermal.furnace.FurnaceStep;
import afterweld.thermal.furnace.QuenchMedium;
import afterweld.weld.FillerChoice;
import afterweld.weld.Joint;
import afterweld.weld.Preparation;
import afterweld.weld.WeldCase;
import afterweld.weldmetal.CrackTendency;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Facts of the trade about fillers must come out of the computation. */
class FillerComparisonTest {
  private static FillerComparison comparison(Cases cases) {
    return FillerComparison.of(Welded.SESSION, cases.weldCase(), Requirement.NONE);
  }

  private static FillerOption of(FillerComparison comparison, String filler) {
    return comparison.options().stream()
        .filter(option -> option.filler().equals(filler))
        .findFirst()
        .orElseThrow();
  }

  private static Cases treated() {
    return Cases.butt("6061", "T6").then(Cases.fullTreatment("6061"));
  }

  @Test
  void theMagnesiumBearingSiliconFillerAnswersAtLowDilutionAndThePlainOneDoesNot() {
    // Armao, The Fabricator: 4043 answers only where the base dilutes it, 4643 was made to answer.
    FillerComparison comparison = comparison(treated());
    FillerOption plain = of(comparison, "4043");
    FillerOption bearing = of(comparison, "4643");
    assertTrue(bearing.treatedYieldAt(0.15) > 1.15 * plain.treatedYieldAt(0.15));
    assertEquals(Answer.WITH_DILUTION, plain.answer());
    double far = comparison.baseTreated();
    assertTrue(plain.treatedYieldAt(0.6) > 0.85 * far && bearing.treatedYieldAt(0.6) > 0.85 * far);
    double from = plain.answersFrom().orElseThrow();
    assertTrue(from > bearing.answersFrom().orElseThrow() && from > 0.1, "from " + from);
  }

  @Test
  void muchMagnesiumIsKeptOutOfTheFurnaceAndWelcomeWithoutOne() {
    FillerOption rich = of(comparison(treated()), "5356");
    assertFalse(rich.allowed());
    assertTrue(Double.isNaN(rich.treatedYieldAt(0.4)), "the size of its response is not shown");
    assertEquals(MagnesiumRule.NO_FULL_TREATMENT, rich.reasons().get(0));
    FillerComparison welded = comparison(Cases.butt("6061", "T6"));
    assertTrue(of(welded, "5356").allowed(), "nobody asked for a furnace");
    assertEquals("as welded", welded.judgedState());
    assertEquals("4043", welded.options().get(0).filler());
  }

  @Test
  void aCastingInFullTreatmentTakesTheFillersMadeForIt() {
    // Armao, The Fabricator: 4643, 4943 or 4008 where 6061 to A356 is heat treated; 4047 last.
    FillerComparison mixed =
        comparison(
            Cases.butt("6061", "T6")
                .withRight(Cases.side("A356", "T6", 0.003))
                .then(Cases.fullTreatment("6061")));
    List<String> allowed =
        mixed.options().stream().filter(FillerOption::allowed).map(FillerOption::filler).toList();
    assertEquals(List.of("4643", "4943", "4008"), allowed.subList(0, 3));
    assertTrue(allowed.indexOf("4047") > allowed.indexOf("4043"));
    assertTrue(FillerAnswer.of(mixed, UnitSystem.METRIC).get(0).contains(": 4643, then 4943"));
    assertEquals("no", of(mixed, "5356").anodizedMatch(), "the casting goes dark by itself");
    assertEquals("no", of(mixed, "none").anodizedMatch());
  }

  @Test
  void aFirstChoiceThatWouldCrackAtThisDilutionStepsBack() {
    FillerComparison square =
        comparison(Cases.butt("6082", "T6").withFiller(Cases.filler("5356", 0.7)));
    assertEquals("4043", square.options().get(0).filler());
    assertTrue(of(square, "5356").allowed());
    assertTrue(
        FillerAnswer.of(square, UnitSystem.METRIC)
            .get(0)
            .contains("Their first choice, 5356, lies in the crack-prone range"));
  }

  @Test
  void meltingAThinBaseThatDoesNotCrackIsAnOption() {
    // Common practice: thin 5083 edges are fused without filler; 6xxx and fillets never are.
    assertTrue(of(comparison(Cases.butt("5083", "H116")), "none").allowed());
    WeldCase butt = Cases.butt("5083", "H116").weldCase();
    WeldCase tee =
        WeldCase.of(butt.left(), butt.right())
            .title("tee")
            .joint(Joint.TEE, Preparation.FILLET)
            .filler(butt.filler())
            .passes(butt.passes())
            .ambient(butt.ambient())
            .depth(butt.depth())
            .naturalAge(butt.naturalAge())
            .done();
    assertFalse(of(FillerComparison.of(Welded.SESSION, tee, Requirement.NONE), "none").allowed());
  }

  @Test
  void meltingTheBaseAloneIsShownAndRuledOutForSixThousandAlloys() {
    // Fact of the trade: 6xxx welded without filler cracks on solidification.
    FillerOption none = of(comparison(treated()), "none");
    assertFalse(none.allowed());
    assertEquals(CrackTendency.HIGH, none.crack());
    assertEquals(1, none.dilution());
    assertEquals(0.6, none.composition().of(Element.SI), 0.2);
  }

  @Test
  void theGuidesDuctilityIsPassedOn() {
    // Filler guides, from memory: 5356 makes a more ductile weld in 6061 than 4043.
    FillerComparison comparison = comparison(Cases.butt("6061", "T6"));
    assertTrue(
        of(comparison, "5356").ductility().orElseThrow()
            < of(comparison, "4043").ductility().orElseThrow());
    assertTrue(of(comparison, "2319").ductility().isEmpty());
  }

  @Test
  void unsuitableFillersComeLast() {
    FillerComparison comparison = comparison(treated());
    boolean seen = false;
    for (FillerOption option : comparison.options()) {
      assertFalse(seen && option.allowed(), option.filler());
      seen |= !option.allowed();
    }
    assertTrue(comparison.options().get(0).allowed());
  }

  @Test
  void warmServiceAndAnodizingRuleOut() {
    Requirement warm =
        new Requirement(
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            Optional.of(true),
            OptionalDouble.of(273.15 + 90));
    Cases asWelded = Cases.butt("6061", "T6");
    FillerComparison comparison =
        FillerComparison.of(
            Welded.SESSION, asWelded.then(Cases.fullTreatment("6061")).weldCase(), warm);
    assertFalse(of(comparison, "5356").allowed());
    assertFalse(of(comparison, "4043").allowed(), "silicon turns grey when anodized");
  }

  @Test
  void siliconIsKeptOffBasesRichInMagnesium() {
    FillerComparison comparison = comparison(Cases.butt("5083", "H116"));
    assertFalse(of(comparison, "4043").allowed());
    assertTrue(of(comparison, "5183").allowed());
    assertEquals(Answer.NO, of(comparison, "5183").answer());
  }

  @Test
  void theBandOfTheDilutionIsLookedAt() {
    // 4943 brings its own magnesium, so it stays the strongest of the fillers that suit 6061.
    FillerChoice band =
        new FillerChoice(Cases.filler("4043", 0.3).alloy(), 0.3, 0.15, 0.45, false, 0.5);
    FillerComparison comparison = comparison(treated().withFiller(band));
    assertEquals(List.of("4943", "4943", "4943"), comparison.bestOverBand());
    assertTrue(comparison.clearOverBand());
  }

  @Test
  void wherePredictionsAreWithheldNoneIsCalledTheStrongest() {
    FillerComparison withheld = comparison(Cases.butt("6061", "T6")).withoutStrengths();
    List<String> answer = FillerAnswer.of(withheld, UnitSystem.METRIC);
    assertTrue(answer.stream().noneMatch(said -> said.contains("strongest")), answer.toString());
  }

  /** Square edges under a tungsten arc are 70 % base (common practice). */
  @Test
  void withoutFillerInTheCaseFillersAreComparedAtTheUsualDilutionOfItsJoint() {
    FillerChoice none = new FillerChoice(Optional.empty(), 1, 1, 1, true, 0.5);
    FillerComparison comparison = comparison(treated().withFiller(none));
    assertEquals(0.7, comparison.choice().dilution());
    assertEquals(0.7, of(comparison, "4043").dilution());
  }

  /** No filler is a better match in colour than the one the guides choose for it (3003 to 6061). */
  @Test
  void noFillerMatchesBetterThanTheFirstChoiceForColour() {
    FillerComparison pair =
        comparison(
            Cases.butt("6061", "T6")
                .withLeft(Cases.side("3003", "H14", 0.003))
                .withRight(Cases.side("6061", "T6", 0.003)));
    String first = of(pair, "5356").anodizedMatch();
    assertEquals("test piece", first);
    assertEquals(first, of(pair, "5183").anodizedMatch());
    assertEquals(first, of(pair, "1100").anodizedMatch());
  }

  /** Where the furnace takes the base beyond what tests show, no filler is held against it. */
  @Test
  void beyondTheTestsNoFillerReachesAShareOfTheBase() {
    FillerComparison overaged =
        comparison(
            Cases.butt("6061", "T6")
                .then(
                    List.of(
                        new FurnaceStep.SolutionTreat(803.15, 3600, FurnaceStep.Furnace.AIR),
                        new FurnaceStep.Quench(QuenchMedium.WATER, 298.15, 7),
                        new FurnaceStep.Age(505.15, 28800, FurnaceStep.Ramp.BY_FURNACE, false))));
    assertTrue(Double.isNaN(overaged.baseTreated()));
    assertTrue(
        overaged.options().stream()
            .flatMap(option -> option.furnace().stream())
            .noneMatch(reason -> reason.startsWith("Reaches")));
  }

  @Test
  void workHardenedBasesAreComparedAsWelded() {
    // Fact of the trade: 5356 is the strong usual filler of 5052; silicon fillers turn brittle on
    // more than 2.5 % Mg.
    FillerComparison comparison =
        comparison(Cases.butt("5052", "H32").withFiller(Cases.filler("5356", 0.4)));
    assertEquals("as welded", comparison.judgedState());
    assertEquals("5356", comparison.options().get(0).filler());
    assertTrue(of(comparison, "4043").allowed(), "5052, 2.5 % Mg, is the accepted border");
    assertTrue(of(comparison(Cases.butt("5454", "H32")), "4043").result().isEmpty());
    assertTrue(of(comparison, "5356").weldedYieldAt(0.4) > 0);
  }
}
