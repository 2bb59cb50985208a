package afterweld.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import afterweld.section.Cases;
import afterweld.section.WeldCase;
import afterweld.study.GridStudy.Axis;
import afterweld.study.GridStudy.Node;
import java.util.List;
import java.util.OptionalDouble;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

class GridStudyTest {
  private static final WeldCase CASE =
      CaseChange.passes(
          Cases.butt("6061", "T6").weldCase(),
          pass -> CaseChange.heat(pass, OptionalDouble.of(6e-3), OptionalDouble.empty()));

  @Test
  void fasterTravelNarrowsBeadAndSoftenedZone() {
    AtomicInteger done = new AtomicInteger();
    GridStudy study =
        GridStudy.of(
            CASE,
            0.05,
            List.of(new Axis(GridInput.TRAVEL_SPEED, 2.4e-3, 4e-3)),
            done::incrementAndGet);
    assertEquals(25, study.nodes().size());
    assertEquals(25, done.get());
    for (int i = 1; i < study.nodes().size(); i++) {
      Node slower = study.nodes().get(i - 1);
      Node faster = study.nodes().get(i);
      assertTrue(faster.beadWidth() < slower.beadWidth(), "the bead follows");
      assertTrue(faster.softenedWidth() < 1.002 * slower.softenedWidth());
    }
  }

  @Test
  void theCaseItselfLiesOnItsMap() {
    double speed = CASE.passes().get(0).travelSpeed();
    GridStudy study =
        GridStudy.of(
            CASE, 0.05, List.of(new Axis(GridInput.TRAVEL_SPEED, speed, 2 * speed)), () -> {});
    assertEquals(6e-3, study.nodes().get(0).beadWidth(), 1e-6);
  }

  @Test
  void wherePassesMeltNothingTheReasonStands() {
    GridStudy study =
        GridStudy.of(CASE, 0.05, List.of(new Axis(GridInput.CURRENT, 5, 110)), () -> {});
    Node cold = study.nodes().get(0);
    assertTrue(Double.isNaN(cold.lowestYield()) && !cold.noWeld().isEmpty());
    assertTrue(study.nodes().get(24).noWeld().isEmpty());
  }

  private static Node yields(double low, double middle, double high) {
    return new Node(List.of(1.0), middle, low, high, 2 * middle, 0, 0, "");
  }

  private static GridStudy of(Node... nodes) {
    return new GridStudy(List.of(new Axis(GridInput.CURRENT, 5, 110)), List.of(nodes));
  }

  @Test
  void differencesSmallerThanTheBandAreNoDifferences() {
    Node none = new Node(List.of(1.0), Double.NaN, 0, 0, 0, 0, 0, "cold");
    assertTrue(of(yields(80, 100, 120), none, yields(90, 115, 140)).insideErrorBand());
    assertFalse(of(yields(80, 100, 120), yields(110, 130, 150)).insideErrorBand());
    assertFalse(of(none).insideErrorBand());
    assertEquals(
        130,
        of(yields(80, 100, 120), none, yields(110, 130, 150))
            .strongest()
            .orElseThrow()
            .lowestYield());
  }

  @Test
  void theLowestYieldLiesInItsBand() {
    GridStudy study =
        GridStudy.of(CASE, 0.05, List.of(new Axis(GridInput.CURRENT, 100, 110)), () -> {});
    Node node = study.nodes().get(0);
    assertTrue(node.lowestYieldLow() < 0.95 * node.lowestYield());
    assertTrue(node.lowestYieldHigh() > 1.05 * node.lowestYield());
  }
}
