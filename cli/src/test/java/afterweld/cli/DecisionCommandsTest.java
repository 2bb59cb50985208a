package afterweld.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import afterweld.casefile.CaseFile;
import afterweld.casefile.CaseReader;
import afterweld.cli.classroom.Browser;
import afterweld.cli.terminal.ExitStatus;
import afterweld.cli.terminal.Streams;
import afterweld.material.MaterialLibrary;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The commands that decide and explain, on the examples, with the real simulator behind them. */
class DecisionCommandsTest {
  private static final String FORK_ARM = "examples/fork-arm.yaml";

  /** Of a result that several tests look at and none changes. */
  @TempDir static Path shared;

  @TempDir Path folder;
  private final Fixtures.Memory memory = new Fixtures.Memory();

  private int run(String... arguments) {
    Streams streams = memory.streams(false);
    return Welded.program(streams).run(arguments);
  }

  private JsonNode json(String command, String example) throws IOException {
    int status = run(command, example, "--json", "--out", folder.resolve(command).toString());
    assertTrue(status <= ExitStatus.REQUIREMENT_OPEN, memory.err());
    String printed = memory.out();
    String written = Files.readString(folder.resolve(command).resolve("result.json"));
    assertEquals(written, printed);
    JsonNode root = new ObjectMapper().readTree(printed);
    holds(root, "title", "warnings", "cautions");
    return root;
  }

  private static void holds(JsonNode node, String... keys) {
    for (String key : keys) {
      assertTrue(node.has(key), key);
    }
  }

  @Test
  void fillersKeepTheirKeys() throws IOException {
    JsonNode root = json("fillers", FORK_ARM);
    holds(
        root.get("fillers").get(0),
        "filler",
        "dilution",
        "composition_wt",
        "yield_MPa",
        "tensile_MPa",
        "heat_treatable",
        "crack_tendency",
        "anodized_match",
        "service_above_65C",
        "allowed",
        "reasons");
    holds(
        root.get("dilution_curves").get(0), "filler", "dilution", "yield_MPa_after_heat_treatment");
    assertTrue(Files.exists(folder.resolve("fillers").resolve("fillers.png")));
  }

  @ParameterizedTest
  @ValueSource(strings = {"profile", "routes", "fillers", "ageing", "sheet"})
  void thePressureTextStandsOnEveryOutputOfATube(String command) throws IOException {
    Path tube = folder.resolve("tube.yaml");
    String plate = Files.readString(Path.of(FORK_ARM));
    Files.writeString(tube, plate + "\nring: {diameter: 100 mm}\nheat_flow: plate\n");
    Path out = folder.resolve("out");
    run(command, tube.toString(), "--out", out.toString());
    String shown = memory.out().replaceAll("\\s+", " ");
    assertTrue(shown.contains("not a design pressure"), shown);
    assertTrue(Files.readString(out.resolve("result.json")).contains("not a design pressure"));
    try (Stream<Path> files = Files.list(out)) {
      for (Path file : files.filter(path -> path.toString().endsWith(".html")).toList()) {
        assertTrue(Files.readString(file).contains("not a design pressure"), file.toString());
      }
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"profile", "routes", "fillers", "ageing", "sheet"})
  void whatAPersonReadsFitsEightyColumns(String command) {
    int status = run(command, FORK_ARM, "--out", folder.resolve(command).toString());
    assertTrue(status <= ExitStatus.REQUIREMENT_OPEN, memory.err());
    memory
        .out()
        .lines()
        .filter(line -> !line.contains(folder.toString()))
        .forEach(line -> assertTrue(line.length() <= 80, line));
  }

  @Test
  void routesKeepTheirKeys() throws IOException {
    JsonNode root = json("routes", FORK_ARM);
    holds(root, "routes", "choice", "clear", "why");
    holds(
        root.get("routes").get(0),
        "route",
        "steps",
        "allowed",
        "meets",
        "proof_MPa",
        "tensile_MPa",
        "lowest_hardness_HV",
        "fails_in",
        "constraints",
        "reasons");
  }

  @Test
  void ageingKeepsItsKeys() throws IOException {
    JsonNode root = json("ageing", FORK_ARM);
    holds(
        root.get("curves").get(0), "metal", "temperature_C", "time_h", "hardness_HV", "yield_MPa");
    holds(root.get("schedule"), "temperature_C", "time_h");
  }

  /**
   * That other ageings of castings cannot be ranked says nothing against the one that is ordered.
   */
  @Test
  void whereNoAgeingIsRankedTheCasesOwnStands() {
    run("ageing", "examples/hub-casting.yaml", "--out", folder.resolve("hub").toString());
    String flowing = memory.out().replaceAll("\\s+", " ");
    assertTrue(flowing.contains("None of the ageings tried is put before the case's own"), flowing);
  }

