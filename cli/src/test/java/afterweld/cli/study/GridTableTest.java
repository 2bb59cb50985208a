package afterweld.cli.study;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import afterweld.casefile.CaseReader;
import afterweld.choice.answer.Judgement;
import afterweld.choice.answer.Requirement;
import afterweld.document.Notices;
import afterweld.material.MaterialLibrary;
import afterweld.quantity.UnitSystem;
import afterweld.section.soundness.Soundness;
import afterweld.study.Aim;
import afterweld.study.GridInput;
import afterweld.study.GridStudy;
import afterweld.study.GridStudy.Axis;
import afterweld.study.GridStudy.Band;
import afterweld.study.GridStudy.Node;
import afterweld.study.JointFigures;
import afterweld.study.JointPlace;
import afterweld.weld.WeldCase;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The words about a map, on maps that are made up. */
class GridTableTest {
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

  /** Tensile strengths in MPa along one input; NaN is a weld that is not sound. */
  private static String answer(double... strengths) {
    List<Node> nodes =
        IntStream.range(0, strengths.length)
            .mapToObj(i -> node(300 + 10.0 * i, joint(1e6 * strengths[i], List.of())))
            .toList();
    return answer(nodes);
  }

  private static String answer(List<Node> nodes) {
    GridStudy study =
        new GridStudy(
            Aim.of(Requirement.NONE),
            List.of(new Axis(GridInput.PREHEAT, 293, 393)),
            nodes,
            nodes.get(0).joint(),
            List.of(0.6));
    return new GridTable(
            weld,
            study,
            new Notices(Soundness.SOUND, List.of(), List.of(), List.of()),
            UnitSystem.METRIC)
        .answer()
        .replaceAll("\\s+", " ");
  }

  private static Node node(double preheat, JointPlace joint) {
    Band yield = new Band(joint.value() / 2, joint.value() / 2.2, joint.value() / 1.8);
    return new Node(List.of(preheat), joint, yield, 5e-3, 8e-3);
  }

  private static JointPlace joint(double strength, List<String> objections) {
    return Double.isNaN(strength)
        ? JointPlace.none("Not fused through.")
        : new JointPlace(
            strength,
            0.9 * strength,
            new JointFigures(strength / 2, strength, 70),
            Judgement.NOTHING_ASKED,
            "",
            objections);
  }

  @Test
  void differencesInsideTheErrorBandMakeNoPlaceStronger() {
    String words = answer(100, 104, 108);
    assertTrue(words.contains("within the model's own error of the best"), words);
    assertTrue(words.contains("not that one place is stronger"), words);
  }

  @Test
  void differencesBeyondItDo() {
    String words = answer(100, 140, 120);
    assertTrue(words.contains("Best: preheat 36.9 °C"), words);
    assertTrue(words.contains("As good within 1 %: no other place"), words);
    assertFalse(words.contains("not that one place is stronger"), words);
    assertTrue(words.contains("over 2 % below the base on 5.0 mm"), words);
  }

  /** A flat top has bounds: where it ends and why. */
  @Test
  void whatIsAsGoodHasTwoEnds() {
    String words = answer(100, 140, 139.5, 139, Double.NaN);
    assertTrue(
        words.contains("As good within 1 %: preheat 36.9 to 56.9 °C (above it it is blank)"),
        words);
    assertTrue(words.contains("Blank, 1 place, preheat 66.9 °C: Not fused through"), words);
    assertTrue(
        answer(140, 139.5, 139)
            .contains("none more than another, every place that is ranked is as good within 1 %"));
  }

  @Test
  void aPlaceThatIsObjectedToIsNeverBest() {
    List<Node> nodes =
        List.of(
            node(300, joint(150e6, List.of("Prone to cracking."))),
            node(310, joint(140e6, List.of())));
    String words = answer(nodes);
    assertTrue(words.contains("Best: preheat 36.9 °C"), words);
    assertTrue(words.contains("Never best, 1 place, preheat 26.9 °C: Prone to cracking."), words);
  }

  @Test
  void aMapWithoutASoundPlaceHasNoBest() {
    assertTrue(answer(Double.NaN, Double.NaN).contains("none of these places"));
  }
}
