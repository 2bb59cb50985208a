package afterweld.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import afterweld.joint.ReferenceRow;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import org.apache.commons.math3.stat.descriptive.SummaryStatistics;
import org.apache.commons.math3.stat.regression.SimpleRegression;
import org.junit.jupiter.api.Test;

class RobustFitTest {
  private static final double[] LINE = {
    1.02, 2.95, 5.08, 6.97, 9.01, 11.04, 12.96, 15.03, 17.0, 19.0
  };
  private static final double[] ONE_OFF = {1.02, 2.95, 5.08, 6.97, 40, 11.04, 12.96, 15.03, 17, 19};
  private static final List<FitParameter> STRAIGHT =
      List.of(
          new FitParameter("start", "", 0, -50, 50, 1),
          new FitParameter("slope", "", 1, -20, 20, 1));

  private static final List<RobustFit> FITS =
      IntStream.range(0, 300).mapToObj(SyntheticTraverse::fit).toList();

  private static ReferenceRow row(String id) {
    return ReferenceRow.all().stream().filter(r -> r.id().equals(id)).findFirst().orElseThrow();
  }

  private static RobustFit line(double[] measured, double scatter) {
    return RobustFit.of(
        STRAIGHT,
        v ->
            IntStream.range(0, measured.length)
                .mapToDouble(i -> (v[0] + v[1] * i - measured[i]) / scatter)
                .toArray(),
        1);
  }

  /** Row P3-64 compares two formulae on ten points it does not list: here on ten of our own. */
  @Test
  void theErrorOfASlopeIsThatOfTheTextbook() {
    double[] uneven = {1.04, 2.96, 5.04, 6.96, 9.04, 10.96, 13.04, 14.96, 17.04, 18.96};
    SimpleRegression textbook = new SimpleRegression();
    for (int i = 0; i < uneven.length; i++) {
      textbook.addData(i, uneven[i]);
    }
    RobustFit.Estimate slope = line(uneven, 0.035).estimates().get(1);
    assertEquals(textbook.getSlope(), slope.value(), 1e-9);
    double allowed = row("P3-64").tolerance();
    assertEquals(textbook.getSlopeStdErr(), slope.deviation(), allowed * slope.deviation());
  }

  /** Known scatter: the error of a slope is sigma over the root of the sum of (x - mean)², 82.5. */
  @Test
  void pointsThatLieCloserThanTheyScatterTellNoMore() {
    double stated = line(LINE, 0.5).estimates().get(1).deviation();
    assertEquals(0.5 / Math.sqrt(82.5), stated, 1e-4);
  }

  @Test
  void oneOutlierDoesNotPullTheLine() {
    assertEquals(2, line(ONE_OFF, 0.05).estimates().get(1).value(), 0.03);
  }

  /** 300 traverses; three standard errors of a count of 285. */
  @Test
  void ninetyFivePercentOfTheIntervalsHoldTheTruth() {
    for (int covered : SyntheticTraverse.covered(FITS)) {
      assertTrue(covered >= 274 && covered <= 296, covered + " of 300");
    }
  }

  /**
   * Rows P3-65 and P3-66: the deviation a fit states and the scatter of 300 fits agree within the
   * rows' tolerance. The rows do not list their hardness curve, so their absolute values belong to
   * another one.
   */
  @Test
  void theStatedDeviationIsTheScatterOfManyFits() {
    for (int p = 0; p < SyntheticTraverse.TRUTH.length; p++) {
      SummaryStatistics values = new SummaryStatistics();
      SummaryStatistics stated = new SummaryStatistics();
      for (RobustFit fit : FITS) {
        values.addValue(fit.estimates().get(p).value());
        stated.addValue(fit.estimates().get(p).deviation());
      }
      double allowed = row(p == 2 ? "P3-66" : "P3-65").tolerance();
      assertEquals(1, values.getStandardDeviation() / stated.getMean(), allowed);
    }
    assertTrue(FITS.get(0).condition() < 30 && FITS.get(0).strongestCorrelation() < 0.95);
  }

