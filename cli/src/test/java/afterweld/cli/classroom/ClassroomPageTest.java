package afterweld.cli.classroom;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import afterweld.casefile.CaseFile;
import afterweld.material.MaterialLibrary;
import afterweld.section.OutputQuantity;
import afterweld.section.SectionProfile;
import afterweld.section.SectionSimulation;
import afterweld.section.UnitSystem;
import afterweld.section.WeldCase;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The page in a real browser; skipped where there is none. */
class ClassroomPageTest {
  @TempDir static Path folder;
  private static ClassroomServer server;
  private static Browser browser;

  @BeforeAll
  static void start() throws Exception {
    Optional<Path> program = Browser.installed();
    Assumptions.assumeTrue(program.isPresent(), "skipped: no Chromium on the path");
    server = ClassroomServer.start(0);
    browser = new Browser(program.get(), Files.createDirectory(folder.resolve("browser")));
  }

  @AfterAll
  static void stop() {
    if (server != null) {
      browser.close();
      server.stop();
    }
  }

  @BeforeEach
  void open() throws Exception {
    browser.size(1400, 900);
    browser.open(server.address());
  }

  @AfterEach
  void theConsoleIsQuietAndNothingLeavesTheMachine() {
    assertEquals(List.of(), browser.complaints());
    for (String request : browser.requests()) {
      assertTrue(
          request.startsWith(server.address())
              || request.equals("about:blank")
              || request.startsWith("blob:" + server.address()),
          request);
    }
  }

  private static void move(String slider, double place) throws Exception {
    browser.value(
        "(() => { const i = document.getElementById('"
            + slider
            + "'); i.value = "
            + place
            + "; i.dispatchEvent(new Event('input', {bubbles: true})); })()");
    settle();
  }

  private static void choose(String field, String value) throws Exception {
    browser.value(
        "(() => { const i = document.getElementById('"
            + field
            + "'); i.value = '"
            + value
            + "'; i.dispatchEvent(new Event('change', {bubbles: true})); })()");
    settle();
  }

  private static void click(String selector) throws Exception {
    browser.value("document.querySelector('" + selector + "').click()");
  }

  private static void settle() throws Exception {
    browser.until("document.getElementById('stage').getAttribute('aria-busy') === 'false'");
  }

  private static String text(String selector) throws Exception {
    return browser.value("document.querySelector('" + selector + "').textContent").asText();
  }

  private static boolean truth(String expression) throws Exception {
    return browser.value(expression).asBoolean();
  }

  /** The case on the page as its link holds it. */
  private static JsonNode caseOnThePage() throws Exception {
    return Visitor.tree(
            browser
                .value(
                    "new TextDecoder().decode(Uint8Array.from(atob(location.hash.slice(1)"
                        + ".replaceAll('-', '+').replaceAll('_', '/')), c => c.charCodeAt(0)))")
                .asText())
        .get("case");
  }

  private static WeldCase onThePage() throws Exception {
    return new CaseText(MaterialLibrary.standard()).read(caseOnThePage()).weld();
  }

  private static SectionProfile computed() throws Exception {
    return SectionSimulation.run(onThePage());
  }

  private static double lowestHardness(SectionProfile profile, int state) {
    return profile.stations().stream()
        .mapToDouble(station -> station.estimates().get(state).middle().hardness())
        .min()
        .orElseThrow();
  }

  private static void assertTheNumbersAreTheSimulators() throws Exception {
    SectionProfile profile = computed();
    assertEquals(
        OutputQuantity.HARDNESS.text(UnitSystem.METRIC, lowestHardness(profile, 1)),
        text("[data-key=lowest_hardness_welded] td"));
    assertEquals(
        OutputQuantity.DISTANCE.text(UnitSystem.METRIC, KeyNumbers.affectedWidth(profile)),
        text("[data-key=softened_width] td"));
  }

