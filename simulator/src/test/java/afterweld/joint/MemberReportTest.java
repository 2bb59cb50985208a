package afterweld.joint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import afterweld.joint.JointSettings.BendSettings;
import afterweld.joint.JointSettings.Member;
import afterweld.section.Cases;
import afterweld.section.SectionProfile;
import afterweld.weld.Side;
import afterweld.weld.Warning;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class MemberReportTest {
  private static final double WIDTH = 0.150;

  private static JointReport report(SectionProfile profile) {
    return JointReport.of(
        profile,
        new JointSettings(
            0.050,
            BendSettings.DEFAULT,
            Optional.empty(),
            Optional.empty(),
            Optional.of(new Member(WIDTH))));
  }

  private static MemberReport member(Cases cases) {
    return report(cases.run()).member().orElseThrow();
  }

  /**
   * 6061-T6 sheet, 3 mm, tungsten arc (EN 1999-1-1 table 3.2a and 6.1.6.3, from memory): 240 MPa,
   * zone 0.8 x 115 = 92 MPa over 30 mm each side. By hand: 450 x 240 - 148 x 180 = 81360 N; US
   * weighted over 25.4 mm each side: 450 x 240 - 148 x 152.4 = 85444.8 N.
   */
  @Test
  void codeColumnsByHand() {
    MemberReport.Codes codes = member(Cases.butt("6061", "T6")).codes().orElseThrow();
    assertEquals(81360, codes.en(), 0.5);
    assertEquals(81360 / 1.1, codes.enDesign(), 0.5);
    assertEquals(85444.8, codes.us(), 0.5);
    assertEquals(108000, codes.unwelded(), 0.5);
    assertEquals(0.030, codes.reach(), 1e-9);
  }

  /** EN 1999-1-1 table 3.2a has no H116, and 6.1.6.3 no width for TIG above 6 mm (from memory). */
  @Test
  void whatTheCodeLacksIsNamed() {
    String sea = withoutCode(Cases.butt("5083", "H116"));
    assertTrue(sea.contains("no EN strengths of 5083-H116"), sea);
    Side thick = Cases.side("6061", "T6", 8e-3);
    String wide = withoutCode(Cases.butt("6061", "T6").withLeft(thick).withRight(thick));
    assertTrue(wide.contains("width of the heat-affected zone"), wide);
  }

  private static String withoutCode(Cases cases) {
    return MemberReport.of(cases.run(), WIDTH, DesignCodes.of(cases.weldCase())).warnings().stream()
        .filter(warning -> warning.code().equals("member-without-code"))
        .map(Warning::text)
        .findFirst()
        .orElseThrow();
  }

  @Test
  void predictedForcesAreThoseOfTheProfile() {
    SectionProfile profile = Cases.butt("6061", "T6").run();
    MemberReport member = report(profile).member().orElseThrow();
    MemberReport.State before = member.states().get(0);
    MemberReport.State welded = member.states().get(1);
    var base = profile.stations().get(0).estimates().get(0).middle();
    assertEquals(base.yield() * WIDTH * 0.003, before.proofForce(), 1e-6 * before.proofForce());
    assertEquals(0, before.equivalentReach(), 1e-9);
    assertTrue(welded.greatestForce() > welded.proofForce());
    assertTrue(welded.greatestForce() < before.greatestForce());
  }

  /** The equivalent width times the depth of the softening is the force lost. */
  @Test
  void equivalentWidthStandsForTheForceLost() {
    SectionProfile profile = Cases.butt("6061", "T6").run();
    MemberReport.State welded = report(profile).member().orElseThrow().states().get(1);
    SliceLine plate =
        ProfileSlices.flush(profile, 1, ProfileSlices.End.MIDDLE, WIDTH).orElseThrow().over(WIDTH);
    double base = plate.left().metal().proof();
    double lowest =
        plate.slices().stream().mapToDouble(slice -> slice.metal().proof()).min().orElseThrow();
    double lost = base * WIDTH * 0.003 - welded.proofForce();
    assertEquals(lost, 2 * welded.equivalentReach() * 0.003 * (base - lowest), 1e-6 * lost);
  }

  @Test
  void beforeWeldingTheCodeCountsTheWholeSection() {
    MemberReport member = member(Cases.butt("6061", "T6"));
    double unwelded = member.codes().orElseThrow().unwelded();
    assertEquals(unwelded, member.codesFor(member.states().get(0)).orElseThrow().en());
    assertTrue(member.codesFor(member.states().get(1)).orElseThrow().en() < unwelded);
  }

  @Test
  void eachSideCountsWithItsOwnHalf() {
    Cases unlike = Cases.butt("6061", "T6").withRight(Cases.side("6061", "T6", 0.004));
    double thin = member(Cases.butt("6061", "T6")).codes().orElseThrow().en();
    double both = member(unlike).codes().orElseThrow().en();
    assertEquals(thin * (0.003 + 0.004) / 2 / 0.003, both, 1e-6 * both);
  }

  /** EN 1999-1-1 gives no width of the zone for a tungsten arc above 6 mm. */
  @Test
  void aMissingCodeValueLeavesTheColumnOutAndIsTold() {
    Cases thick =
        Cases.butt("6061", "T6")
            .withPasses(Cases.pass(300, 2e-3, 293.15))
            .withLeft(Cases.side("6061", "T6", 0.008));
    JointReport report = report(thick.withRight(Cases.side("6061", "T6", 0.008)).run());
    MemberReport member = report.member().orElseThrow();
    assertTrue(member.codes().isEmpty());
    assertFalse(member.states().isEmpty());
    assertTrue(
        report.warnings().stream().map(Warning::code).anyMatch("member-without-code"::equals));
  }

  @Test
  void withoutTheKeyThereIsNoMember() {
    SectionProfile profile = Cases.butt("6061", "T6").run();
    assertTrue(JointReport.of(profile, JointSettings.DEFAULT).member().isEmpty());
  }
}
