package afterweld.casefile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import afterweld.casefile.text.Fault;
import afterweld.material.MaterialLibrary;
import afterweld.section.Cases;
import afterweld.study.GridInput;
import afterweld.study.HardnessTraverse;
import afterweld.thermal.Pass;
import afterweld.weld.WeldCase;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Reading a traverse and the axes of a map, and writing a fitted case. */
class StudyInputTest {
  private static final WeldCase CASE = Cases.butt("6061", "T6").weldCase();
  private static final String TEN_POINTS =
      "0,60\n1,61\n2,62\n3,63\n4,64\n5,65\n6,66\n7,67\n8,68\n9,69\n";

  private static TraverseReader traverse(String text) {
    return TraverseReader.read("t.csv", text.getBytes(StandardCharsets.UTF_8));
  }

  @Test
  void millimetresAndVickers() {
    HardnessTraverse read =
        traverse("# remark\ndistance_mm,HV\n" + TEN_POINTS).traverse().orElseThrow();
    assertEquals(10, read.points().size());
    assertEquals(0.003, read.points().get(3).distance(), 1e-12);
    assertEquals(63, read.points().get(3).hardness());
    assertEquals(3, read.points().get(3).deviation());
  }

  @Test
  void inchesAndBrinellAndAScatterOfItsOwn() {
    String text = "distance_in, HB, sd\n" + TEN_POINTS.replace("\n", ",2\n");
    HardnessTraverse.Point point = traverse(text).traverse().orElseThrow().points().get(1);
    assertEquals(0.0254, point.distance(), 1e-12);
    double scale = 1.208;
    assertEquals(scale * 61 - 4.3, point.hardness(), 1.5, "ASTM E140, from memory");
    assertEquals(scale * 2, point.deviation(), 0.4);
  }

  @Test
  void everyFaultNamesLineAndColumn() {
    TraverseReader reading =
        traverse("distance_mm,HV\n1,60\nx,61\n3,\n4,900\n5,65\n6,66\n7,67\n8,15\n");
    List<String> faults = reading.faults().stream().map(Fault::toString).toList();
    assertTrue(reading.traverse().isEmpty());
    assertEquals("t.csv:3:1: found 'x'; expected a number", faults.get(0));
    assertTrue(faults.get(1).startsWith("t.csv:4:3: "), faults.get(1));
    assertEquals("t.csv:5:3: found '900'; expected a hardness from 20 to 250 HV", faults.get(2));
    assertTrue(faults.get(3).startsWith("t.csv:9:3: "), faults.get(3));
  }

  @Test
  void aHeadThatSaysTooLittleOrNothingIsAFault() {
    for (String text : List.of("", "\n", "mm,HV\n1,2\n", "distance_mm,distance_in,HV\n1,2,3\n")) {
      assertEquals(1, traverse(text).faults().size(), text);
    }
    assertTrue(traverse("distance_mm,HV\n1,60\n").faults().get(0).message().contains("at least 8"));
  }

  private static void headFault(String head, String fault) {
    List<String> faults =
        traverse(head + "\n" + TEN_POINTS.replace("\n", ",2\n")).faults().stream()
            .map(Fault::toString)
            .toList();
    assertEquals(List.of(fault), faults);
  }

  /** A scatter left aside would be one that was measured and does not count. */
  @Test
  void aColumnThatIsNotReadIsAFault() {
    String expected = "; expected a head with distance_mm or distance_in, HV, HB or HRB, and sd";
    headFault(
        "distance_mm,HV,HV_sd",
        "t.csv:1:16: unknown column 'HV_sd'" + expected + " if it is known; did you mean 'sd'?");
    headFault(
        "distance_mm, HV, remark",
        "t.csv:1:18: unknown column 'remark'" + expected + " if it is known");
    headFault("distance_mm,HV,HV", "t.csv:1:16: found the column 'HV' again; expected it once");
    assertEquals(List.of(), traverse("distance_mm,HV,\n" + TEN_POINTS).faults());
  }

  @Test
  void anAxisTakesItsUnitFromTheSecondNumber() {
    GridReader reading = GridReader.read("travel_speed=2..8mm/s, preheat=70 °F..150C", CASE);
    assertEquals(List.of(), reading.faults());
    assertEquals(GridInput.TRAVEL_SPEED, reading.axes().get(0).input());
    assertEquals(2e-3, reading.axes().get(0).low(), 1e-12);
    assertEquals(8e-3, reading.axes().get(0).high(), 1e-12);
    assertEquals(294.26, reading.axes().get(1).low(), 0.01);
    assertEquals(423.15, reading.axes().get(1).high(), 1e-9);
  }

  @Test
  void faultyAxesSayWhatIsExpected() {
    assertFault("travel_sped=2..8mm/s", "did you mean 'travel_speed'");
    assertFault("travel_speed=2..8", "without a unit");
    assertFault("travel_speed=8..2mm/s", "lower end first");
    assertFault("travel_speed", "expected one or two of name=from..to");
    assertFault("ageing_time=1..9h", "has no step age");
    assertFault("preheat=20..90C,preheat=20..90C", "each input once");
  }

  private static void assertFault(String text, String words) {
    GridReader reading = GridReader.read(text, CASE);
    String all = reading.faults().stream().collect(Collectors.joining("\n"));
    assertTrue(all.contains(words), all);
    assertTrue(reading.axes().isEmpty());
  }

  private static final String HEAD =
      "left: {alloy: \"6061\", temper: T6, thickness: 6 mm}\nfiller: none\npasses:\n";

  private static final String REMARK = "# Fitted to a traverse.\n";

