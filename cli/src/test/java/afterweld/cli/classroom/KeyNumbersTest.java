package afterweld.cli.classroom;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import afterweld.casefile.CaseFile;
import afterweld.cli.Welded;
import afterweld.joint.JointReport;
import afterweld.section.SectionProfile;
import afterweld.section.Station;
import afterweld.section.Zone;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Numbers beside a weld whose sides differ. */
class KeyNumbersTest {

  @Test
  void theHardnessBesideUnlikeSidesIsTheSofterOne() throws Exception {
    CaseFile asked =
        ClassroomNumbersTest.read(Files.readString(Path.of("examples/pier-tube.yaml")));
    SectionProfile profile = Welded.SESSION.profile(asked.weld());
    double left = beside(profile, -1);
    double right = beside(profile, 1);
    assertNotEquals(left, right, 1);
    Map<String, Object> row = row(profile, asked);
    assertEquals("hardness beside weld, softer side", row.get("name"));
    assertEquals(Math.min(left, right), (double) row.get("value"));
  }

  private static Map<String, Object> row(SectionProfile profile, CaseFile asked) {
    return new KeyNumbers(profile, JointReport.of(profile, asked.joint()))
        .rows().stream()
            .filter(row -> row.get("key").equals("edge_hardness_welded"))
            .findFirst()
            .orElseThrow();
  }

  private static double beside(SectionProfile profile, int side) {
    double nearest = Double.POSITIVE_INFINITY;
    double hardness = Double.NaN;
    for (Station station : profile.stations()) {
      boolean melted = List.of(Zone.FUSION, Zone.PARTIALLY_MELTED).contains(station.zone());
      double distance = side * station.distance();
      if (!melted && distance > 0 && distance < nearest) {
        nearest = distance;
        hardness = station.estimates().get(1).middle().hardness();
      }
    }
    return hardness;
  }
}