  @Test
  void spreadKeepsItsKeys() throws IOException {
    Path out = folder.resolve("spread");
    String strip = "examples/cover-strip.json";
    String seed = "999999999999999999";
    int status = run("spread", strip, "--runs", "30", "--seed", seed, "--json", "--out", out + "");
    assertEquals(ExitStatus.DONE, status, memory.err());
    JsonNode root = new ObjectMapper().readTree(memory.out());
    assertEquals(seed, root.get("seed").asText());
    holds(
        root,
        "title",
        "warnings",
        "cautions",
        "runs",
        "seed",
        "stations",
        "joint_tensile_MPa",
        "chance_met",
        "first_order");
    holds(root.get("stations").get(0), "distance_mm", "hardness_HV");
    holds(root.get("stations").get(0).get("hardness_HV"), "p5", "p50", "p95");
    holds(root.get("joint_tensile_MPa"), "p5", "p50", "p95");
    holds(root.get("chance_met"), "estimate", "low", "high");
    holds(root.get("first_order_with_model_error"), "model error", "travel speed");
    String words = Files.readString(out.resolve("spread.txt")).replaceAll("\\s+", " ");
    assertTrue(words.contains("Of the joints as this shop welds them, 30 of 30 joints met"), words);
    assertTrue(words.contains("As if the computation were exact, 30 of 30 joints met"), words);
    assertTrue(words.contains("so many joints tell at least 90.0 %"), words);
    assertTrue(words.contains("not a probability of failure in service"), words);
    assertTrue(Files.exists(out.resolve("spread.png")));
    assertTrue(Files.exists(out.resolve("influence.svg")));
  }

  @Test
  void aMapIsATableAndAPicture() throws IOException {
    Path out = folder.resolve("map");
    String grid = "travel_speed=4..8mm/s,preheat=20..90C";
    int status =
        run("spread", "examples/cover-strip.json", "--grid", grid, "--json", "--out", out + "");
    assertEquals(ExitStatus.DONE, status, memory.err());
    assertEquals(122, Files.readAllLines(out.resolve("map.csv")).size());
    assertTrue(Files.exists(out.resolve("map.png")));
    JsonNode root = new ObjectMapper().readTree(memory.out());
    assertTrue(
        root.get("inside_error_band").asBoolean(), "annealed metal is the weakest throughout");
    holds(root.get("places").get(0), "lowest_yield_low_MPa", "lowest_yield_high_MPa");
    assertEquals(
        ExitStatus.INPUT_FAULT, run("spread", "examples/cover-strip.json", "--grid", "speed=1..2"));
    assertEquals(
        ExitStatus.INPUT_FAULT,
        run("spread", "examples/cover-strip.json", "--grid", grid, "--runs", "50"));
    assertTrue(memory.err().contains("no --runs and no --seed"), memory.err());
  }

  @Test
  void fitKeepsItsKeysAndWritesACaseThatReadsAgain() throws IOException {
    Path out = folder.resolve("fit");
    String traverse = "examples/fork-arm-traverse.csv";
    int status = run("fit", FORK_ARM, traverse, "--json", "--out", out.toString());
    assertEquals(ExitStatus.DONE, status, memory.err());
    JsonNode root = new ObjectMapper().readTree(memory.out());
    holds(root, "parameters", "rms_before_HV", "rms_after_HV", "points");
    holds(root.get("parameters").get(0), "name", "value", "low", "high");
    double fitted = root.get("parameters").get(0).get("value").asDouble();
    Path again = out.resolve("fork-arm-fitted.yaml");
    String text = Files.readString(again);
    assertTrue(text.contains(String.format(java.util.Locale.ROOT, "efficiency: %.4f}", fitted)));
    assertTrue(text.contains("# 4643 brings the magnesium"), "remarks stay");
    double half = root.get("parameters").get(0).get("high").asDouble() - fitted;
    assertEquals(half / fitted, read(again).spread().arcEfficiency().orElseThrow(), 0.0012);
    Path second = folder.resolve("fit-again");
    run("fit", again.toString(), traverse, "--quiet", "--out", second.toString());
    JsonNode settled = new ObjectMapper().readTree(second.resolve("result.json").toFile());
    assertEquals(root.get("rms_after_HV").asDouble(), settled.get("rms_after_HV").asDouble(), 0.1);
    assertTrue(Files.exists(out.resolve("fit.png")));
  }

