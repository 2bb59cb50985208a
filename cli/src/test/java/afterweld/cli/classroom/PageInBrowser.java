package afterweld.cli.classroom;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import afterweld.cli.Welded;
import afterweld.material.MaterialLibrary;
import afterweld.quantity.OutputQuantity;
import afterweld.quantity.UnitSystem;
import afterweld.section.SectionProfile;
import afterweld.weld.WeldCase;
import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;

/** A server with its page in a real browser, and hands for it; skipped where there is none. */
abstract class PageInBrowser {
  @TempDir static Path folder;
  static ClassroomServer server;
  static Browser browser;

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
    browser.asUsual();
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

  static void move(String slider, double place) throws Exception {
    browser.value(
        "(() => { const i = document.getElementById('"
            + slider
            + "'); i.value = "
            + place
            + "; i.dispatchEvent(new Event('input', {bubbles: true})); })()");
    settle();
  }

  static void choose(String field, String value) throws Exception {
    browser.value(
        "(() => { const i = document.getElementById('"
            + field
            + "'); i.value = '"
            + value
            + "'; i.dispatchEvent(new Event('change', {bubbles: true})); })()");
    settle();
  }

  static void click(String selector) throws Exception {
    browser.value("document.querySelector('" + selector + "').click()");
  }

  static void settle() throws Exception {
    browser.until("document.getElementById('stage').getAttribute('aria-busy') === 'false'");
  }

  static String text(String selector) throws Exception {
    return browser.value("document.querySelector('" + selector + "').textContent").asText();
  }

  static boolean truth(String expression) throws Exception {
    return browser.value(expression).asBoolean();
  }

  /** The case on the page as its link holds it. */
  static JsonNode caseOnThePage() throws Exception {
    return Visitor.tree(
            browser
                .value(
                    "new TextDecoder().decode(Uint8Array.from(atob(location.hash.slice(1)"
                        + ".replaceAll('-', '+').replaceAll('_', '/')), c => c.charCodeAt(0)))")
                .asText())
        .get("case");
  }

  static WeldCase onThePage() throws Exception {
    return new CaseText(MaterialLibrary.standard()).read(caseOnThePage()).weld();
  }

  static SectionProfile computed() throws Exception {
    return Welded.SESSION.profile(onThePage());
  }

  static double lowestHardness(SectionProfile profile, int state) {
    return profile.stations().stream()
        .mapToDouble(station -> station.estimates().get(state).middle().hardness())
        .min()
        .orElseThrow();
  }

  static void assertTheNumbersAreTheSimulators() throws Exception {
    SectionProfile profile = computed();
    assertEquals(
        OutputQuantity.HARDNESS.text(UnitSystem.METRIC, lowestHardness(profile, 1)),
        text("[data-key=lowest_hardness_welded] td"));
    assertEquals(
        OutputQuantity.DISTANCE.text(UnitSystem.METRIC, KeyNumbers.affectedWidth(profile)),
        text("[data-key=softened_width] td"));
  }
}
