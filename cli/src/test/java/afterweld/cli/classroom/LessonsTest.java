package afterweld.cli.classroom;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** What the lessons say is what comes out when their cases are computed. */
class LessonsTest {
  private static ClassroomServer server;
  private static JsonNode data;
  private static final Map<String, JsonNode> LOOKS = new HashMap<>();

  @BeforeAll
  static void computeThemAll() throws Exception {
    server = ClassroomServer.start(0);
    Visitor visitor = new Visitor(server.address());
    data = visitor.lessons();
    for (JsonNode lesson : data.get("lessons")) {
      for (JsonNode look : lesson.get("looks")) {
        JsonNode tree = merged(data.get("start"), look.get("case"));
        String name = lesson.get("id").asText() + ": " + look.get("label").asText();
        LOOKS.put(name, visitor.asked("/api/section", Visitor.question(name, 1, "settled", tree)));
      }
    }
  }

  @AfterAll
  static void stop() {
    server.stop();
  }

  /** As the page merges: null takes a key away, a list replaces a list. */
  private static ObjectNode merged(JsonNode tree, JsonNode change) {
    ObjectNode result = tree.deepCopy();
    for (Map.Entry<String, JsonNode> one : change.properties()) {
      JsonNode known = result.get(one.getKey());
      if (one.getValue().isNull()) {
        result.remove(one.getKey());
      } else if (one.getValue().isObject() && known != null && known.isObject()) {
        result.set(one.getKey(), merged(known, one.getValue()));
      } else {
        result.set(one.getKey(), one.getValue());
      }
    }
    return result;
  }

  private static double number(String look, String key) {
    return number(LOOKS.get(look), key);
  }

  private static double number(JsonNode result, String key) {
    for (JsonNode row : result.get("numbers")) {
      if (row.get("key").asText().equals(key)) {
        return row.get("value").asDouble();
      }
    }
    throw new IllegalArgumentException("no " + key);
  }

  private static JsonNode bend(String look) {
    JsonNode states = LOOKS.get(look).get("bend").get("states");
    return states.get(states.size() - 1);
  }

  private static String answer(String id) {
    for (JsonNode lesson : data.get("lessons")) {
      if (lesson.get("id").asText().equals(id)) {
        return lesson.get("options").get(lesson.get("answer").asInt()).asText();
      }
    }
    throw new IllegalArgumentException(id);
  }

  @Test
  void thereAreSixAndEachMeasureIsThere() {
    assertEquals(6, data.get("lessons").size());
    for (JsonNode lesson : data.get("lessons")) {
      JsonNode last = lesson.get("looks").get(lesson.get("looks").size() - 1);
      for (JsonNode measure : lesson.get("measures")) {
        String key = measure.get("key").asText();
        String look = lesson.get("id").asText() + ": " + last.get("label").asText();
        assertTrue(key.equals("kink") || Double.isFinite(number(look, key)), look + " " + key);
      }
    }
  }

  @Test
  void theStripKinksInTheAnnealedZoneAndBendsEvenlyAfterTreatment() {
    assertTrue(answer("kink").contains("soft metal on either side"));
    JsonNode welded = bend("kink: as welded");
    assertTrue(welded.get("kink_factor").asDouble() > 3);
    assertEquals("annealed", zoneAt("kink: as welded", welded.get("sharpest_mm").asDouble()));
    assertTrue(bend("kink: heat treated").get("kink_factor").asDouble() < 1.3);
  }

  private static String zoneAt(String look, double distance) {
    for (JsonNode zone : LOOKS.get(look).get("zones")) {
      if (zone.get("from_mm").asDouble() <= distance && distance < zone.get("to_mm").asDouble()) {
        return zone.get("zone").asText();
      }
    }
    throw new IllegalArgumentException(distance + " mm");
  }

  @Test
  void theKinkLiesWherePeaksWereBetween350And450() {
    JsonNode look = LOOKS.get("kink: as welded");
    double at = bend("kink: as welded").get("sharpest_mm").asDouble();
    for (int i = 0; i < look.get("distance_mm").size(); i++) {
      if (Math.abs(look.get("distance_mm").get(i).asDouble() - at) < 0.5) {
        double peak = look.get("peak_temperature_C").get(i).asDouble();
        assertTrue(peak > 350 && peak < 450, peak + " °C");
      }
    }
  }

