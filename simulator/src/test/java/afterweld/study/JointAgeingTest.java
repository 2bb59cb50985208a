package afterweld.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import afterweld.choice.answer.Requirement;
import afterweld.joint.JointReport;
import afterweld.section.Cases;
import afterweld.section.Welded;
import afterweld.thermal.furnace.FurnaceStep;
import afterweld.thermal.furnace.FurnaceStep.Age;
import afterweld.thermal.furnace.FurnaceStep.Ramp;
import afterweld.weld.WeldCase;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class JointAgeingTest {
  private static final Cases CASE = Cases.butt("6061", "T6");
  private static final WeldCase TREATED = CASE.then(Cases.fullTreatment("6061")).weldCase();

  private static double profile(WeldCase weldCase) {
    return JointReport.finished(Welded.SESSION.profile(weldCase), 0.05).tensile().orElseThrow();
  }

  /**
   * The schedule, and the best ageing written as a case, are the joints that a profile computes.
   */
  @Test
  void theBestAgeingWrittenAsACaseHasTheSameStrength() {
    JointAgeing ageing = JointAgeing.of(Welded.SESSION, TREATED, 0.05, Requirement.NONE);
    double scheduled = ageing.schedule().orElseThrow().joint().value();
    assertEquals(profile(TREATED), scheduled, 1e-6 * scheduled);
    assertEquals(scheduled, ageing.asWritten().value(), 1e-6 * scheduled);
    JointAgeing.Trial best = ageing.trials().get(ageing.ranking().best().orElseThrow());
    List<FurnaceStep> steps = new ArrayList<>(TREATED.afterWeld());
    steps.set(steps.size() - 1, new Age(best.temperature(), best.time(), Ramp.BY_FURNACE, false));
    double written = profile(TREATED.withAfterWeld(steps));
    assertEquals(written, best.joint().value(), 1e-6 * written);
    assertTrue(ageing.gains(), "full treatment makes the joint stronger than as welded");
  }

  /** Fact of the trade: ageing alone does nothing for an annealed joint. */
  @Test
  void annealedMetalGainsNothingByAgeing() {
    WeldCase annealed =
        Cases.butt("6061", "O")
            .then(List.of(new Age(450, 8 * 3600, Ramp.BY_FURNACE, false)))
            .weldCase();
    assertFalse(JointAgeing.of(Welded.SESSION, annealed, 0.05, Requirement.NONE).gains());
  }

  @Test
  void whereNothingHardensThereIsNothingToTry() {
    JointAgeing none =
        JointAgeing.of(
            Welded.SESSION,
            Cases.butt("5083", "H116").withFiller(Cases.filler("5183", 0.4)).weldCase(),
            0.05,
            Requirement.NONE);
    assertTrue(none.trials().isEmpty() && none.schedule().isEmpty());
    assertTrue(none.asWritten().value() > 0);
  }

  /**
   * The usual ageing is among the trials, whatever the case says (common practice: 175 °C, 8 h).
   */
  @Test
  void anAgeingThatNobodyUsesIsComparedWithTheUsualOnes() {
    List<FurnaceStep> cold = new ArrayList<>(TREATED.afterWeld());
    cold.set(cold.size() - 1, new Age(121 + 273.15, 8 * 3600, Ramp.BY_FURNACE, false));
    JointAgeing ageing =
        JointAgeing.of(Welded.SESSION, TREATED.withAfterWeld(cold), 0.05, Requirement.NONE);
    Age usual = (Age) TREATED.afterWeld().get(TREATED.afterWeld().size() - 1);
    assertTrue(
        ageing.trials().stream()
            .anyMatch(
                trial ->
                    Math.abs(trial.temperature() - usual.temperature()) < 0.01
                        && trial.time() == usual.time()));
    double best = ageing.trials().get(ageing.ranking().best().orElseThrow()).joint().value();
    assertTrue(best > 1.2 * ageing.asWritten().value(), best + " " + ageing.asWritten().value());
  }

  /** 4 h at 177 °C is the least that the trade gives wrought metal (read). */
  @Test
  void anAgeingShorterThanTheTradesIsNeverBest() {
    JointAgeing ageing = JointAgeing.of(Welded.SESSION, TREATED, 0.05, Requirement.NONE);
    assertTrue(
        ageing.trials().stream()
            .filter(trial -> trial.temperature() < 450.5 && trial.time() < 4 * 3600)
            .noneMatch(trial -> trial.joint().ranked()));
    assertTrue(ageing.trials().stream().anyMatch(trial -> trial.joint().ranked()));
  }

  /** Their peak is computed far too late, so that the longest would always win. */
  @Test
  void noAgeingOfACastingIsCalledBest() {
    WeldCase casting = Cases.butt("A356", "T6").then(Cases.fullTreatment("A356")).weldCase();
    assertTrue(
        JointAgeing.of(Welded.SESSION, casting, 0.05, Requirement.NONE).ranking().best().isEmpty());
  }
}
