package afterweld.cli;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import afterweld.casefile.CaseReader;
import afterweld.material.MaterialLibrary;
import afterweld.section.UnitSystem;
import afterweld.section.WeldCase;
import afterweld.study.GridInput;
import afterweld.study.GridStudy;
import afterweld.study.GridStudy.Axis;
import afterweld.study.GridStudy.Node;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The words about a map, on maps that are made up. */
class GridOutputTest {
  private static WeldCase weld;

  @BeforeAll
  static void read() throws IOException {
    MaterialLibrary library = MaterialLibrary.standard();
    Path file = Path.of("examples", "fork-arm.yaml");
    weld =
        new CaseReader(library.bases(), library.fillers())
            .read("fork-arm.yaml", Files.readAllBytes(file))
            .caseFile()
            .orElseThrow()
            .weld();
  }

  /** Lowest yields in MPa along one input, each with a band of a tenth either way. */
  private static String answer(double... yields) {
    List<Node> nodes =
        DoubleStream.of(yields)
            .map(mega -> 1e6 * mega)
            .mapToObj(y -> new Node(List.of(300.0), y, 0.9 * y, 1.1 * y, 1.5 * y, 5e-3, 8e-3, ""))
            .toList();
    GridStudy study = new GridStudy(List.of(new Axis(GridInput.PREHEAT, 293, 393)), nodes);
    return new GridOutput(
            weld, study, new Notices(List.of(), List.of(), List.of()), UnitSystem.METRIC)
        .answer()
        .replaceAll("\\s+", " ");
  }

  @Test
  void differencesInsideTheErrorBandMakeNoPlaceStronger() {
    String words = answer(100, 104, 108);
    assertTrue(words.contains("one value (100 MPa: 90 to 110)"), words);
    assertTrue(words.startsWith("Lowest: ") && words.contains("Highest: "), words);
    assertFalse(words.contains("Strongest"), words);
  }

  @Test
  void differencesBeyondItDo() {
    String words = answer(100, 140, 120);
    assertTrue(words.startsWith("Weakest: ") && words.contains("Strongest: "), words);
    assertFalse(words.contains("error band"), words);
    assertFalse(words.contains("within 1 %"), words);
    assertTrue(words.contains("over 2 % below the base on 5.0 mm"), words);
  }

  @Test
  void aFlatTopHasNoOneBestPlace() {
    assertTrue(answer(100, 140, 139.5, 139).contains("2 other places have the same within 1 %"));
  }
}
