package afterweld.weld;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import afterweld.section.Cases;
import afterweld.thermal.WeldCourse.Place;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class WeldCaseDraftTest {
  private static final Side PLATE = Cases.side("6061", "T6", 5e-3);
  private static final Side SHEET = Cases.side("6082", "T6", 3e-3);

  private static WeldCaseDraft draft() {
    return WeldCase.of(PLATE, SHEET)
        .filler(Cases.filler("4043", 0.4))
        .passes(List.of(Cases.pass(140, 3e-3, 293.15)));
  }

  @Test
  void whatIsNotNamedIsUsual() {
    WeldCase weld = draft().done();
    assertEquals(Joint.BUTT, weld.joint());
    assertEquals(1.5e-3, weld.depth());
    assertEquals(30 * Cases.DAY, weld.naturalAge());
    assertEquals(OptionalDouble.empty(), weld.reinforcement());
    assertEquals(List.of(), weld.afterWeld());
  }

  @Test
  void whatIsNotChangedStays() {
    WeldCase weld =
        draft().title("one").joint(Joint.LAP, Preparation.FILLET).reinforcement(1e-3).done();
    assertEquals(weld, weld.change().done());
    assertEquals(weld, weld.change().naturalAge(0).naturalAge(weld.naturalAge()).done());
  }

  /** Whoever builds a case is told at once what is wrong with each part of it. */
  @Test
  void theFaultsOfItsPartsAreToldTogether() {
    WeldCaseDraft wrong =
        WeldCase.of(PLATE, SHEET)
            .ring(new Ring(0.05, Place.END))
            .seam(new Seam(0.1, 0, Place.END, 1))
            .naturalAge(-1);
    String message = assertThrows(IllegalArgumentException.class, wrong::done).getMessage();
    List.of("a ring and a seam", "passes", "time at room temperature", "no filler")
        .forEach(part -> assertTrue(message.contains(part), message));
  }

  /** Whoever names no wait has that of a case file. */
  @Test
  void aHeatTreatmentIsWaitedForADay() {
    assertEquals(Cases.DAY, draft().afterWeld(Cases.fullTreatment("6061")).done().naturalAge());
  }

  @Test
  void aTraverseBelowTheThinnerPartIsRefused() {
    WeldCaseDraft deep = draft().depth(4e-3);
    assertTrue(
        assertThrows(IllegalArgumentException.class, deep::done).getMessage().contains("depth"));
  }
}
