package afterweld.study;

import static org.junit.jupiter.api.Assertions.assertEquals;

import afterweld.joint.ReferenceRow;
import java.util.Arrays;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Reference values of uncertainty, each found in two ways when the model was defined. */
class StudyReferenceTest {
  private static ReferenceRow row(String id) {
    return ReferenceRow.all().stream().filter(one -> one.id().equals(id)).findFirst().orElseThrow();
  }

  private static void holds(String id, double ours) {
    ReferenceRow row = row(id);
    assertEquals(row.first(), ours, row.allowance(row.first()), id + ", first way");
    assertEquals(row.second(), ours, row.allowance(row.second()), id + ", second way");
  }

  @Test
  void ishigamiByBins() {
    holds("P3-58", FirstOrderTest.meanIndex(0, 1000, 20));
    holds("P3-59", FirstOrderTest.meanIndex(1, 1000, 20));
  }

  @Test
  void runsForAGuarantee() {
    holds("P3-60", OrderRanks.runsFor(0.95, 0.95));
    assertEquals(299, OrderRanks.runsFor(0.99, 0.95), "closed form, 1 - 0.99^n >= 0.95");
  }

  @Test
  void intervalsOfAShare() {
    Share share = new Share(858, 1000);
    holds("P3-61", share.clopperPearsonLow());
    holds("P3-62", share.low());
    assertEquals(0.878, share.high(), 5e-4);
    assertEquals(share.runs() - share.count(), 142);
  }

  /** The tail of the exact interval and the score equation, each solved another way. */
  @Test
  void theIntervalsSolveTheirEquations() {
    Share share = new Share(858, 1000);
    double low = share.clopperPearsonLow();
    double tail =
        1
            - new org.apache.commons.math3.distribution.BinomialDistribution(null, 1000, low)
                .cumulativeProbability(857);
    assertEquals(0.025, tail, 1e-9);
    double p = share.low();
    double score = (0.858 - p) / Math.sqrt(p * (1 - p) / 1000);
    assertEquals(1.959963984540054, score, 1e-9);
  }

  @Test
  void allOrNoneTakesTheExactInterval() {
    assertEquals(Math.pow(0.025, 1.0 / 200), new Share(200, 200).low(), 1e-9);
    assertEquals(1 - Math.pow(0.025, 1.0 / 200), new Share(0, 200).high(), 1e-9);
    assertEquals(0.015, new Share(0, 200).ruleOfThree(), 1e-12);
  }

  @Test
  void aNormalOutputMeetsItsRequirement() {
    double[] shares = LatinHypercube.shares(100_000, 1, 2)[0];
    double met =
        Arrays.stream(shares)
            .map(share -> 105 + 9.39415 * Distribution.standardNormal().quantile().at(share))
            .filter(value -> value >= 95)
            .count();
    holds("P3-63", met / shares.length);
  }

  @Test
  void ranksRoundTheFivePercentValue() {
    OrderRanks thousand = OrderRanks.around(0.05, 1000);
    assertEquals(37, thousand.low());
    assertEquals(65, thousand.high());
    holds("P3-72", thousand.coverage());
    assertEquals(4, OrderRanks.around(0.05, 200).low());
    assertEquals(17, OrderRanks.around(0.05, 200).high());
  }

  /** The same coverage by plain simulation: how often the ranks hold the true quantile. */
  @Test
  void theRanksCoverAsOftenAsTheySay() {
    SplittableRandom random = new SplittableRandom(9);
    long covered =
        IntStream.range(0, 4000)
            .filter(
                repeat -> {
                  int below = 0;
                  for (int draw = 0; draw < 1000; draw++) {
                    below += random.nextDouble() < 0.05 ? 1 : 0;
                  }
                  return below >= 37 && below < 65;
                })
            .count();
    assertEquals(0.958095, covered / 4000.0, 0.0095, "three standard errors of 4000 repeats");
  }
}
