package afterweld.section;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import afterweld.weld.WeldCase;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Artificially aged tempers are stable: their strength on delivery stays (common practice). */
class OnTheShelfTest {
  @ParameterizedTest
  @CsvSource({"6063, T5", "6061, T6", "6082, T6"})
  void aBaseHasOneStrengthBeforeAndAfterAMonth(String alloy, String temper) {
    WeldCase weld = Cases.butt(alloy, temper).weldCase();
    SectionProfile profile = Welded.SESSION.thinProfile(weld);
    Station far = profile.stations().get(profile.stations().size() - 1);
    assertEquals(Zone.BASE, far.zone());
    double delivered = far.estimates().get(0).middle().yield();
    assertEquals(delivered, far.estimates().get(1).middle().yield(), 0.005 * delivered);
    assertEquals(
        delivered,
        Welded.SESSION.weldMetal(weld).base(weld.left()).asWelded().yield(),
        1e-6 * delivered);
    assertTrue(
        profile.stations().stream()
            .filter(station -> station.zone() != Zone.FUSION)
            .allMatch(
                station ->
                    station.estimates().get(1).middle().tensile()
                        <= station.estimates().get(0).middle().tensile()));
  }
}
