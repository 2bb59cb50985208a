package afterweld.cli.classroom;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The page for those who read it by keyboard, by ear, in the dark, on a phone or on paper. */
class ClassroomReadersTest extends PageInBrowser {
  private static final Set<String> WORKED =
      Set.of("button", "slider", "radio", "combobox", "textbox", "checkbox", "spinbutton");

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

  /** What a screen reader gets; an option is no name of its select. */
  @Test
  void everyControlHasANameAndThePictureSaysWhatItShows() throws Exception {
    int controls = 0;
    for (JsonNode node : browser.spoken()) {
      if (WORKED.contains(node.path("role").path("value").asText())) {
        controls++;
        assertFalse(node.path("name").path("value").asText().isBlank(), node.toString());
      }
    }
    assertTrue(controls > 25, controls + " controls");
    String label =
        browser.value("document.querySelector('#picture svg').getAttribute('aria-label')").asText();
    assertTrue(label.contains("as welded lowest"), label);
  }

  @Test
  void aPhoneShowsItAllAndSpeaksTheTitlesOfTheLessons() throws Exception {
    browser.size(360, 800);
    browser.open(server.address());
    assertEquals(360, browser.value("document.documentElement.scrollWidth").asInt());
    List<String> names =
        browser.spoken().stream()
            .filter(node -> node.path("role").path("value").asText().equals("button"))
            .map(node -> node.path("name").path("value").asText())
            .toList();
    for (JsonNode lesson : new Visitor(server.address()).lessons().get("lessons")) {
      String title = lesson.get("title").asText();
      assertTrue(names.stream().anyMatch(name -> name.contains(title)), title + names);
    }
  }

  @Test
  void whoClosesALessonIsBackAtItsButton() throws Exception {
    click("#lesson-list li:nth-child(3) button");
    settle();
    browser.value("document.querySelector('#lesson .close').focus()");
    browser.press("Enter", 13);
    browser.until("document.getElementById('lesson').hidden");
    assertTrue(
        truth(
            "document.activeElement === document.querySelector('#lesson-list li:nth-child(3)"
                + " button')"));
  }

  /** Contrast of the text on its ground as WCAG 2 defines it. */
  private static double contrast() throws Exception {
    return browser
        .value(
            "(() => { const light = name => { const l ="
                + " getComputedStyle(document.body)[name].match(/[0-9.]+/g).slice(0, 3).map(v => v"
                + " / 255).map(v => v <= 0.04045 ? v / 12.92 : ((v + 0.055) / 1.055) ** 2.4); return"
                + " 0.2126 * l[0] + 0.7152 * l[1] + 0.0722 * l[2]; }; return (light('color') + 0.05)"
                + " / (light('backgroundColor') + 0.05); })()")
        .asDouble();
  }

  @Test
  void inTheDarkTheGroundIsDarkAndTheTextStandsOut() throws Exception {
    assertTrue(contrast() < 1 / 7.0, "dark text on light ground: " + contrast());
    browser.prefer("prefers-color-scheme", "dark");
    assertTrue(contrast() > 7, "light text on dark ground: " + contrast());
  }

  /** The longest series of frames would move fourteen times a second. */
  @Test
  void whoWantsNoMotionGetsARowOfStills() throws Exception {
    browser.prefer("prefers-reduced-motion", "reduce");
    browser.value(
        "window.stills = []; new MutationObserver(() =>"
            + " stills.push(performance.now())).observe(document.getElementById('moment'),"
            + " {childList: true, characterData: true, subtree: true})");
    click("#play");
    browser.until("stills.length >= 3");
    click("#play");
    double shortest =
        browser.value("Math.min(...stills.slice(1).map((t, i) => t - stills[i]))").asDouble();
    assertTrue(shortest > 500, shortest + " ms");
  }

  private static boolean shown(String selector) throws Exception {
    return truth(
        "(() => { const r = document.querySelector('"
            + selector
            + "').getBoundingClientRect(); return r.width > 0 && r.height > 0; })()");
  }

  @Test
  void onPaperAreTheSectionAndTheNumbersAndNothingToPress() throws Exception {
    browser.asOnPaper();
    for (String there :
        List.of("#picture svg", "#picture .line.welded", "#numbers td", "#strip svg")) {
      assertTrue(shown(there), there);
    }
    assertTrue(shown("#caution"), "the caution goes with every picture");
    for (String absent : List.of("#play", "#scrub", "#save", "#pin", "#speed", "nav")) {
      assertFalse(shown(absent), absent);
    }
    String pdf = new String(browser.print(), StandardCharsets.ISO_8859_1);
    long pages = Pattern.compile("/Type\\s*/Page\\b(?!s)").matcher(pdf).results().count();
    assertTrue(pages >= 1 && pages <= 4, pages + " pages");
  }
}