  @Test
  void fasterTravelNarrowsTheSoftZoneAndHardlyHardensIt() {
    assertTrue(answer("speed").contains("narrower"));
    String slow = "speed: 2.6 mm/s";
    String fast = "speed: 4.0 mm/s";
    assertEquals(2.0 / 3, number(fast, "heat_input") / number(slow, "heat_input"), 0.03);
    assertTrue(number(fast, "softened_width") < 0.75 * number(slow, "softened_width"));
    double gain = number(fast, "lowest_hardness_welded") - number(slow, "lowest_hardness_welded");
    assertTrue(gain > 0 && gain < 6, gain + " HV");
    assertTrue(number(fast, "bead_width") < number(slow, "bead_width"));
  }

  @Test
  void preheatWidensTheSoftZoneMuch() {
    assertTrue(answer("preheat").contains("much wider"));
    String cold = "preheat: 20 °C";
    String warm = "preheat: 150 °C";
    assertTrue(number(warm, "softened_width") > 2 * number(cold, "softened_width"));
    assertTrue(number(warm, "lowest_hardness_welded") < number(cold, "lowest_hardness_welded"));
    assertTrue(number(warm, "bead_width") > number(cold, "bead_width"));
  }

  /** There is no threshold below which preheat costs nothing. */
  @Test
  void theWarmerThePlateTheWiderAndSofterTheZone() throws Exception {
    double width = 0;
    double hardness = Double.MAX_VALUE;
    for (int celsius : new int[] {20, 70, 120, 150}) {
      JsonNode warm = preheated(celsius);
      double wider = number(warm, "softened_width");
      double softer = number(warm, "lowest_hardness_welded");
      assertTrue(wider > width, wider + " mm at " + celsius + " °C");
      assertTrue(softer < hardness, softer + " HV at " + celsius + " °C");
      width = wider;
      hardness = softer;
    }
  }

  private static JsonNode preheated(int celsius) throws Exception {
    ObjectNode tree = merged(data.get("start"), Visitor.tree("{\"after_weld\":null}"));
    ((ObjectNode) tree.get("passes").get(0)).put("preheat", celsius + " °C");
    return new Visitor(server.address())
        .asked("/api/section", Visitor.question("preheat", celsius, "settled", tree));
  }

  @Test
  void the4643IsClearlyStrongerAtLowDilutionAndNotAtHigh() {
    assertTrue(answer("filler").contains("4643"));
    String key = "weld_yield_treated";
    assertTrue(number("filler: 4643, 20 %", key) > 1.2 * number("filler: 4043, 20 %", key));
    assertEquals(1, number("filler: 4643, 70 %", key) / number("filler: 4043, 70 %", key), 0.05);
    assertTrue(
        number("filler: 4643, 20 %", "magnesium") > number("filler: 4043, 20 %", "magnesium"));
    assertTrue(LOOKS.get("filler: 4043, 70 %").get("warnings").toString().contains("60 %"));
  }

  @Test
  void ageingAloneLeavesTheWeakestPlaceAndHardensBesideTheWeld() {
    assertEquals("Next to nothing", answer("age"));
    String aged = "age: age only";
    String full = "age: full treatment";
    double lost = 278 - number(aged, "lowest_yield_welded");
    double back = number(aged, "lowest_yield_treated") - number(aged, "lowest_yield_welded");
    assertTrue(back < 0.05 * lost, back + " of " + lost + " MPa");
    assertTrue(number(aged, "edge_hardness_treated") > 1.4 * number(aged, "edge_hardness_welded"));
    assertTrue(number(full, "lowest_yield_treated") > 0.95 * 278);
    assertTrue(number(full, "tensile_treated") > 1.5 * number(aged, "tensile_treated"));
  }

  @Test
  void aMonthHardensBesideTheWeldAndHardlyTheSoftestPlace() {
    assertTrue(answer("natural").contains("beside the weld"));
    double beside = gain("edge_hardness_welded");
    double softest = gain("lowest_hardness_welded");
    assertTrue(beside > 6, beside + " HV");
    assertTrue(softest < 0.4 * beside, softest + " HV");
  }

  private static double gain(String key) {
    return number("natural: 30 days", key) - number("natural: 1 h", key);
  }
}