  private static CaseReading read(String file, String text) {
    MaterialLibrary library = MaterialLibrary.standard();
    return new CaseReader(library.bases(), library.fillers())
        .read(file, text.getBytes(StandardCharsets.UTF_8));
  }

  /** The fitted text, read again: its efficiencies, and that nothing else changed. */
  private static String fitted(String file, String text, Double... efficiencies) {
    String fitted =
        FittedCase.of(
            text,
            read(file, text).positions(),
            List.of(efficiencies),
            OptionalDouble.of(0.0432),
            List.of("Fitted to a traverse."));
    if (!text.startsWith("{")) {
      assertTrue(fitted.startsWith(REMARK), fitted);
    }
    CaseReading again = read(file, fitted);
    assertEquals(List.of(), again.faults(), fitted);
    assertEquals(
        0.044, again.caseFile().orElseThrow().spread().arcEfficiency().orElseThrow(), 1e-9, fitted);
    List<Pass> passes = again.caseFile().orElseThrow().weld().passes();
    for (int i = 0; i < efficiencies.length; i++) {
      assertEquals(efficiencies[i], passes.get(i).efficiency().orElseThrow(), 1e-9, fitted);
      assertTrue(passes.get(i).beadWidth().isEmpty());
    }
    return fitted.replace(REMARK, "");
  }

  /** A range that the fit itself distrusts is not written; what the user wrote stays. */
  @Test
  void withoutARangeTheSpreadStaysAsItIs() {
    for (String spread : List.of("", "spread: {arc_efficiency: 10 %}\n")) {
      String text = withSpread(spread);
      String fitted =
          FittedCase.of(
              text,
              read("case.yaml", text).positions(),
              List.of(0.6),
              OptionalDouble.empty(),
              List.of());
      assertEquals(text.replace("{process", "{efficiency: 0.6000, process"), fitted);
    }
  }

  private static final String ADDED = "spread: {arc_efficiency: 4.4 %}\n";

  private static String withSpread(String spread) {
    return HEAD.replace("passes:", spread + "passes: # where passes stand")
        + "  - {process: GTAW-AC, current: 180 A, voltage: 15 V, travel_speed: 2 mm/s}\n";
  }

  @Test
  void aStatedSpreadOfTheEfficiencyIsReplaced() {
    String fitted =
        fitted("a.yaml", withSpread("spread: {arc_efficiency: 12 %, seed: 3} # mine\n"), 0.6);
    assertTrue(fitted.contains("spread: {arc_efficiency: 4.4 %, seed: 3} # mine\n"), fitted);
  }

  @Test
  void theSpreadOfTheEfficiencyJoinsOthersThatAreStated() {
    assertTrue(
        fitted("a.yaml", withSpread("spread: {seed: 3, runs: 200}\n"), 0.6)
            .contains("spread: {arc_efficiency: 4.4 %, seed: 3, runs: 200}\n"));
    assertTrue(
        fitted("a.yaml", withSpread("spread:\n  runs: 200 # runs\n  soak: 10 %\n"), 0.6)
            .contains("spread:\n  arc_efficiency: 4.4 %\n  runs: 200 # runs\n"));
    assertTrue(
        fitted("a.yaml", withSpread("spread: {}\n"), 0.6)
            .contains("spread: {arc_efficiency: 4.4 %}\n"));
    assertTrue(
        fitted("a.yaml", withSpread("# the weld\n# by hand\n"), 0.6)
            .contains("none\n" + ADDED + "# the weld\n# by hand\npasses: # where"));
    assertTrue(
        fitted("a.yaml", "# one\n" + withSpread(""), 0.6).contains("\n" + ADDED + "passes:"));
  }

  @Test
  void aWidthGivesWayToTheEfficiency() {
    String text =
        HEAD
            + "  # the only pass\n  - {process: GTAW-AC, current: 180 A, voltage: 15 V,"
            + " travel_speed: 2 mm/s, bead_width: 11 mm} # wide\n";
    assertEquals(
        text.replace("bead_width: 11 mm", "efficiency: 0.6789")
            .replace("passes:", ADDED + "passes:"),
        fitted("a.yaml", text, 0.6789));
  }

  @Test
  void anEfficiencyIsReplacedAndAMissingOneAdded() {
    String text =
        HEAD
            + "  - process: GTAW-AC   # first\n    current: 180 A\n    voltage: 15 V\n"
            + "    travel_speed: 2 mm/s\n    efficiency: 0.6 # guessed\n"
            + "  - process: \"GTAW-AC\"\n    current: 180 A\n    voltage: 15 V\n"
            + "    travel_speed: 2 mm/s\n";
    String fitted = fitted("a.yaml", text, 0.5123, 0.5123);
    assertTrue(fitted.contains("efficiency: 0.5123 # guessed"));
    assertTrue(fitted.contains("  - efficiency: 0.5123\n    process: \"GTAW-AC\""), fitted);
  }

  @Test
  void jsonStaysJson() {
    String pass =
        "{\"process\": \"GTAW-AC\", \"current\": \"180 A\", \"voltage\": \"15 V\","
            + " \"travel_speed\": \"2 mm/s\"";
    String text =
        "{\"left\": {\"alloy\": \"6061\", \"temper\": \"T6\", \"thickness\": \"6 mm\"},"
            + " \"filler\": \"none\",\n \"passes\": [\n"
            + pass
            + ", \"bead_width\": \"11 mm\"},\n"
            + pass
            + "}]}\n";
    fitted("a.json", text, 0.61, 0.62);
    fitted("a.json", text.replace("{\"left", "{\"spread\": {\"seed\": 2}, \"left"), 0.61, 0.62);
    fitted("a.json", text.replace("{\"left", "{\"spread\": {}, \"left"), 0.61, 0.62);
  }
}
