package afterweld.section;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import afterweld.weld.Side;
import afterweld.weld.WeldCase;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ZoneOrderTest {
  private static WeldCase plate(String temper, double days) {
    Side side = Cases.side("6061", temper, 0.006);
    return Cases.butt("6061", temper)
        .withLeft(side)
        .withRight(side)
        .withPasses(Cases.pass(180, 2.5e-3, 293.15))
        .weldCase()
        .change()
        .naturalAge(days * Cases.DAY)
        .done();
  }

  private static List<Zone> outwards(SectionProfile profile) {
    return profile.zones().stream()
        .filter(span -> span.place() == Station.Place.RIGHT)
        .map(ZoneSpan::zone)
        .toList();
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 1, 30})
  void aT4StartHasOneOrderOfZones(double days) {
    // Clusters come and go in waves of peak temperature; the names do not.
    assertEquals(
        List.of(Zone.PARTIALLY_MELTED, Zone.SOLUTIONIZED, Zone.ANNEALED, Zone.BASE),
        outwards(Welded.SESSION.profile(plate("T4", days))));
  }

  @ParameterizedTest
  @ValueSource(strings = {"T4", "T6"})
  void baseEndsWhereTheYieldBeginsToFall(String temper) {
    SectionProfile profile = Welded.SESSION.profile(plate(temper, 1));
    double softening = profile.softening().right().from();
    for (Station station : profile.stations()) {
      assertEquals(
          station.zone() == Zone.BASE, station.peakTemperature() < softening, station.toString());
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"T4", "T6"})
  void onlyMetalAboveTheSolvusOfCoarsePhasesIsSolutionized(String temper) {
    // Common practice: above about 480 to 500 °C; 320 to 420 °C leaves coarse precipitates.
    assertTrue(
        Welded.SESSION.profile(plate(temper, 30)).stations().stream()
            .filter(station -> station.zone() == Zone.SOLUTIONIZED)
            .allMatch(station -> station.peakTemperature() >= 480 + 273.15));
  }

  @Test
  void aStateNameCarriesTheWaitingTime() {
    SectionProfile profile = Welded.SESSION.thinProfile(plate("T6", 30));
    assertEquals("as welded", profile.states().get(1));
    assertEquals("as welded (after 30 days)", profile.label(1));
    assertEquals("before welding", profile.label(0));
  }
}
