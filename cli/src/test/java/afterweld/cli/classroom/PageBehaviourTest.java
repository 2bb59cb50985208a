package afterweld.cli.classroom;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Lessons beside a reader's own work, refusals, broken links and small screens, in a real browser;
 * skipped where there is none.
 */
class PageBehaviourTest {
  private static final String SECOND_TITLE =
      "document.querySelector('#lesson-list li:nth-child(2) span')";

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
    browser.size(1280, 720);
    browser.open(server.address());
  }

  private static void change(String field, String value) throws Exception {
    browser.value(
        "(() => { const i = document.getElementById('"
            + field
            + "'); i.value = '"
            + value
            + "'; i.dispatchEvent(new Event(i.tagName === 'SELECT' ? 'change' : 'input',"
            + " {bubbles: true})); })()");
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

  private static double below(String id) throws Exception {
    return browser
        .value("document.getElementById('" + id + "').getBoundingClientRect().bottom")
        .asDouble();
  }

  /** The picture compares what the lesson's own table compares. */
  private static void assertTheLessonsLooksAreCompared() throws Exception {
    browser.until("document.querySelector('#lesson [data-key=softened_width] td') !== null");
    settle();
    for (String key : new String[] {"softened_width", "lowest_hardness_welded"}) {
      String row = " [data-key=" + key + "] td:nth-of-type";
      assertEquals(text("#lesson" + row + "(1)"), text("#numbers" + row + "(2)"), "pinned " + key);
      assertEquals(text("#lesson" + row + "(2)"), text("#numbers" + row + "(1)"), "now " + key);
    }
  }

  @Test
  void whatIsMovedAndPinnedWhilePredictingIsNotWhatTheLessonPins() throws Exception {
    click("#lesson-list li:nth-child(2) button");
    settle();
    change("alloy", "5083");
    settle();
    click("#pin");
    click("input[name=guess]");
    click("#see");
    assertTheLessonsLooksAreCompared();
  }

  @Test
  void aHurriedReaderSeesTheLessonsOwnLooks() throws Exception {
    change("alloy", "5083");
    settle();
    browser.value(
        "['#lesson-list li:nth-child(2) button', 'input[name=guess]', '#see']"
            + ".forEach(one => document.querySelector(one).click())");
    assertTheLessonsLooksAreCompared();
  }

  @Test
  void closingALessonGivesCasePinAndFocusBack() throws Exception {
    click("#pin");
    change("current", "240");
    settle();
    String before = browser.value("location.hash").asText();
    click("#lesson-list li:nth-child(2) button");
    settle();
    click("#lesson-list li:nth-child(5) button");
    settle();
    click("#lesson .close");
    settle();
    assertEquals(before, browser.value("location.hash").asText());
    assertEquals("240 A", text("#current-text"));
    assertTrue(
        browser
            .value("document.activeElement.textContent.includes('Age only, or all of it')")
            .asBoolean());
  }

  @Test
  void aRefusedControlStaysWhereItStandsInOtherUnits() throws Exception {
    change("current", "40");
    settle();
    assertFalse(text("#trouble").isEmpty());
    click("input[name=units][value=us]");
    assertEquals("40 A", text("#current-text"));
    assertEquals("0.24 in", text("#thickness-text"));
    assertEquals("40", browser.value("document.getElementById('current').value").asText());
  }

  @Test
  void aTimeIsSaidInTheSameWordsWhileItIsMovedAndAfter() throws Exception {
    for (int place = 0; place < 20; place += 3) {
      change("rest", Integer.toString(place));
      String moving = text("#rest-text");
      settle();
      assertEquals(moving, text("#rest-text"));
    }
  }

  @Test
  void aDamagedLinkIsTold() throws Exception {
    browser.open(server.address() + "#eyJjYXNlIjp7InRpd");
    assertEquals("The link is damaged; this is the plate to begin with.", text("#trouble"));
    assertEquals("200 A", text("#current-text"));
  }

  @Test
  void aMomentFollowsTheUnits() throws Exception {
    click("#forth");
    browser.until("document.getElementById('moment').textContent.includes('°C')");
    click("input[name=units][value=us]");
    assertTrue(text("#moment").contains("°F"), text("#moment"));
  }

  @Test
  void controlsAndCautionStandOnALowScreen() throws Exception {
    for (String part : new String[] {"age-row", "age-time-row", "soak-row", "caution", "player"}) {
      assertTrue(below(part) <= 720, part + " ends at " + below(part));
    }
  }

  /** Along the order of the keyboard no field stands more than a row higher than the last. */
  @Test
  void onANarrowScreenTheKeyboardGoesDownAndLessonsHaveTheirTitles() throws Exception {
    browser.size(360, 740);
    browser.open(server.address());
    String fields =
        "[...document.querySelectorAll('button, input:not([hidden]), select, summary')]"
            + ".filter(one => one.getClientRects().length)"
            + ".map(one => one.getBoundingClientRect().top)";
    assertTrue(browser.value(fields + ".length > 25").asBoolean());
    assertTrue(
        browser
            .value(fields + ".every((top, i, all) => i === 0 || top > all[i - 1] - 20)")
            .asBoolean());
    assertEquals("Travel faster", browser.value(SECOND_TITLE + ".innerText").asText());
    assertTrue(browser.value(SECOND_TITLE + ".offsetWidth > 40").asBoolean());
  }
}
