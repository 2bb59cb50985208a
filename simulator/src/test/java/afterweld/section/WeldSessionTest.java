package afterweld.section;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;

import afterweld.thermal.HeatInputException;
import afterweld.thermal.PassHeat;
import afterweld.thermal.WeldCourse.Place;
import afterweld.weld.FillerChoice;
import afterweld.weld.Ring;
import afterweld.weld.WeldCase;
import java.util.List;
import java.util.OptionalDouble;
import java.util.concurrent.ForkJoinPool;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** What a session keeps changes nothing but the time: every answer is that of a new session. */
class WeldSessionTest {
  private static final FillerChoice BY_RULE =
      new FillerChoice(Cases.filler("4043", 0.4).alloy(), 0.5, 0.35, 0.65, false, 0.5);

  /**
   * Unlike sides, and heat and dilution left to defaults, so that the bands have their own runs.
   */
  private static final Cases OPEN =
      Cases.butt("6061", "T6")
          .withFiller(BY_RULE)
          .withRight(Cases.side("6063", "T6", 0.003))
          .withPasses(Cases.pass(110, 3e-3, 293.15, OptionalDouble.empty(), 0));

  private static final List<Function<WeldSession, Object>> QUESTIONS =
      List.of(
          session -> session.thinProfile(OPEN.weldCase()),
          session -> session.profile(OPEN.weldCase()),
          session -> session.soundness(OPEN.weldCase()),
          session -> session.profileOfEveryStage(treated(OPEN)),
          session -> session.heats(OPEN.weldCase()),
          session -> session.weldMetal(treated(OPEN)).base(OPEN.left()),
          session -> session.profile(treated(OPEN)),
          session -> session.profile(ring()),
          session -> session.along(ring()).orElseThrow().stated().passes(),
          session -> session.thinProfile(ring()),
          session -> session.peaks(ring()).orElseThrow().section());

  private static WeldCase treated(Cases cases) {
    return cases.then(Cases.fullTreatment("6061")).weldCase();
  }

  private static WeldCase ring() {
    return Cases.butt("6061", "T6").weldCase().change().ring(new Ring(0.04, Place.WORST)).done();
  }

  @Test
  void inWhateverOrderItIsAskedTheAnswersAreThoseOfANewSession() {
    List<Object> anew = QUESTIONS.stream().map(ask -> ask.apply(new WeldSession())).toList();
    WeldSession onwards = new WeldSession();
    WeldSession backwards = new WeldSession();
    for (int i = 0; i < QUESTIONS.size(); i++) {
      assertEquals(anew.get(i), QUESTIONS.get(i).apply(onwards), "question " + i);
    }
    for (int i = QUESTIONS.size() - 1; i >= 0; i--) {
      assertEquals(anew.get(i), QUESTIONS.get(i).apply(backwards), "backwards, question " + i);
    }
  }

  @Test
  void askedByManyThreadsAtOnceItAnswersAlike() {
    SectionProfile alone = new WeldSession().profile(ring());
    WeldSession session = new WeldSession();
    ForkJoinPool pool = new ForkJoinPool(4);
    List<SectionProfile> answers =
        pool.submit(
                () ->
                    IntStream.range(0, 8)
                        .parallel()
                        .mapToObj(i -> session.profile(ring()))
                        .toList())
            .join();
    pool.shutdown();
    answers.forEach(answer -> assertEquals(alone, answer));
  }

  @Test
  void whatIsAskedAgainIsNotComputedAgain() {
    WeldSession session = new WeldSession();
    assertSame(session.profile(OPEN.weldCase()), session.profile(OPEN.weldCase()));
    assertSame(session.weld(OPEN.weldCase()), session.weld(treated(OPEN)));
  }

  @Test
  void anotherWeldIsAnotherAnswer() {
    WeldSession session = new WeldSession();
    SectionProfile first = session.profile(OPEN.weldCase());
    Cases hotter = OPEN.withPasses(Cases.pass(120, 3e-3, 293.15, OptionalDouble.empty(), 0));
    assertNotEquals(first.stations(), session.profile(hotter.weldCase()).stations());
  }

  @Test
  void aWeldThatCannotBeIsRefusedEveryTime() {
    WeldCase cold = OPEN.withPasses(Cases.pass(5, 30e-3, 293.15)).weldCase();
    WeldSession session = new WeldSession();
    for (int i = 0; i < 2; i++) {
      assertThrows(HeatInputException.class, () -> session.profile(cold));
    }
    List<PassHeat> heats = session.heats(OPEN.weldCase());
    assertEquals(new WeldSession().heats(OPEN.weldCase()), heats);
  }

  @Test
  void onlyTheLastWeldsAreKept() {
    WeldSession session = new WeldSession();
    for (int current = 100; current < 120; current++) {
      session.heats(OPEN.withPasses(Cases.pass(current, 3e-3, 293.15)).weldCase());
    }
    assertEquals(12, session.welds().count());
  }
}
