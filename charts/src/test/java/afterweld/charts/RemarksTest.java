package afterweld.charts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import afterweld.choice.answer.Requirement;
import afterweld.quantity.OutputQuantity;
import afterweld.quantity.UnitSystem;
import afterweld.section.SectionProfile;
import afterweld.weld.Warning;
import java.util.List;
import org.junit.jupiter.api.Test;

class RemarksTest {
  private static Remarks remarks(SectionProfile profile, UnitSystem units) {
    return new Remarks(new SectionView(profile, Requirement.NONE, units));
  }

  private static SectionProfile cautioned(SectionProfile profile, List<String> cautions) {
    return new SectionProfile(
        profile.weldCase(),
        profile.soundness(),
        profile.states(),
        profile.stations(),
        profile.runs(),
        profile.zones(),
        profile.weldMetal(),
        profile.passes(),
        profile.tellingCycles(),
        profile.softening(),
        profile.warnings(),
        cautions);
  }

  @Test
  void theCaseIsToldInOneLine() {
    SectionProfile profile = InventedWeld.twoSided().profile();
    assertEquals(
        "Fork arm to base plate, observatory mount · butt, 6061-T6 6 mm to 5052-H32 4 mm,"
            + " filler 4643 at 30 % dilution",
        remarks(profile, UnitSystem.METRIC).subject());
    assertTrue(remarks(profile, UnitSystem.US).subject().contains("6061-T6 0.236 in to"));
  }

  @Test
  void theMainCautionStandsAlone() {
    SectionProfile plate = InventedWeld.symmetric().profile();
    assertEquals(List.of(InventedWeld.CAUTION), remarks(plate, UnitSystem.METRIC).caution());
  }

  @Test
  void aTubeCarriesThePressureCautionToo() {
    List<String> caution =
        remarks(InventedWeld.symmetric().onTube().profile(), UnitSystem.METRIC).caution();
    assertEquals(2, caution.size());
    assertTrue(caution.get(1).contains("not a design pressure"));
  }

  @Test
  void anEstimateIsAlwaysCalledOne() {
    SectionProfile plate = InventedWeld.symmetric().profile();
    for (List<String> cautions : List.of(List.<String>of(), List.of("Hot metal."))) {
      List<String> shown = remarks(cautioned(plate, cautions), UnitSystem.METRIC).caution();
      assertEquals("Estimate, not a design value.", shown.get(0));
    }
  }

  @Test
  void gapsAndWarningsAreNoted() {
    SectionProfile profile =
        InventedWeld.symmetric()
            .withUnknownWeldMetal()
            .warning(new Warning("dilution-assumed", "The dilution is assumed."))
            .profile();
    assertEquals(
        List.of(
            "Not predicted, yield strength and tensile strength: as welded (fusion); after heat"
                + " treatment (fusion).",
            "Warnings that come with the result: dilution assumed."),
        remarks(profile, UnitSystem.METRIC)
            .notes(List.of(OutputQuantity.YIELD, OutputQuantity.TENSILE)));
  }
}
