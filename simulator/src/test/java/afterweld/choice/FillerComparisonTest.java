package afterweld.choice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import afterweld.choice.FillerOption.Answer;
import afterweld.material.Element;
import afterweld.section.Cases;
import afterweld.section.CrackTendency;
import afterweld.section.FillerChoice;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Facts of the trade about fillers must come out of the computation. */
class FillerComparisonTest {
  private static FillerComparison comparison(Cases cases) {
    return FillerComparison.of(cases.weldCase(), Requirement.NONE);
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
    double far = comparison.baseYield();
    assertTrue(plain.treatedYieldAt(0.6) > 0.85 * far && bearing.treatedYieldAt(0.6) > 0.85 * far);
    double from = plain.answersFrom().orElseThrow();
    assertTrue(from > bearing.answersFrom().orElseThrow() && from > 0.1, "from " + from);
  }

  @Test
  void fiveTimesMagnesiumIsNeverMeantForTheFurnace() {
    FillerOption rich = of(comparison(treated()), "5356");
    assertFalse(rich.allowed());
    assertTrue(rich.curve().isEmpty(), "the size of its response is not shown");
    assertTrue(rich.reasons().get(0).contains("not for a heat treatment"));
    assertTrue(of(comparison(Cases.butt("6061", "T6")), "4643").allowed());
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
        FillerComparison.of(asWelded.then(Cases.fullTreatment("6061")).weldCase(), warm);
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
  void withoutFillerInTheCaseFillersAreComparedAtAnAssumedDilution() {
    FillerChoice none = new FillerChoice(Optional.empty(), 1, 1, 1, true, 0.5);
    FillerComparison comparison = comparison(treated().withFiller(none));
    assertEquals(0.4, comparison.choice().dilution());
    assertEquals(0.4, of(comparison, "4043").dilution());
  }

  @Test
  void workHardenedBasesAreComparedAsWelded() {
    // Fact of the trade: 5356 is the strong usual filler of 5052; silicon fillers turn brittle
    // there.
    FillerComparison comparison =
        comparison(Cases.butt("5052", "H32").withFiller(Cases.filler("5356", 0.4)));
    assertEquals("as welded", comparison.rankedState());
    assertTrue(of(comparison, "4043").result().isEmpty(), "no strength for brittle weld metal");
    FillerOption rich = of(comparison, "5356");
    assertTrue(rich.allowed() && !rich.curve().isEmpty());
  }
}
