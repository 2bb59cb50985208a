package afterweld.cli.classroom;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import afterweld.casefile.CaseFile;
import afterweld.cli.CommandRun;
import afterweld.joint.ProfileSlices;
import afterweld.joint.bend.BendCoupon;
import afterweld.joint.bend.StripBend;
import afterweld.material.MaterialLibrary;
import afterweld.quantity.OutputQuantity;
import afterweld.quantity.UnitSystem;
import afterweld.section.SectionProfile;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What the page shows and does. */
class ClassroomPageTest extends PageInBrowser {
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
    assertTrue(truth("scrub.value === scrub.max"), "it plays to the end");
    playsAndPauses();
    click("#leave");
    assertTrue(truth("document.querySelector('.line.now') === null"));
  }

  /** From the start again, and stopped on the way. */
  private static void playsAndPauses() throws Exception {
    click("#play");
    browser.until("Number(scrub.value) > 1 && Number(scrub.value) < 60");
    click("#play");
    assertEquals("Play", text("#play"));
    String moment = text("#moment");
    String place = browser.value("scrub.value").asText();
    Thread.sleep(300);
    assertEquals(moment, text("#moment"));
    assertEquals(place, browser.value("scrub.value").asText());
    assertFalse(truth("scrub.value === scrub.max"));
  }

  @Test
  void theStripIsTheSimulatorsAtTheAngleAskedFor() throws Exception {
    move("angle", 120);
    assertEquals("120°", text("#angle-text"));
    SectionProfile profile = computed();
    CaseFile asked = new CaseText(MaterialLibrary.standard()).read(caseOnThePage());
    assertEquals(Math.toRadians(120), asked.joint().bend().angle(), 1e-12);
    String labels = text("#strip svg");
    for (int state = 0; state < profile.states().size(); state++) {
      StripBend bend = bent(profile, asked, state);
      String sharp = String.format(Locale.ROOT, "%.1f × mean", bend.averagedKinkFactor());
      assertTrue(labels.contains(profile.states().get(state) + ": " + sharp), labels + sharp);
    }
    StripBend welded = bent(profile, asked, 1);
    assertTrue(welded.averagedKinkFactor() > 3);
    String place = OutputQuantity.DISTANCE.text(UnitSystem.METRIC, BendAnswer.sharpest(welded));
    String kinks = "As welded it kinks " + place + " mm from the weld centre.";
    assertTrue(text("#kink").startsWith(kinks), text("#kink") + kinks);
    assertEquals(120, drawnAngle(), 3);
    move("angle", 60);
    assertEquals(60, drawnAngle(), 3);
  }

  private static StripBend bent(SectionProfile profile, CaseFile asked, int state) {
    double length = asked.joint().bend().length();
    return StripBend.bend(
        ProfileSlices.flush(profile, state, ProfileSlices.End.MIDDLE, length).orElseThrow(),
        BendCoupon.of(asked.joint().bend()));
  }

  /** Between the two ends of the first strip as it is drawn, degrees. */
  private static double drawnAngle() throws Exception {
    return browser
        .value(
            "(() => { const p = document.querySelector('#strip path'), l = p.getTotalLength(),"
                + " at = s => p.getPointAtLength(s), turn = (a, b) => Math.atan2(b.y - a.y, b.x -"
                + " a.x); return Math.abs(turn(at(l - 3), at(l)) - turn(at(0), at(3))) * 180 /"
                + " Math.PI; })()")
        .asDouble();
  }

  @Test
  void theSavedFileGivesTheCommandThePagesNumbers() throws Exception {
    Path saved = Files.createDirectory(folder.resolve("saved"));
    browser.downloadTo(saved);
    move("speed", 3.1);
    choose("filler", "4643");
    click("#save");
    Path file = saved.resolve("classroom-plate.yaml");
    for (int i = 0; i < 100 && !Files.exists(file); i++) {
      Thread.sleep(50);
    }
    String out = folder.resolve("profile").toString();
    JsonNode printed =
        Visitor.tree(CommandRun.printed("profile", file.toString(), "--json", "--out", out));
    browser.value("document.getElementById('stations').open = true");
    browser.until("document.querySelectorAll('#table tbody tr').length > 30");
    JsonNode rows =
        browser.value(
            "[...document.querySelectorAll('#table tbody tr')].map(r => [...r.cells].map(c =>"
                + " c.textContent.replace('−', '-')))");
    assertEquals(printed.get("stations").size(), rows.size());
    for (int i = 0; i < rows.size(); i++) {
      assertRow(printed.get("stations").get(i), rows.get(i));
    }
  }

  /** The page shows one decimal less than the command prints. */
  private static void assertRow(JsonNode station, JsonNode cells) {
    assertEquals(station.get("distance_mm").asDouble(), cells.get(0).asDouble(), 0.056);
    assertEquals(station.get("zone").asText(), cells.get(1).asText());
    int cell = 3;
    for (String key : List.of("hardness_HV", "yield_MPa", "tensile_MPa")) {
      for (JsonNode value : station.get(key)) {
        assertEquals(value.asDouble(), cells.get(cell).asDouble(), 0.56, key);
        cell++;
      }
    }
    assertEquals(cells.size(), cell);
  }

  @Test
  void aLessonComparesWithItsOwnFirstLookWhateverWasMovedBefore() throws Exception {
    click("#lesson-list li:nth-child(2) button");
    settle();
    choose("alloy", "5083");
    click("#pin");
    click("input[name=guess]");
    click("#see");
    browser.until("document.querySelector('#lesson [data-key=softened_width] td') !== null");
    settle();
    for (String key : List.of("softened_width", "lowest_hardness_welded")) {
      assertEquals(
          text("#lesson [data-key=" + key + "] td"),
          text("#numbers [data-key=" + key + "] td:nth-of-type(2)"));
    }
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
    settle();
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
    browser.until(
        "stage.getAttribute('aria-busy') === 'false' && trouble.textContent.includes('left')");
    assertFalse(truth("document.getElementById('trouble').hidden"));
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
}
