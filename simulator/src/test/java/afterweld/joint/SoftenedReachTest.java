package afterweld.joint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import afterweld.section.Cases;
import afterweld.section.SectionProfile;
import afterweld.section.Welded;
import afterweld.thermal.Pass;
import afterweld.weld.Side;
import afterweld.weld.WeldCase;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SoftenedReachTest {
  private static final SectionProfile WELDED =
      Welded.SESSION.thinProfile(Cases.butt("6061", "T6").weldCase());

  private static DesignCodeValue width(double mm) {
    return new DesignCodeValue("EN 1999-1-1", "", "HAZ half width, TIG", mm, "mm", "", "memory");
  }

  private static SoftenedReach reach(double codeWidth) {
    return SoftenedReach.of(WELDED, List.of(width(codeWidth))).get(0);
  }

  /** Hardness dips of ordinary welds end 15 to 30 mm from the centre (common practice). */
  @Test
  void theDipEndsWhereTraversesShowItAndInsideTheTail() {
    SoftenedReach reach = reach(30);
    double dip = reach.dip().orElseThrow();
    assertTrue(dip > 0.010 && dip < 0.030, "dip " + dip);
    assertTrue(reach.anyLoss() > dip);
  }

  @Test
  void theLargerWidthIsTheOneToDesignWith() {
    SoftenedReach narrow = reach(5);
    assertEquals(narrow.anyLoss(), narrow.design());
    assertTrue(narrow.sentence().contains("wider than the half width of the code"));
    assertTrue(narrow.sentence().contains("hardness traverse or a macro"));
    SoftenedReach wide = reach(80);
    assertEquals(0.080, wide.design(), 1e-12);
    assertTrue(wide.sentence().contains("is the larger: design with it"));
  }

  @Test
  void whereNoCodeValueIsKnownTheComputedOneStandsAlone() {
    SoftenedReach alone = SoftenedReach.of(WELDED, List.of()).get(0);
    assertTrue(alone.code().isEmpty());
    assertEquals(alone.anyLoss(), alone.design());
  }

  /** T4 plate hardly softens: its joints fail at 85 % of the base and more (common practice). */
  @Test
  void whatHasNoDipIsNotCalledSoftened() {
    SectionProfile naturallyAged = Welded.SESSION.thinProfile(Cases.butt("6061", "T4").weldCase());
    SoftenedReach reach = SoftenedReach.of(naturallyAged, List.of()).get(0);
    assertEquals(0, reach.dip().orElseThrow());
    assertTrue(
        reach.sentence().startsWith("Molten, partially melted or changed in yield"),
        reach.sentence());
    assertTrue(reach.sentence().contains("no dip"), reach.sentence());
  }

  /** Where the computed section ends is no width to design with. */
  @Test
  void whatHasNoEndIsNoWidthToDesignWith() {
    SoftenedReach endless =
        new SoftenedReach("each", 0.053, true, OptionalDouble.of(0.014), OptionalDouble.of(0.03));
    assertEquals(0.03, endless.design());
    assertTrue(endless.sentence().contains("is the larger: design with it"), endless.sentence());
  }

  /** A narrow strip of work-hardened plate recrystallizes to its edge: no base is left. */
  @Test
  void aStripThatIsSoftToItsEdgeHasNoEndOfTheDip() {
    Side narrow = Cases.narrow("5086", "H116", 0.003, 0.03);
    WeldCase strip = Cases.butt("5086", "H116").withLeft(narrow).withRight(narrow).weldCase();
    SoftenedReach reach =
        SoftenedReach.of(Welded.SESSION.thinProfile(strip), List.of(width(10))).get(0);
    assertTrue(reach.dip().isEmpty());
    assertEquals(reach.anyLoss(), reach.design());
    assertTrue(reach.sentence().contains("does not come back to 90 %"), reach.sentence());
    assertFalse(reach.sentence().contains("nearer to that before"), reach.sentence());
  }

  /** A wire that is off softens one side farther than the other; turned round, the other. */
  @ParameterizedTest
  @ValueSource(doubles = {-0.002, 0.002})
  void theSidesOfAWeldBesideItsJointAreToldApart(double offset) {
    Pass off = Cases.pass(110, 3e-3, 293.15, OptionalDouble.of(0.6), offset);
    WeldCase weld = Cases.butt("6061", "T6").withPasses(off).weldCase();
    List<SoftenedReach> reaches = SoftenedReach.of(Welded.SESSION.profile(weld), List.of());
    assertEquals(List.of("left", "right"), reaches.stream().map(SoftenedReach::side).toList());
    double farther = Math.signum(offset) * (reaches.get(1).anyLoss() - reaches.get(0).anyLoss());
    assertTrue(farther > 0.001, reaches::toString);
  }
}
