package afterweld.joint;

import static org.junit.jupiter.api.Assertions.assertTrue;

import afterweld.section.Cases;
import afterweld.section.SectionProfile;
import afterweld.section.Welded;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The usual magnesium fillers on their bases: every qualified procedure reaches the minimum that
 * the Aluminum Design Manual asks of such welds (40, 35, 31 and 25 ksi), and the typical values of
 * a wire producer's guide (read; 43, 39, 35 and 28 ksi) are met within 10 %.
 */
class MagnesiumWeldTest {
  private static final double KSI = 6.894757e6;

  @ParameterizedTest
  @CsvSource({
    "5083, H116, 5183, 40, 43",
    "5083, O, 5183, 40, 43",
    "5086, H32, 5356, 35, 39",
    "5454, H32, 5554, 31, 35",
    "5052, H32, 5356, 25, 28"
  })
  void theJointReachesWhatCodesAsk(
      String base, String temper, String filler, double least, double typical) {
    SectionProfile profile =
        Welded.SESSION.thinProfile(
            Cases.butt(base, temper).withFiller(Cases.filler(filler, 0.4)).weldCase());
    double tensile = JointReport.finished(profile, 0.05).tensile().orElseThrow() / KSI;
    assertTrue(tensile >= least, () -> tensile + " ksi");
    assertTrue(Math.abs(tensile / typical - 1) < 0.10, () -> tensile + " ksi");
  }
}
