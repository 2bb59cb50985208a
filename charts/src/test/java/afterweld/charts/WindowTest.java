package afterweld.charts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import afterweld.charts.plot.Axis;
import afterweld.charts.plot.Curve;
import afterweld.choice.answer.Requirement;
import afterweld.quantity.UnitSystem;
import afterweld.section.SectionProfile;
import afterweld.section.Zone;
import org.junit.jupiter.api.Test;

class WindowTest {
  @Test
  void aWiderPlateDoesNotChangeThePicture() {
    SectionWindow narrow = SectionWindow.of(InventedWeld.symmetric().profile());
    SectionWindow wide = SectionWindow.of(InventedWeld.symmetric().withLegs(0.4).profile());
    assertEquals(narrow, wide);
  }

  @Test
  void allChangedZonesAndSomeBaseAreInside() {
    SectionProfile profile = InventedWeld.twoSided().profile();
    SectionWindow window = SectionWindow.of(profile);
    for (var span : profile.zones()) {
      boolean base = span.zone() == Zone.BASE;
      assertEquals(!base, window.from() <= span.from() && span.to() <= window.to());
    }
    assertTrue(window.from() <= -0.0168 - 0.004);
    assertTrue(window.to() >= 0.0170 + 0.004);
  }

  @Test
  void aNarrowLegEndsThePicture() {
    SectionWindow window = SectionWindow.of(InventedWeld.symmetric().withLegs(0.018).profile());
    assertEquals(-0.018, window.from(), 1e-9);
    assertEquals(0.018, window.to(), 1e-9);
  }

  @Test
  void ofSeveralPassesTheHottestIsShown() {
    SectionView view =
        new SectionView(
            InventedWeld.symmetric().inPasses(3).profile(), Requirement.NONE, UnitSystem.METRIC);
    Axis axis = new CyclePanel(view).timeAxis();
    assertTrue(axis.span() < 60, axis.toString());
    assertTrue(axis.label().endsWith("hottest pass"));
    assertEquals(0, axis.from(), "time counts from the heating shown");
    Curve hottest = new CyclePanel(view).curves().get(0);
    assertEquals(hottest.highest(), hottest.between(axis.from(), axis.to()).highest());
  }

  @Test
  void theTimeAxisEndsWhenAllHaveCooled() {
    SectionView view =
        new SectionView(InventedWeld.symmetric().profile(), Requirement.NONE, UnitSystem.METRIC);
    double end = new CyclePanel(view).timeAxis().to();
    double hottest = 0.2 * 900;
    for (var cycle : view.profile().tellingCycles()) {
      double rise = cycle.history().at(end) - view.profile().weldCase().ambient();
      assertTrue(rise <= hottest + 1e-9, "rise " + rise);
    }
    assertTrue(end < 60, "end " + end);
  }
}
