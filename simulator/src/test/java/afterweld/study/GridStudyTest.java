package afterweld.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import afterweld.choice.answer.Requirement;
import afterweld.joint.JointReport;
import afterweld.section.Cases;
import afterweld.section.Welded;
import afterweld.study.GridStudy.Axis;
import afterweld.study.GridStudy.Node;
import afterweld.weld.WeldCase;
import java.util.List;
import java.util.Optional;
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
            Welded.SESSION,
            CASE,
            0.05,
            Requirement.NONE,
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
            Welded.SESSION,
            CASE,
            0.05,
            Requirement.NONE,
            List.of(new Axis(GridInput.TRAVEL_SPEED, speed, 2 * speed)),
            () -> {});
    assertEquals(6e-3, study.nodes().get(0).beadWidth(), 1e-6);
  }

  /** As in a table of ageings: 4 h at 177 °C is the least that the trade gives (read). */
  @Test
  void anAgeingShorterThanTheTradesIsNotRankedInAMap() {
    WeldCase treated = Cases.butt("6061", "T6").then(Cases.fullTreatment("6061")).weldCase();
    Axis hours = new Axis(GridInput.AGEING_TIME, 2 * 3600.0, 8 * 3600.0);
    List<Node> nodes =
        GridStudy.of(Welded.SESSION, treated, 0.05, Requirement.NONE, List.of(hours), () -> {})
            .nodes();
    assertTrue(nodes.stream().anyMatch(node -> node.joint().ranked()));
    assertTrue(
        nodes.stream()
            .filter(node -> node.values().get(0) < 4 * 3600)
            .noneMatch(node -> node.joint().ranked()));
  }

  private static GridStudy overCurrent(Requirement asked, double from) {
    return GridStudy.of(
        Welded.SESSION,
        CASE,
        0.05,
        asked,
        List.of(new Axis(GridInput.CURRENT, from, 110)),
        () -> {});
  }

  @Test
  void wherePassesMeltNothingTheReasonStands() {
    GridStudy study = overCurrent(Requirement.NONE, 5);
    Node cold = study.nodes().get(0);
    assertTrue(Double.isNaN(cold.value()) && cold.joint().blank().startsWith("No weld"));
    assertTrue(study.nodes().get(24).joint().blank().isEmpty());
  }

  /** The best place, written as a case, is the joint that the profile computes. */
  @Test
  void theBestPlaceWrittenAsACaseHasTheSameStrength() {
    GridStudy study = overCurrent(Requirement.NONE, 90);
    Node best = study.nodes().get(study.ranking().best().orElseThrow());
    WeldCase written =
        CaseChange.passes(
            CASE,
            pass ->
                CaseChange.pass(
                    CaseChange.heat(
                        pass,
                        OptionalDouble.empty(),
                        OptionalDouble.of(study.efficiencies().get(0))),
                    best.values().get(0),
                    pass.voltage(),
                    pass.travelSpeed(),
                    pass.startTemperature()));
    double profile =
        JointReport.finished(Welded.SESSION.profile(written), 0.05).tensile().orElseThrow();
    assertEquals(profile, best.value(), 1e-6 * profile);
    assertEquals(profile, best.joint().figures().tensile(), 1e-6 * profile);
  }

  @Test
  void whatTheCaseRequiresRanks() {
    Requirement hardness =
        new Requirement(
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.of(50),
            Optional.empty(),
            OptionalDouble.empty());
    Node node = overCurrent(hardness, 100).nodes().get(0);
    assertEquals(node.joint().figures().hardness(), node.value());
    assertTrue(node.value() > 30 && node.value() < 130, "HV " + node.value());
  }

  @Test
  void theLowestYieldLiesInItsBand() {
    Node node = overCurrent(Requirement.NONE, 100).nodes().get(0);
    assertTrue(node.lowestYield().low() < 0.95 * node.lowestYield().middle());
    assertTrue(node.lowestYield().high() > 1.05 * node.lowestYield().middle());
  }
}
