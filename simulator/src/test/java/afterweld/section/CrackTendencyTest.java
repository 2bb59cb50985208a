package afterweld.section;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import afterweld.material.ClassPathTable;
import afterweld.material.Composition;
import afterweld.material.Element;
import afterweld.material.MaterialLibrary;
import afterweld.weld.Warning;
import afterweld.weld.WeldCase;
import afterweld.weldmetal.CrackTendency;
import afterweld.weldmetal.CrackWarnings;
import afterweld.weldmetal.WeldPool;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CrackTendencyTest {
  private static CrackTendency mixed(String base, String filler, double dilution) {
    MaterialLibrary library = MaterialLibrary.standard();
    Composition plate = library.base(base).orElseThrow().composition();
    return CrackTendency.of(
        plate.mixedWith(library.filler(filler).orElseThrow().composition(), dilution));
  }

  @ParameterizedTest
  @CsvSource({
    "SI, 0.8, HIGH",
    "MG, 1.2, HIGH",
    "CU, 2.5, HIGH",
    "SI, 5, LOW",
    "MG, 5, LOW",
    "CU, 6, LOW"
  })
  void pureSystemsFollowThePublishedCurves(Element element, double share, CrackTendency expected) {
    // Peaks at 0.8 % Si, 1.2 % Mg, 2.5 % Cu (Dudas and Collins 1966, from memory).
    assertEquals(expected, CrackTendency.of(Composition.of(Map.of(element, share))));
  }

  @ParameterizedTest
  @CsvSource({
    "6061, 4043, 0.28", "6061, 4043, 0.40", "6061, 4043, 0.50", "6061, 4043, 0.60",
    "6061, 4643, 0.30", "6061, 4943, 0.40", "6061, 5356, 0.28", "6061, 5356, 0.32",
    "6061, 5356, 0.40", "6082, 5356, 0.40", "6061, 4145, 0.40", "5083, 5183, 0.40",
    "5052, 5356, 0.40", "5052, 4043, 0.30", "A356, 4043, 0.60"
  })
  void ordinaryPracticeIsLow(String base, String filler, double dilution) {
    // Common practice: 4043 and 5356 in a V or a fillet of 6061 are what every shop welds.
    assertEquals(CrackTendency.LOW, mixed(base, filler, dilution));
  }

  @ParameterizedTest
  @CsvSource({"6061, 5356, 0.6", "6061, 5356, 0.8", "6061, 4043, 0.8", "6061, 5554, 0.3"})
  void tooMuchOfTheBaseIsHigh(String base, String filler, double dilution) {
    // Common practice: the classic mistake is a square edge without gap; 5554 is the most
    // crack-prone of the usual fillers on 6xxx.
    assertEquals(CrackTendency.HIGH, mixed(base, filler, dilution));
  }

  @Test
  void moreOfTheBaseNeverHelpsOn6061() {
    for (String filler : List.of("4043", "4643", "4943", "5356", "5183", "5554")) {
      CrackTendency before = CrackTendency.LOW;
      for (int percent = 0; percent <= 100; percent++) {
        CrackTendency now = mixed("6061", filler, percent / 100.0);
        assertTrue(now.compareTo(before) >= 0, filler + " at " + percent + " %");
        before = now;
      }
      assertEquals(CrackTendency.HIGH, before, "6061 without filler cracks");
    }
  }

  @Test
  void theProfileSaysItOfTheWeldAsWritten() {
    WeldCase prone = Cases.butt("6061", "T6").withFiller(Cases.filler("5356", 0.6)).weldCase();
    WeldCase usual = Cases.butt("6061", "T6").withFiller(Cases.filler("4643", 0.3)).weldCase();
    assertTrue(codes(prone).contains(CrackWarnings.PRONE));
    assertTrue(!codes(usual).contains(CrackWarnings.PRONE));
    assertTrue(codes(usual).contains("crater"), "6xxx craters crack with any filler");
    WeldCase marine = Cases.butt("5083", "H116").withFiller(Cases.filler("5183", 0.3)).weldCase();
    assertTrue(!codes(marine).contains("crater"));
  }

  private static List<String> codes(WeldCase weldCase) {
    return CaseWarnings.of(weldCase, WeldPool.of(weldCase)).stream().map(Warning::code).toList();
  }

  @Test
  void everyLimitNamesItsSource() {
    for (Map<String, String> row :
        ClassPathTable.rows(CrackTendency.class, "crack_sensitivity.csv")) {
      assertTrue(!row.get("source").isBlank() && !row.get("status").isBlank(), row.toString());
    }
  }
}
