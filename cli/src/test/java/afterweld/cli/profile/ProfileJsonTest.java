package afterweld.cli.profile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import afterweld.choice.answer.Requirement;
import afterweld.cli.Fixtures;
import afterweld.document.JsonNumber;
import afterweld.joint.JointReport;
import afterweld.joint.JointSettings;
import afterweld.quantity.UnitSystem;
import afterweld.section.SectionProfile;
import afterweld.section.Zone;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/** The JSON that programs rely on, read back by a parser. */
class ProfileJsonTest {
  private static JointReport joint(SectionProfile profile) {
    return JointReport.of(profile, JointSettings.DEFAULT);
  }

  private static String text(SectionProfile profile, Requirement requirement) {
    return new ProfileResult(profile, joint(profile), requirement, UnitSystem.US).json();
  }

  private static JsonNode read(SectionProfile profile, Requirement requirement) throws Exception {
    return new ObjectMapper().readTree(text(profile, requirement));
  }

  private static JsonNode read() throws Exception {
    return read(Fixtures.profile(), Fixtures.yieldOf(190));
  }

  private static List<String> keys(JsonNode node) {
    List<String> keys = new ArrayList<>();
    node.fieldNames().forEachRemaining(keys::add);
    return keys;
  }

  @Test
  void theKeysAreThoseOfTheDescription() throws Exception {
    JsonNode json = read();
    assertEquals(
        List.of(
            "title",
            "soundness",
            "states",
            "waiting_days",
            "stations",
            "zones",
            "weld_metal",
            "joint",
            "design_codes",
            "design_codes_note",
            "softened_reach",
            "requirement",
            "objections",
            "warnings",
            "cautions"),
        keys(json));
    assertEquals(
        List.of(
            "distance_mm",
            "side",
            "zone",
            "peak_temperature_C",
            "hardness_HV",
            "yield_MPa",
            "tensile_MPa",
            "hardness_HV_low",
            "hardness_HV_high",
            "yield_MPa_low",
            "yield_MPa_high",
            "tensile_MPa_low",
            "tensile_MPa_high"),
        keys(json.get("stations").get(0)));
    assertEquals(
        List.of("zone", "side", "from_mm", "to_mm", "lowest_hardness_HV"),
        keys(json.get("zones").get(0)));
    assertEquals(
        List.of(
            "filler",
            "dilution",
            "dilution_low",
            "dilution_high",
            "composition_wt",
            "solidus_C",
            "crack_tendency"),
        keys(json.get("weld_metal")));
    assertEquals(List.of("met", "verdict", "chance", "reasons"), keys(json.get("requirement")));
    assertEquals(List.of("code", "text"), keys(json.get("warnings").get(0)));
  }

  @Test
  void valuesAreMetricInTheOrderOfTheStates() throws Exception {
    JsonNode station = read().get("stations").get(40 - 15);
    assertEquals(-15.0, station.get("distance_mm").asDouble());
    assertEquals("left", station.get("side").asText());
    assertEquals("annealed", station.get("zone").asText());
    assertEquals("[276.0,110.0,236.8]", station.get("yield_MPa").toString());
    assertEquals("[234.6,93.5,201.3]", station.get("yield_MPa_low").toString());
    assertEquals(3, station.get("tensile_MPa_high").size());
  }

  @Test
  void theWeldMetalIsThere() throws Exception {
    JsonNode metal = read().get("weld_metal");
    assertEquals("4643", metal.get("filler").asText());
    assertEquals(0.25, metal.get("dilution_low").asDouble());
    assertEquals("{\"Si\":4.1,\"Mg\":0.2}", metal.get("composition_wt").toString());
    assertEquals(557.0, metal.get("solidus_C").asDouble());
  }

  @Test
  void whatIsNotPredictedIsNullWithAReason() throws Exception {
    SectionProfile profile =
        Fixtures.profile(
            Fixtures.THREE_STATES,
            station ->
                station.zone() == Zone.FUSION ? ProfileTableTest.unpredicted(station) : station);
    JsonNode json = read(profile, Fixtures.yieldOf(100));
    JsonNode weld = json.get("stations").get(40);
    assertTrue(weld.get("yield_MPa").get(1).isNull());
    assertTrue(weld.get("hardness_HV_low").get(2).isNull());
    assertTrue(json.get("zones").get(5).get("lowest_hardness_HV").get(0).isNull());
    assertTrue(json.get("requirement").get("met").isNull());
    assertTrue(json.get("warnings").findValuesAsText("code").contains("not-predicted"));
  }

  @Test
  void theRequirementIsTrueOrFalse() throws Exception {
    assertTrue(read().get("requirement").get("met").booleanValue());
    JsonNode asked = read(Fixtures.profile(), Fixtures.yieldOf(300)).get("requirement");
    assertFalse(asked.get("met").booleanValue());
    JsonNode nothing = read(Fixtures.profile(), Requirement.NONE).get("requirement");
    assertTrue(nothing.get("met").booleanValue());
    assertEquals("The case requires nothing.", nothing.get("reasons").get(0).asText());
  }

  @Test
  void theSameResultIsTheSameTextInAnyLanguage() {
    String once = text(Fixtures.profile(), Fixtures.yieldOf(190));
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.GERMANY);
      assertEquals(once, text(Fixtures.profile(), Fixtures.yieldOf(190)));
    } finally {
      Locale.setDefault(before);
    }
    assertFalse(once.contains("\r"));
    assertTrue(once.endsWith("}\n"));
  }

  @Test
  void numbersHaveNoNegativeZeroAndNoExponent() {
    assertEquals("0.000", new JsonNumber(-1e-9, 3).toString());
    assertEquals("1234567890.0", new JsonNumber(1.23456789e9, 1).toString());
    assertEquals("null", new JsonNumber(Double.NEGATIVE_INFINITY, 1).toString());
  }
}
