package afterweld.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import afterweld.choice.answer.Judgement;
import afterweld.choice.answer.Requirement;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class RankingTest {
  private static JointPlace place(double value, String... objections) {
    return new JointPlace(
        value, 0.9 * value, JointFigures.NONE, Judgement.NOTHING_ASKED, "", List.of(objections));
  }

  @Test
  void theHighestIsBestAndOnePercentIsTheSame() {
    Ranking ranking =
        new Ranking(List.of(place(200), place(220), place(218), place(217), place(190)));
    assertEquals(1, ranking.best().orElseThrow());
    assertEquals(List.of(1, 2), ranking.asGood());
    assertEquals(List.of(0, 1, 2, 3), ranking.withinError());
    assertFalse(ranking.insideError());
    assertEquals(4, ranking.worst().orElseThrow());
    assertFalse(ranking.even());
    assertTrue(new Ranking(List.of(place(220), place(219))).even());
    assertFalse(new Ranking(List.of(place(220), JointPlace.none("cold"))).even());
  }

  @Test
  void neitherABlankPlaceNorOneObjectedToIsRanked() {
    Ranking ranking =
        new Ranking(
            List.of(
                JointPlace.none("not fused through"), place(300, "prone to cracking"), place(200)));
    assertEquals(2, ranking.best().orElseThrow());
    assertEquals(List.of(2), ranking.withinError());
    assertTrue(new Ranking(List.of(JointPlace.none("cold"))).best().isEmpty());
    assertEquals(List.of(), new Ranking(List.of()).asGood());
  }

  @Test
  void aJointRanksByTheLeastShareOfAllThatIsAsked() {
    Requirement both =
        new Requirement(
            OptionalDouble.of(100e6),
            OptionalDouble.of(200e6),
            OptionalDouble.empty(),
            Optional.empty(),
            OptionalDouble.empty());
    JointFigures figures = new JointFigures(120e6, 210e6, 70);
    assertEquals(1.05, Aim.of(both).of(figures), 1e-12);
    assertEquals(210e6, Aim.of(Requirement.NONE).of(figures));
    assertFalse(Aim.of(Requirement.NONE).required());
  }

  @Test
  void aValueAndAReasonForNoneExcludeEachOther() {
    assertThrows(
        IllegalArgumentException.class,
        () ->
            new JointPlace(
                200,
                180,
                JointFigures.NONE,
                Judgement.NOTHING_ASKED,
                "not fused through",
                List.of()));
  }
}