  private static CaseFile read(Path file) throws IOException {
    MaterialLibrary library = MaterialLibrary.standard();
    return new CaseReader(library.bases(), library.fillers())
        .read(file.toString(), Files.readAllBytes(file))
        .caseFile()
        .orElseThrow();
  }

  @Test
  void aTraverseThatFitsNothingEndsWithAnotherStatusAndNoCase() throws IOException {
    Path traverse = folder.resolve("far.csv");
    String points = "60,109\n62,108\n64,110\n66,109\n68,107\n70,111\n72,109\n74,109\n";
    Files.writeString(traverse, "distance_mm,HV\n" + points);
    Path out = folder.resolve("far");
    assertEquals(
        ExitStatus.REQUIREMENT_OPEN,
        run("fit", FORK_ARM, traverse.toString(), "--out", out.toString()));
    assertTrue(memory.out().contains("Nothing fitted"), memory.out());
    assertTrue(Files.exists(out.resolve("fit.txt")));
    assertFalse(Files.exists(out.resolve("fork-arm-fitted.yaml")));
  }

  @Test
  void aFaultyTraverseNamesItsPlace() throws IOException {
    Path traverse = folder.resolve("bad.csv");
    Files.writeString(traverse, "distance_mm,HV\n1,60\n2,soft\n");
    assertEquals(
        ExitStatus.INPUT_FAULT,
        run("fit", FORK_ARM, traverse.toString(), "--out", folder.resolve("none").toString()));
    assertTrue(memory.err().contains("bad.csv:3:3: found 'soft'"), memory.err());
    assertFalse(Files.exists(folder.resolve("none")));
  }

  @Test
  void aTraverseThroughMetalThatIsNotPredictedIsAFaultOfTheTraverse() throws IOException {
    Path copper = folder.resolve("copper.yaml");
    Files.writeString(
        copper,
        """
        left: {alloy: "6061", temper: T6, thickness: 6 mm}
        filler: {alloy: "4145", dilution: 30 %}
        passes:
          - {process: GTAW-AC, current: 180 A, voltage: 15 V, travel_speed: 2.12 mm/s}
        """);
    String traverse = "examples/fork-arm-traverse.csv";
    Path none = folder.resolve("none");
    assertEquals(
        ExitStatus.INPUT_FAULT, run("fit", copper.toString(), traverse, "--out", none.toString()));
    assertTrue(memory.err().contains("no hardness is predicted for the metal at"), memory.err());
    assertFalse(Files.exists(none));
  }

  @Test
  void theSheetIsWrittenAsTextAndAsAPage() throws IOException {
    json("sheet", FORK_ARM);
    Path sheet = folder.resolve("sheet");
    assertTrue(Files.readString(sheet.resolve("sheet.txt")).contains("Solution treatment"));
    assertSelfContained(Files.readString(sheet.resolve("sheet.html")));
  }

  @Test
  void aStripThatNothingHardensIsAnsweredWithoutASheet() {
    Path none = folder.resolve("none");
    assertEquals(
        ExitStatus.DONE, run("sheet", "examples/cover-strip.json", "--out", none.toString()));
    assertTrue(memory.out().contains("No furnace sheet"), memory.out());
    assertTrue(Files.exists(none.resolve("result.json")));
    assertFalse(Files.exists(none.resolve("sheet.html")));
  }

  @Test
  void aStandardTreatmentThatTheFillerDoesNotBearIsNoFaultOfTheCase() throws IOException {
    assertEquals(ExitStatus.DONE, sheetOf(""));
    String said = memory.out().replaceAll("\\s+", " ");
    assertTrue(said.contains("takes part in no full treatment"), said);
    assertTrue(said.contains("Leave it as welded"), said);
  }

  @Test
  void anOrderThatMayMeltTheWeldIsRefusedAtItsPlace() throws IOException {
    String steps = "after_weld: [{solution_treat: {temperature: 530 °C, soak: 1 h}}, {quench: {}}]";
    assertEquals(ExitStatus.INPUT_FAULT, sheetOf(steps));
    assertTrue(memory.err().contains("rich.yaml:6:"), memory.err());
  }

  private int sheetOf(String afterWeld) throws IOException {
    Path rich = folder.resolve("rich.yaml");
    Files.writeString(
        rich,
        """
        title: rich filler
        left: {alloy: "6061", temper: T6, thickness: 4 mm}
        filler: {alloy: "5356", dilution: 30 %}
        passes:
          - {process: GTAW-AC, current: 140 A, voltage: 14 V, travel_speed: 3 mm/s}
        """
            + afterWeld
            + "\n");
    return run("sheet", rich.toString(), "--out", folder.resolve("rich").toString());
  }