  @Test
  void aParameterWithoutEffectIsSeen() {
    RobustFit fit =
        RobustFit.of(
            STRAIGHT, v -> IntStream.range(0, 9).mapToDouble(i -> v[0] - 0.1 * i).toArray(), 1e-3);
    assertTrue(Double.isInfinite(fit.condition()));
    assertTrue(Double.isInfinite(fit.estimates().get(1).deviation()));
  }

  /** Where the model gives nothing on the way down, the search stays where it began. */
  @Test
  void aSearchThatComesToNoRestSaysSo() {
    RobustFit restless =
        RobustFit.of(
            STRAIGHT,
            v ->
                IntStream.range(0, LINE.length)
                    .mapToDouble(i -> v[0] > 0.05 ? Double.NaN : v[0] + v[1] * i - 2 * i - 9)
                    .toArray(),
            1e-3);
    assertFalse(restless.settled());
    assertTrue(line(ONE_OFF, 0.05).settled() && FITS.stream().allMatch(RobustFit::settled));
  }

  @Test
  void theWeakestDirectionNamesWhatMovesTogether() {
    RobustFit sum =
        RobustFit.of(
            STRAIGHT,
            v -> IntStream.range(0, 9).mapToDouble(i -> v[0] + v[1] - 0.1 * i).toArray(),
            1e-3);
    assertEquals(-1, sum.weakest().get(0) / sum.weakest().get(1), 1e-6);
    assertTrue(Double.isInfinite(sum.condition()));
  }

  @Test
  void anIntervalEndsAtTheLimitAndAValueThereSaysSo() {
    List<FitParameter> narrow =
        List.of(STRAIGHT.get(0), new FitParameter("slope", "", 1, -20, 1.9, 1));
    RobustFit.Estimate slope =
        RobustFit.of(
                narrow,
                v ->
                    IntStream.range(0, LINE.length)
                        .mapToDouble(i -> v[0] + v[1] * i - LINE[i])
                        .toArray(),
                1)
            .estimates()
            .get(1);
    assertTrue(slope.atLimit() && slope.high() <= 1.9, slope.toString());
    assertFalse(line(LINE, 0.05).estimates().get(1).atLimit());
  }

  /** From 0.3 to 0.9 the transform rounds to a last digit over 0.9. */
  @Test
  void aValueFarBeyondItsLimitEndsOnIt() {
    FitParameter share = new FitParameter("arc efficiency", "", 0.8, 0.3, 0.9, 0.1);
    UnaryOperator<double[]> far =
        v -> IntStream.range(0, 9).mapToDouble(i -> 1e4 * (v[0] - 5) + 0.01 * i).toArray();
    RobustFit.Estimate one = RobustFit.of(List.of(share), far, 1e-4).estimates().get(0);
    assertEquals(0.9, one.value(), 1e-9);
    assertTrue(one.atLimit() && one.high() <= 0.9, one.toString());
  }

  @Test
  void runsOfOneSignAreCounted() {
    RunsTest waves = RunsTest.of(new double[] {1, 1, 1, 1, 1, 1, -1, -1, -1, -1, -1, -1});
    assertEquals(2, waves.runs());
    assertEquals(7, waves.expected(), 1e-12);
    assertTrue(waves.chance() < 0.01);
    assertTrue(waves.clustered());
    RunsTest alternating = RunsTest.of(new double[] {1, -1, 1, -1, 1, -1, 1, -1, 1, -1, 1, -1});
    assertTrue(alternating.chance() < 0.05 && !alternating.clustered(), alternating.toString());
    assertEquals(1, RunsTest.of(new double[] {1, 2, 3}).chance());
  }

  /** Parameters that move the line by next to nothing have an error, however large. */
  @Test
  void aLineThatHardlyAnswersHasAnErrorAndNoFailure() {
    RobustFit fit = line(LINE, 1e7);
    assertTrue(fit.estimates().stream().allMatch(one -> one.deviation() > 0), fit.toString());
  }
}
