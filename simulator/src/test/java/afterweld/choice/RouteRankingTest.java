package afterweld.choice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import afterweld.choice.RouteConstraint.State;
import afterweld.choice.answer.Judgement;
import afterweld.joint.JointStrength;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** The ranking on routes made by hand, whose winner is known without computing. */
class RouteRankingTest {
  private static RouteRanking.Entry route(
      String name, double margin, double perDeviation, int steps, int questions) {
    List<RouteConstraint> constraints =
        IntStream.range(0, questions)
            .mapToObj(i -> new RouteConstraint("question " + i, State.NEEDS_ANSWER, "?"))
            .toList();
    JointStrength joint =
        new JointStrength(
            1,
            JointStrength.Bead.FLUSH,
            0.05,
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Double.NaN,
            Double.NaN,
            Double.NaN,
            true,
            "");
    RouteResult result =
        new RouteResult(
            name,
            List.of(),
            0,
            List.of(),
            joint,
            Double.NaN,
            Judgement.NOTHING_ASKED,
            List.of(),
            constraints,
            steps,
            0,
            1,
            List.of());
    return new RouteRanking.Entry(result, deviations -> margin + perDeviation * deviations);
  }

  private static RouteRanking.Entry route(String name, double margin, int steps, int questions) {
    return route(name, margin, 0, steps, questions);
  }

  private static String winner(RouteRanking ranking) {
    return ranking.winner().orElseThrow().route().name();
  }

  @Test
  void aRouteThatIsBetterInEverythingWinsClearly() {
    RouteRanking ranking =
        new RouteRanking(List.of(route("worse", 0.1, 4, 0), route("better", 0.2, 1, 0)), List.of());
    assertEquals("better", winner(ranking));
    assertEquals(1, ranking.share());
    assertTrue(ranking.clear() && ranking.flip().isEmpty());
    assertEquals("worse", ranking.runnerUp().orElseThrow().route().name());
  }

  @Test
  void twoThatAreAlikeAreNotClearAndTheOneWithFewerQuestionsIsTaken() {
    RouteRanking ranking =
        new RouteRanking(
            List.of(route("asks", 0.2, 3, 2), route("has", 0.201, 3, 1), route("weak", 0.05, 3, 0)),
            List.of());
    assertEquals("has", winner(ranking));
    assertFalse(ranking.clear());
    assertEquals(List.of("asks"), ranking.asGood().stream().map(e -> e.route().name()).toList());
    assertEquals("weak", ranking.runnerUp().orElseThrow().route().name());
    assertEquals(1, ranking.share(), "a tie does not split the share");
  }

  @Test
  void theOrderAskedForDecidesAndWeightsAreNotSpokenOf() {
    List<RouteRanking.Entry> entries =
        List.of(route("short", 0.02, 1, 0), route("strong", 0.28, 5, 0));
    assertEquals("short", winner(new RouteRanking(entries, List.of("steps"))));
    RouteRanking strength = new RouteRanking(entries, List.of("strength margin"));
    assertEquals("strong", winner(strength));
    assertTrue(strength.ordered() && strength.flip().isEmpty());
    assertEquals("short", strength.runnerUp().orElseThrow().route().name());
  }

  @Test
  void aChangeOfWeightThatTurnsTheChoiceIsFound() {
    // Margins 0.067 and 0.933, steps 1 and 0: the short one leads while w_steps > 0.867 w_margin.
    // With
    // steps at w and the others at (1 - w) / 3 that is w > 0.224.
    RouteRanking ranking =
        new RouteRanking(
            List.of(route("short", 0.02, 1, 0), route("strong", 0.28, 5, 0)), List.of());
    assertEquals("short", winner(ranking));
    assertEquals(Optional.of("steps at 22 % of the weight instead of 25 %"), ranking.flip());
  }

  /** A choice that is not clear says what stands against it. */
  @Test
  void aChoiceThatFallsShortAtItsWeakestNamesWhatWouldWinThere() {
    RouteRanking ranking =
        new RouteRanking(
            List.of(route("short", 0.1, 0.1, 1, 0), route("sure", 0.2, 0, 5, 0)), List.of());
    assertEquals("short", winner(ranking));
    assertFalse(ranking.clear());
    assertEquals(
        Optional.of("At the low end of the strengths sure would come first."),
        ranking.atOtherStrengths());
  }

  @Test
  void aRouteWithoutMarginNeverWins() {
    RouteRanking ranking = new RouteRanking(List.of(route("short of it", -0.01, 1, 0)), List.of());
    assertTrue(ranking.winner().isEmpty());
    assertTrue(ranking.runnerUp().isEmpty());
    assertFalse(ranking.clear());
  }
}