  @Test
  void movingControlsShowsTheSimulatorsNumbers() throws Exception {
    assertTheNumbersAreTheSimulators();
    move("speed", 4.2);
    move("thickness", 5);
    move("dilution", 60);
    assertTheNumbersAreTheSimulators();
    choose("alloy", "6082");
    choose("filler", "4643");
    assertTheNumbersAreTheSimulators();
    choose("treatment", "age");
    move("age-time", 6);
    SectionProfile profile = computed();
    assertEquals(3, profile.states().size());
    assertEquals(
        OutputQuantity.HARDNESS.text(UnitSystem.METRIC, lowestHardness(profile, 2)),
        text("[data-key=lowest_hardness_treated] td"));
    choose("treatment", "none");
    assertEquals(2, computed().states().size());
  }

  @Test
  void everyStationStandsInTheTableInTheUnitsAskedFor() throws Exception {
    browser.value("document.getElementById('stations').open = true");
    click("input[name=units][value=us]");
    browser.until("document.querySelectorAll('#table tbody tr').length > 30");
    browser.until("document.querySelector('#table th').textContent.includes('in')");
    SectionProfile profile = computed();
    for (int i = 0; i < profile.stations().size(); i += 7) {
      String row = "#table tbody tr:nth-child(" + (i + 1) + ") ";
      var station = profile.stations().get(i);
      assertEquals(
          OutputQuantity.DISTANCE.text(UnitSystem.US, station.distance()).replace('-', '−'),
          text(row + "th"));
      assertEquals(
          OutputQuantity.TENSILE.text(UnitSystem.US, station.estimates().get(2).middle().tensile()),
          text(row + "td:last-child"));
    }
  }

  @Test
  void aPinnedResultStaysWithTheDifferenceInNumbers() throws Exception {
    click("#pin");
    String before = text("[data-key=softened_width] td");
    move("speed", 5);
    assertEquals(before, text("[data-key=softened_width] td:nth-of-type(2)"));
    double now = Double.parseDouble(text("[data-key=softened_width] td"));
    double change =
        Double.parseDouble(text("[data-key=softened_width] td:nth-of-type(3)").replace('−', '-'));
    assertEquals(now - Double.parseDouble(before), change, 0.11);
    assertTrue(truth("document.querySelectorAll('.line.pinned').length === 2"));
  }

  @Test
  void theWeldPlaysPausesStepsAndScrubs() throws Exception {
    click("#forth");
    browser.until("document.querySelector('.line.now') !== null");
    String first = text("#moment");
    assertTrue(first.contains("before the arc"), first);
    browser.value(
        "(() => { const i = document.getElementById('scrub'); i.value = i.max;"
            + " i.dispatchEvent(new Event('input', {bubbles: true})); })()");
    browser.until("document.getElementById('moment').textContent.startsWith('ageing')");
    click("#back");
    click("#play");
    browser.until("document.getElementById('play').textContent === 'Pause'");
    browser.until("document.getElementById('play').textContent === 'Play'");
    click("#leave");
    assertTrue(truth("document.querySelector('.line.now') === null"));
  }

  @Test
  void aLessonAsksFirstAndThenShowsComputedNumbers() throws Exception {
    click("#lesson-list li:nth-child(2) button");
    settle();
    assertTrue(truth("document.getElementById('see').disabled"));
    click("input[name=guess]");
    click("#see");
    browser.until("document.querySelector('#lesson [data-key=softened_width] td') !== null");
    settle();
    assertEquals("As you predicted.", text("#lesson .verdict"));
    assertEquals(
        text("#numbers [data-key=softened_width] td"),
        text("#lesson [data-key=softened_width] td:last-child"));
  }

  private static void openFile(Path file) throws Exception {
    browser.value(
        "(() => { const t = new DataTransfer(); t.items.add(new File(["
            + new ObjectMapper().writeValueAsString(Files.readString(file))
            + "], '"
            + file.getFileName()
            + "')); const i = document.getElementById('file'); i.files = t.files;"
            + " i.dispatchEvent(new Event('change')); })()");
  }

