package afterweld.joint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import afterweld.section.Cases;
import afterweld.section.SectionProfile;
import afterweld.section.Welded;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

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
    assertTrue(reach.dip() > 0.010 && reach.dip() < 0.030, "dip " + reach.dip());
    assertTrue(reach.anyLoss() > reach.dip());
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
    assertEquals(0, reach.dip());
    assertTrue(reach.sentence().startsWith("Changed by the weld"), reach.sentence());
    assertTrue(reach.sentence().contains("no dip"), reach.sentence());
  }

  /** Where the computed section ends is no width to design with. */
  @Test
  void whatHasNoEndIsNoWidthToDesignWith() {
    SoftenedReach endless = new SoftenedReach("each", 0.053, true, 0.014, OptionalDouble.of(0.03));
    assertEquals(0.03, endless.design());
    assertTrue(endless.sentence().contains("is the larger: design with it"), endless.sentence());
  }
}
