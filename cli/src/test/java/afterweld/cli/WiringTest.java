package afterweld.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import afterweld.document.ResultCautions;
import afterweld.material.Composition;
import afterweld.material.Element;
import afterweld.material.MaterialLibrary;
import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * That each number of a joint whose sides, passes and states all differ is the one its name says:
 * by hand where the hand can follow it, in every writer the same.
 */
class WiringTest {
  private static final double HALF_A_UNIT = 0.5001;

  @TempDir static Path folder;
  private static AnsweredCase treated;
  private static JsonNode profile;

  @BeforeAll
  static void ask() {
    treated = new AnsweredCase(CaseEdit.of(UnlikePlates.TREATED), folder);
    profile = treated.run("profile").json();
  }

  private static Stream<JsonNode> each(JsonNode array) {
    return StreamSupport.stream(array.spliterator(), false);
  }

  /** Seven tenths of the melted base from the left, four tenths of the pool from the base. */
  @Test
  void thePoolIsMixedOfBothSidesAndTheFiller() {
    MaterialLibrary library = MaterialLibrary.standard();
    Composition left = library.base("6061").orElseThrow().composition();
    Composition right = library.base("6082").orElseThrow().composition();
    Composition filler = library.filler("4643").orElseThrow().composition();
    for (Element element : List.of(Element.SI, Element.MG, Element.MN, Element.CU)) {
      double base = 0.7 * left.of(element) + 0.3 * right.of(element);
      double pool = 0.4 * base + 0.6 * filler.of(element);
      JsonNode said = profile.at("/weld_metal/composition_wt").path(symbol(element));
      assertEquals(pool, said.asDouble(), 0.00051, element.toString());
    }
  }

  private static String symbol(Element element) {
    return element.name().charAt(0) + element.name().substring(1).toLowerCase(Locale.ROOT);
  }

  @Test
  void everyColumnOfTheFileIsTheResult() {
    List<String> rows = treated.run("profile").files().get("profile.csv").lines().toList();
    List<String> heading = Arrays.asList(rows.get(0).split(","));
    JsonNode stations = profile.get("stations");
    for (int i = 0; i < stations.size(); i++) {
      String[] cells = rows.get(i + 1).split(",", -1);
      for (int state = 0; state < profile.get("states").size(); state++) {
        for (String quantity : List.of("hardness_HV", "yield_MPa", "tensile_MPa")) {
          String name = quantity + " (" + profile.get("states").get(state).asText() + ")";
          double known = stations.get(i).get(quantity).get(state).asDouble();
          assertEquals(known, Double.parseDouble(cells[heading.indexOf(name)]), 0.051, name);
        }
      }
    }
  }

  @Test
  void theReportsJointIsTheResult() {
    List<List<String>> rows =
        new HtmlTables(treated.run("profile").files().get("report.html")).withHeading("proof");
    List<String> heading = rows.get(0);
    for (List<String> row : rows.subList(1, rows.size())) {
      JsonNode usual = joint(row.get(0), row.get(1), 50);
      assertNear(usual.get("proof_MPa"), row.get(heading.indexOf("proof (MPa)")));
      assertNear(usual.get("tensile_MPa"), row.get(heading.indexOf("tensile (MPa)")));
      JsonNode inches = joint(row.get(0), row.get(1), 50.8);
      assertNear(inches.get("proof_MPa"), row.get(heading.indexOf("over 2 in")));
    }
    assertEquals(6, rows.size() - 1, "three states, flush and as deposited");
  }

  private static JsonNode joint(String state, String bead, double gauge) {
    return each(profile.get("joint"))
        .filter(joint -> state.startsWith(joint.get("state").asText()))
        .filter(joint -> joint.get("bead").asText().equals(bead))
        .filter(joint -> joint.get("gauge_mm").asDouble() == gauge)
        .findFirst()
        .orElseThrow();
  }

  private static void assertNear(JsonNode known, String written) {
    assertEquals(known.asDouble(), Double.parseDouble(written), HALF_A_UNIT + 0.05);
  }

  @Test
  void theReportsStationsAreTheResult() {
    List<List<String>> rows =
        new HtmlTables(treated.run("profile").files().get("report.html"))
            .withHeading("yield before welding");
    JsonNode stations = profile.get("stations");
    assertEquals(stations.size(), rows.size() - 1);
    for (int i = 0; i < stations.size(); i++) {
      for (int state = 0; state < 3; state++) {
        List<String> cells = rows.get(i + 1).subList(3 + 3 * state, 6 + 3 * state);
        assertNear(stations.get(i).get("hardness_HV").get(state), cells.get(0));
        assertNear(stations.get(i).get("yield_MPa").get(state), cells.get(1));
        assertNear(stations.get(i).get("tensile_MPa").get(state), cells.get(2));
      }
    }
  }

  /** The caution beside the fillers gives the band that the profile has of the weld metal. */
  @Test
  void theBandOfTheWeldMetalIsOneFigure() {
    JsonNode weld =
        each(profile.get("stations"))
            .filter(station -> station.get("zone").asText().equals("fusion"))
            .findFirst()
            .orElseThrow();
    double middle = weld.get("yield_MPa").get(2).asDouble();
    double width = weld.get("yield_MPa_high").get(2).asDouble() / middle - 1;
    String told = String.format(Locale.ROOT, "yield %.0f %% either way", 100 * width);
    assertTrue(ResultCautions.FILLERS.contains(told), told + ": " + ResultCautions.FILLERS);
  }

  /** Thin-wall formula: the pressure goes with the strength of the metal in that state. */
  @Test
  void theTreatedTubeIsComputedFromTreatedMetal() {
    double welded = profile.at("/tube/soft_band_yields_at_MPa").asDouble();
    double treatedTube =
        profile.at("/tube_after_heat_treatment/soft_band_yields_at_MPa").asDouble();
    double stronger = lowest(2) / lowest(1);
    assertTrue(stronger > 1.3, "the treatment brings strength back: " + stronger);
    assertTrue(treatedTube / welded > 0.75 * stronger, welded + " and " + treatedTube + " MPa");
  }

  private static double lowest(int state) {
    return each(profile.get("stations"))
        .mapToDouble(station -> station.get("yield_MPa").get(state).asDouble())
        .min()
        .orElseThrow();
  }

  /** What the inputs alone do lies inside what inputs and model error do together. */
  @Test
  void theSpreadOfTheInputsAloneIsTheNarrowerBand() {
    JsonNode spread = treated.run("spread", "--runs", "40").json();
    for (String quantity : List.of("hardness_HV", "yield_MPa")) {
      double alone = 0;
      double together = 0;
      for (JsonNode station : spread.get("stations")) {
        JsonNode inputs = station.get(quantity + "_inputs_only");
        JsonNode all = station.get(quantity);
        alone += inputs.get("p95").asDouble() - inputs.get("p5").asDouble();
        together += all.get("p95").asDouble() - all.get("p5").asDouble();
        double middle = all.get("p50").asDouble();
        assertEquals(middle, inputs.get("p50").asDouble(), 0.2 * middle, quantity);
      }
      assertTrue(alone > 0 && alone < 0.7 * together, quantity + " " + alone + " " + together);
    }
  }
}