  @ParameterizedTest
  @MethodSource("afterweld.cli.classroom.ClassroomNumbersTest#examples")
  void everyExampleOpensOnThePageAndNothingOfItIsLost(Path example) throws Exception {
    CaseFile original = ClassroomNumbersTest.read(Files.readString(example));
    openFile(example);
    browser.until(
        "document.getElementById('title').textContent === '"
            + original.weld().title().replace("'", "\\\\'")
            + "'");
    settle();
    assertEquals(original.weld(), onThePage());
    assertTheNumbersAreTheSimulators();
    String kept = text("#kept");
    assertTrue(kept.contains("voltage"), kept);
    assertEquals(original.weld().passes().size() > 1, kept.contains("pass 2"), kept);
    assertEquals(original.weld().ring().isPresent(), kept.contains("diameter"), kept);
    assertEquals(original.weld().passes().size() > 1, text("#controls").contains("pass 1 of"));
  }

  @Test
  void heatThatTakesSecondsIsAnnouncedAndAnotherCaseTakesItsPlace() throws Exception {
    Path ring = folder.resolve("ring.yaml");
    Files.writeString(
        ring, Files.readString(Path.of("examples/pier-tube.yaml")).replace("90 mm", "280 mm"));
    openFile(ring);
    browser.until("document.getElementById('settling').textContent === 'computing …'");
    openFile(Path.of("examples/autogenous-bead.yaml"));
    browser.until("document.getElementById('title').textContent.startsWith('Trial bead')");
    settle();
    assertEquals("", text("#settling"));
    assertTheNumbersAreTheSimulators();
  }

  /** Asserts no time, but prints it. */
  @Test
  void whatAMovedControlTakesIsPrinted() throws Exception {
    for (int i = 0; i < 10; i++) {
      move("speed", 2.7 + 0.1 * i);
    }
    for (int i = 0; i < 10; i++) {
      move("age-time", 8 + i);
    }
    JsonNode told = browser.value("afterweldTimings");
    for (String what : List.of("preview", "settled", "aged")) {
      double[] times =
          StreamSupport.stream(told.spliterator(), false)
              .filter(one -> one.get("what").asText().equals(what))
              .mapToDouble(one -> one.get("ms").asDouble())
              .sorted()
              .toArray();
      assertTrue(times.length >= 10, what);
      System.out.printf(
          Locale.ROOT,
          "classroom page, %s: %.0f ms median of %d, %.0f to %.0f ms%n",
          what,
          times[times.length / 2],
          times.length,
          times[0],
          times[times.length - 1]);
    }
  }

  @Test
  void aSecondStepOfOneKindIsKeptAndSaid() throws Exception {
    Path twice = folder.resolve("twice.yaml");
    Files.writeString(
        twice,
        Files.readString(Path.of("examples/arm-t4-age.yaml"))
                .replace("title: ", "title: Twice. ")
                .replace("dilution: 55 %", "melted_area: 11 mm², deposit_area: 9 mm²")
            + "  - age: {temperature: 150 °C, time: 3 h}\n");
    openFile(twice);
    browser.until("document.getElementById('title').textContent.startsWith('Twice')");
    settle();
    String kept = text("#kept");
    assertTrue(kept.contains("step 2, age") && kept.contains("time 3 h"), kept);
    assertFalse(kept.contains("step 1"), kept);
    assertTrue(kept.contains("melted area 11 mm²"), kept);
    move("dilution", 30);
    assertTrue(truth("document.getElementById('trouble').hidden"), text("#trouble"));
    assertEquals(0.3, onThePage().filler().dilution(), 1e-12);
    assertEquals(2, onThePage().afterWeld().size());
  }

  @Test
  void theReplayOfAnEarlierWeldIsDropped() throws Exception {
    click("#forth");
    move("current", 210);
    click("#forth");
    browser.until("document.getElementById('moment').textContent !== ''");
    move("speed", 3);
    assertEquals("", text("#moment"));
    assertTrue(truth("document.querySelector('.line.now') === null"));
  }