  @Test
  void routesOfAJointThatIsNotComputedSayThatAndNoDashes() throws IOException {
    Path thick = folder.resolve("thick.yaml");
    String pass = "  - {process: GMAW, current: 280 A, voltage: 27 V, travel_speed: 8 mm/s}\n";
    Files.writeString(
        thick,
        "left: {alloy: '5083', temper: O, thickness: 25 mm}\njoint: butt\n"
            + "filler: {alloy: '5183'}\nrequire: {tensile: 200 MPa}\npasses:\n"
            + pass.repeat(8));
    run("routes", thick.toString(), "--out", folder.resolve("thick").toString());
    String said = memory.out().replaceAll("\\s+", " ");
    assertTrue(said.contains("Choice: none. - No route can be chosen: the joint is not"), said);
    assertFalse(said.contains("as likely as not") || said.contains("– MPa"), said);
  }

  /** The fork arm is answered above. */
  @ParameterizedTest
  @ValueSource(strings = {"fillers", "routes", "ageing"})
  void everyOtherExampleIsAnswered(String command) throws IOException {
    try (Stream<Path> examples = Files.list(Path.of("examples"))) {
      List<Path> cases = examples.filter(DecisionCommandsTest::isOtherCase).sorted().toList();
      assertTrue(cases.size() >= 4, cases.toString());
      for (Path example : cases) {
        Path out = folder.resolve(command + example.getFileName());
        int status = run(command, example.toString(), "--quiet", "--out", out.toString());
        assertTrue(status <= ExitStatus.REQUIREMENT_OPEN, example + ": " + memory.err());
      }
    }
  }

  private static boolean isOtherCase(Path path) {
    String name = path.getFileName().toString();
    return (name.endsWith(".yaml") || name.endsWith(".json")) && !path.equals(Path.of(FORK_ARM));
  }

  private static void assertSelfContained(String page) {
    assertTrue(page.startsWith("<!DOCTYPE html>\n<html lang=\"en\">"));
    assertFalse(page.contains("<script"), "works without scripts");
    assertFalse(page.contains("src=\"http") || page.contains("href=\"http"), "no network");
    assertFalse(page.contains("{{"), "every value is filled in");
  }

  /** Written once. */
  private Path report() {
    Path out = shared.resolve("profile");
    if (Files.notExists(out)) {
      int status = run("profile", FORK_ARM, "--routes", "--quiet", "--out", out.toString());
      assertEquals(ExitStatus.REQUIREMENT_OPEN, status, memory.err());
    }
    return out.resolve("report.html");
  }

  @Test
  void theReportStandsOnItsOwn() throws IOException {
    String page = Files.readString(report());
    assertSelfContained(page);
    assertEquals(4, page.split("<figure>", -1).length - 1, "three charts and the fillers");
    assertTrue(page.split("<table>", -1).length - 1 >= 6);
    for (String part :
        List.of("Requirement: likely", "Routes", "What design codes give", "Cautions", "<title")) {
      assertTrue(page.contains(part), part);
    }
  }

  @Test
  void aBrowserShowsAndPrintsTheReport() throws Exception {
    Optional<Path> installed = Browser.installed();
    Assumptions.assumeTrue(installed.isPresent(), "skipped: no Chromium on this machine");
    Path browser = installed.get();
    Path report = report();
    Path pdf = folder.resolve("report.pdf");
    String dom = browse(browser, report, "--dump-dom");
    browse(browser, report, "--print-to-pdf=" + pdf);
    assertTrue(dom.contains("Every station") && dom.contains("<svg"));
    assertTrue(Files.size(pdf) > 50_000, "a PDF with pictures");
  }

  private String browse(Path browser, Path page, String task) throws Exception {
    List<String> command = new ArrayList<>(List.of(browser.toString()));
    command.addAll(
        Arrays.asList(
            "--headless",
            "--no-sandbox",
            "--disable-gpu",
            "--disable-quic",
            "--no-first-run",
            "--disable-background-networking",
            "--disable-component-update",
            "--disable-sync",
            "--user-data-dir=" + folder.resolve("browser"),
            task,
            page.toUri().toString()));
    Path output = folder.resolve("browser.out");
    Process process =
        new ProcessBuilder(command)
            .redirectOutput(output.toFile())
            .redirectError(folder.resolve("browser.err").toFile())
            .start();
    assertTrue(process.waitFor(60, TimeUnit.SECONDS), "the browser hangs");
    return Files.readString(output);
  }
}
