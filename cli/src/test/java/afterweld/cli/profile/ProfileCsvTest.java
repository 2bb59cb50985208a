package afterweld.cli.profile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import afterweld.cli.Fixtures;
import afterweld.document.ProfileCsv;
import afterweld.quantity.UnitSystem;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The CSV as a spreadsheet reads it. */
class ProfileCsvTest {
  private static List<String> lines(UnitSystem units) {
    return new ProfileCsv(Fixtures.profile(), units).text().lines().toList();
  }

  @Test
  void columnsAreNamedPerStateWithTheirUnit() {
    assertEquals(
        "distance_mm,side,zone,peak_temperature_C,hardness_HV (before welding),yield_MPa (before"
            + " welding),tensile_MPa (before welding),hardness_HV (as welded),yield_MPa (as"
            + " welded),tensile_MPa (as welded),hardness_HV (after heat treatment),yield_MPa (after"
            + " heat treatment),tensile_MPa (after heat treatment)",
        lines(UnitSystem.METRIC).get(0));
    assertTrue(
        lines(UnitSystem.US)
            .get(0)
            .startsWith(
                "distance_in,side,zone,peak_temperature_F,hardness_HV (before welding),yield_ksi"));
  }

  @Test
  void aRowPerStation() {
    List<String> lines = lines(UnitSystem.METRIC);
    assertEquals(82, lines.size());
    assertTrue(
        lines.get(1 + 25).startsWith("-15.000,left,annealed,234.4,108.3,276.0,316.0,47.6,110.0"));
    assertTrue(
        lines(UnitSystem.US).get(1 + 25).startsWith("-0.5906,left,annealed,453.8,108.3,40.03"));
  }

  @Test
  void whatIsNotPredictedIsAnEmptyCell() {
    String text =
        new ProfileCsv(
                Fixtures.profile(Fixtures.THREE_STATES, ProfileTableTest::unpredicted),
                UnitSystem.METRIC)
            .text();
    assertTrue(text.lines().skip(1).allMatch(line -> line.endsWith(",,,,,,,,,")), text);
  }
}