  @Test
  void aLessonFollowsTheUnits() throws Exception {
    click("#lesson-list li:nth-child(2) button");
    settle();
    click("input[name=guess]");
    click("#see");
    browser.until("document.querySelector('#lesson [data-key=softened_width] td') !== null");
    assertTrue(text("#lesson table").contains("2.6 mm/s"), text("#lesson table"));
    click("input[name=units][value=us]");
    assertTrue(text("#lesson table").contains("6.1 in/min"), text("#lesson table"));
    assertTrue(text("#lesson .looks").contains("9.4 in/min"), text("#lesson .looks"));
    assertEquals(
        text("#numbers [data-key=softened_width] td"),
        text("#lesson [data-key=softened_width] td:last-child"));
  }

  @Test
  void theLinkKeepsTheCaseAndThePin() throws Exception {
    click("#pin");
    move("current", 230);
    click("input[name=quantity][value=yield]");
    click("input[name=units][value=us]");
    String link = browser.value("location.href").asText();
    browser.open(link);
    assertEquals("230 A", text("#current-text"));
    assertTrue(truth("document.querySelectorAll('.line.pinned').length === 2"));
    assertTrue(truth("document.querySelector('input[name=units][value=us]').checked"));
    assertTrue(truth("document.querySelector('input[name=quantity][value=yield]').checked"));
  }

  @Test
  void aLinkWithAFaultyCaseIsToldAndNotRun() throws Exception {
    browser.value(
        "location.hash = btoa('{\"case\":{\"title\":\"<img src=x onerror=alert(1)>\"}}')");
    browser.until("!document.getElementById('trouble').hidden");
    assertTrue(text("#trouble").contains("left"), text("#trouble"));
    assertTrue(truth("document.querySelector('main img') === null"));
    move("current", 205);
    assertTrue(truth("document.getElementById('trouble').hidden"));
    assertTheNumbersAreTheSimulators();
  }

  @Test
  void tooLittleHeatIsToldAndTheLastPictureStays() throws Exception {
    browser.value("history.replaceState(null, '', '#')");
    move("current", 40);
    assertFalse(truth("document.getElementById('trouble').hidden"));
    assertTrue(text("#trouble").contains("Pass 1"), text("#trouble"));
    assertTrue(truth("document.querySelector('#picture svg') !== null"));
    move("current", 200);
    assertTrue(truth("document.getElementById('trouble').hidden"));
  }

  @Test
  void theKeyboardMovesAControlAndTheResultIsSpoken() throws Exception {
    browser.value("document.getElementById('dilution').focus()");
    browser.press("ArrowRight", 39);
    settle();
    assertEquals("45 %", text("#dilution-text"));
    assertEquals(
        "45 %",
        browser
            .value("document.getElementById('dilution').getAttribute('aria-valuetext')")
            .asText());
    browser.until("document.getElementById('live').textContent.startsWith('Settled.')");
    browser.press("Tab", 9);
    assertTrue(truth("document.activeElement !== document.getElementById('dilution')"));
  }

  @Test
  void everyControlHasANameAndThePictureSaysWhatItShows() throws Exception {
    assertTrue(
        truth(
            "[...document.querySelectorAll('input:not([hidden]), select, button')].every(f =>"
                + " f.getAttribute('aria-label') || f.textContent.trim() || (f.labels &&"
                + " f.labels.length > 0))"));
    String label =
        browser.value("document.querySelector('#picture svg').getAttribute('aria-label')").asText();
    assertTrue(label.contains("as welded lowest"), label);
  }

  @Test
  void itFitsANarrowScreenAndPrints() throws Exception {
    browser.size(360, 800);
    browser.open(server.address());
    assertEquals(360, browser.value("document.documentElement.scrollWidth").asInt());
    browser.size(1400, 900);
    assertTrue(browser.print().length > 20_000);
  }
}
