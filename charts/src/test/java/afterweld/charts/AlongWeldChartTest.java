package afterweld.charts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import afterweld.casefile.CaseReader;
import afterweld.charts.plot.Picture;
import afterweld.material.MaterialLibrary;
import afterweld.quantity.UnitSystem;
import afterweld.section.AlongWeld;
import afterweld.section.WeldSession;
import afterweld.weld.WeldCase;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

class AlongWeldChartTest {
  private static final String RING =
      """
      title: Small ring
      left: {alloy: "6061", temper: T6, thickness: 3 mm, width: 60 mm}
      ring: {diameter: 40 mm}
      filler: {alloy: "4043", dilution: 40 %}
      passes:
        - {process: GTAW-AC, current: 120 A, voltage: 14 V, travel_speed: 4 mm/s}
      """;

  private static AlongWeld ring;

  @BeforeAll
  static void weld() {
    MaterialLibrary library = MaterialLibrary.standard();
    CaseReader reader = new CaseReader(library.bases(), library.fillers());
    byte[] bytes = RING.getBytes(StandardCharsets.UTF_8);
    WeldCase weld = reader.read("ring.yaml", bytes).caseFile().orElseThrow().weld();
    ring = new WeldSession().along(weld).orElseThrow();
  }

  @Test
  void saysWhatItShows() {
    Picture picture = AlongWeldChart.of(ring, UnitSystem.METRIC);
    assertEquals("Once round the tube, unrolled", picture.title());
    String said = picture.description();
    for (String words : new String[] {"start: bead", "half lap: bead", "mm wide", "falling to"}) {
      assertTrue(said.contains(words), said);
    }
    assertTrue(picture.svg().contains(picture.title()));
  }

  @Test
  void speaksTheReadersUnits() {
    String said = AlongWeldChart.of(ring, UnitSystem.US).description();
    assertTrue(said.contains("in wide") && !said.contains("mm wide"), said);
  }

  @Test
  void isTheSameEveryTime() {
    assertEquals(
        AlongWeldChart.of(ring, UnitSystem.METRIC).svg(),
        AlongWeldChart.of(ring, UnitSystem.METRIC).svg());
  }
}
