package afterweld.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import afterweld.casefile.CaseReader;
import afterweld.casefile.text.Fault;
import afterweld.material.MaterialLibrary;
import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The cases that other tests are made of are valid, differ, and are the same each time. */
class GeneratedCasesTest {
  private static final MaterialLibrary LIBRARY = MaterialLibrary.standard();
  private static final CaseReader READER = new CaseReader(LIBRARY.bases(), LIBRARY.fillers());

  /** What a furnace would spoil may be refused; that is rare, and the only reason. */
  @Test
  void casesAreReadButForAFewThatAFurnaceWouldSpoil() {
    int refused = 0;
    for (String text : GeneratedCases.yaml(500, 1)) {
      List<Fault> faults = READER.read("case.yaml", text.getBytes(StandardCharsets.UTF_8)).faults();
      refused += faults.isEmpty() ? 0 : 1;
      assertTrue(
          faults.stream().allMatch(fault -> fault.message().matches(".*(melt|% Mg).*")),
          () -> faults + " in\n" + text);
    }
    assertTrue(refused < 15, refused + " of 500 refused");
  }

  @Test
  void theSameSeedGivesTheSameCasesAndNoTwoAreAlike() {
    List<String> cases = GeneratedCases.yaml(300, 7);
    assertEquals(cases, GeneratedCases.yaml(300, 7));
    assertEquals(cases.subList(0, 20), GeneratedCases.yaml(20, 7));
    assertEquals(cases.size(), new HashSet<>(cases).size());
  }
}
