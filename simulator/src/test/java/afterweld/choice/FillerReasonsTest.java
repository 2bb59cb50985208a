package afterweld.choice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import afterweld.material.Alloy;
import afterweld.material.MaterialLibrary;
import afterweld.section.Cases;
import afterweld.section.Side;
import afterweld.section.WeldCase;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** A reason beside a filler says nothing that its row of numbers may contradict. */
class FillerReasonsTest {
  private static final MaterialLibrary LIBRARY = MaterialLibrary.standard();

  private static FillerOption option(WeldCase weld, Requirement asked, String filler) {
    return FillerComparison.of(weld, asked).option(filler).orElseThrow();
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
    Requirement colour =
        new Requirement(
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            Optional.of(true),
            OptionalDouble.empty());
    Cases diluted = Cases.butt("6061", "T6").withFiller(Cases.filler("4043", 0.7));
    FillerOption silicon = option(diluted.weldCase(), colour, "4043");
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

  @Test
  void aNoteThatHoldsForOneBaseNamesIt() {
    Cases unlike = Cases.butt("5052", "O").withRight(Cases.side("5454", "O", 6e-3));
    List<String> reasons = option(unlike.weldCase(), Requirement.NONE, "5554").reasons();
    assertTrue(reasons.stream().anyMatch(reason -> reason.startsWith("Guide, on 5454: ")));
  }
}
