package afterweld.cli.profile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import afterweld.casefile.CaseReader;
import afterweld.cli.Welded;
import afterweld.document.AlongWeldJson;
import afterweld.document.JsonNumber;
import afterweld.material.MaterialLibrary;
import afterweld.quantity.UnitSystem;
import afterweld.weld.WeldCase;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

class AlongWeldViewTest {
  private static final String SEAM =
      """
      title: Bar
      left: {alloy: "6061", temper: T6, thickness: 3 mm, width: 60 mm}
      seam: {length: 60 mm}
      filler: {alloy: "4043", dilution: 40 %}
      passes:
        - {process: GTAW-AC, current: 120 A, voltage: 14 V, travel_speed: 4 mm/s}
      """;

  private static AlongWeldView view;
  private static List<Map<String, Object>> places;

  @BeforeAll
  static void weld() {
    view = view(SEAM);
    places = places(SEAM);
  }

  private static AlongWeldView view(String text) {
    WeldCase weld = read(text);
    return new AlongWeldView(
        Welded.SESSION.along(weld).orElseThrow(), Welded.SESSION.thinProfile(weld));
  }

  private static List<Map<String, Object>> places(String text) {
    WeldCase weld = read(text);
    return AlongWeldJson.of(
        Welded.SESSION.along(weld).orElseThrow(), Welded.SESSION.thinProfile(weld));
  }

  private static WeldCase read(String text) {
    MaterialLibrary library = MaterialLibrary.standard();
    CaseReader reader = new CaseReader(library.bases(), library.fillers());
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    return reader.read("case.yaml", bytes).caseFile().orElseThrow().weld();
  }

  /** Hottest is widest, not always weakest: the program must not hide what its own rows say. */
  @Test
  void aPlaceThatIsWeakerThanTheSectionIsNamed() {
    String post =
        """
        title: Post on its foot
        left: {alloy: "6061", temper: T6, thickness: 9.5 mm, width: 76 mm}
        right: {alloy: "6061", temper: T6, thickness: 3.7 mm, width: 300 mm}
        joint: socket
        ring: {diameter: 48 mm, position: %s}
        filler: {alloy: "5356", dilution: 32 %%}
        passes:
          - {process: GTAW-AC, current: 165 A, voltage: 15 V, travel_speed: 2.5 mm/s}
        """;
    String hottest = view(post.formatted("worst")).table(UnitSystem.METRIC);
    assertTrue(hottest.contains("half lap the weld is weaker"), hottest);
    String weakest = view(post.formatted("half lap")).table(UnitSystem.METRIC);
    assertFalse(weakest.contains("is weaker"), weakest);
  }

  /** The weld is one, wherever its section is taken: so is what it softens at each place. */
  @Test
  void theRowsDoNotDependOnTheSection() {
    String end = SEAM.replace("length: 60 mm", "length: 60 mm, position: end");
    List<Map<String, Object>> here = places;
    List<Map<String, Object>> there = places(end);
    for (int i = 0; i < 3; i++) {
      assertEquals(number(here.get(i), "softened_mm"), number(there.get(i), "softened_mm"), 0.15);
      assertEquals(
          number(here.get(i), "lowest_yield_MPa"), number(there.get(i), "lowest_yield_MPa"), 0.5);
    }
  }

  @Test
  void aRowForEachPlaceAndASentenceOnTheCurrent() {
    String table = view.table(UnitSystem.METRIC);
    assertEquals(1, table.lines().filter(line -> line.startsWith("start ")).count(), table);
    assertEquals(1, table.lines().filter(line -> line.startsWith("middle ")).count(), table);
    assertTrue(table.contains("falling evenly from"), table);
    assertTrue(table.lines().allMatch(line -> line.length() <= 80), table);
    assertTrue(view.table(UnitSystem.US).contains("bead (in)"));
  }

  /**
   * The heat put in half way is the same in both: what is gained at the start is lost at the end.
   */
  @Test
  void theOtherCurrentTurnsAboutTheMiddle() {
    assertEquals(6, places.size());
    assertEquals(List.of("start", "middle", "end"), named(places.subList(0, 3)));
    double constant = number(places.get(0), "start_current_A");
    double start = number(places.get(3), "start_current_A");
    double end = number(places.get(3), "end_current_A");
    assertEquals(120, constant, 1e-9);
    assertEquals(constant, (start + end) / 2, 1e-6);
    double even = number(places.get(5), "bead_width_mm") - number(places.get(4), "bead_width_mm");
    double uneven = number(places.get(2), "bead_width_mm") - number(places.get(1), "bead_width_mm");
    assertTrue(Math.abs(even) < uneven, even + " " + uneven);
  }

  private static List<Object> named(List<Map<String, Object>> places) {
    return places.stream().map(place -> place.get("place")).toList();
  }

  private static double number(Map<String, Object> place, String key) {
    return ((JsonNumber) place.get(key)).value();
  }
}
