package afterweld.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Which of three values is fixed, on lines and planes whose entanglement is known beforehand. */
class EntangledValuesTest {
  private static final List<FitParameter> THREE =
      List.of(
          new FitParameter("arc efficiency", "", 0.1, -50, 50, 1),
          new FitParameter("base hardness", "HV", 0.2, -50, 50, 1),
          new FitParameter("centre offset", "m", 0.1, -50, 50, 1));

  /** Residuals of 40 points, by a column of the Jacobian for each value; a little scatter. */
  private static RobustFit fit(
      UnaryOperator<Double> first, UnaryOperator<Double> second, UnaryOperator<Double> third) {
    return RobustFit.of(
        THREE,
        v ->
            IntStream.range(0, 40)
                .mapToDouble(
                    i -> {
                      double x = i / 39.0 - 0.5;
                      double told =
                          v[0] * first.apply(x) + v[1] * second.apply(x) + v[2] * third.apply(x);
                      return told - 1 + 0.01 * Math.sin(7 * i);
                    })
                .toArray(),
        1e-3);
  }

  @Test
  void theCorrelatedOfTwoIsFixedAndNotTheLast() {
    RobustFit fit = fit(x -> 1 + x, x -> 1 + 1.15 * x, x -> x * x * x);
    assertTrue(EntangledValues.in(fit));
    EntangledValues values = EntangledValues.of(fit);
    assertEquals(1, values.fixed());
    assertEquals(
        "Base hardness stays as it is: these points cannot tell it from the arc efficiency.",
        values.words());
  }

  @Test
  void twoThatAreTheSameAreBothNamed() {
    RobustFit fit = fit(x -> 1 + x, x -> x * x, x -> 3 + 3 * x);
    EntangledValues values = EntangledValues.of(fit);
    assertEquals(List.of(0, 2), List.of(values.kept(), values.fixed()));
    assertTrue(values.words().contains("from the arc efficiency."), values.words());
  }

  @Test
  void aValueWithoutEffectStandsAlone() {
    EntangledValues values = EntangledValues.of(fit(x -> 1 + x, x -> 0.0, x -> x * x));
    assertEquals(List.of(1, 1), List.of(values.kept(), values.fixed()));
    assertTrue(values.words().contains("changes hardly anything"), values.words());
  }

  @Test
  void whatIsToldApartIsNotEntangled() {
    assertFalse(EntangledValues.in(fit(x -> 1.0, x -> 2 * x, x -> 5 * x * x)));
  }

  /** As at the fusion line: the point is level up to a step right beside the best values. */
  @Test
  void onePointBesideAStepEntanglesNothing() {
    UnaryOperator<double[]> residuals =
        v ->
            IntStream.range(0, 41)
                .mapToDouble(
                    i -> {
                      double x = i / 39.0 - 0.5;
                      double step = v[0] + v[2] > 5e-4 ? 10 : 0;
                      return i == 40 ? step : v[0] + v[1] * 2 * x + v[2] * 5 * x * x;
                    })
                .toArray();
    RobustFit fit = RobustFit.of(THREE, residuals, 1e-3);
    assertEquals(0, fit.values()[2], 1e-3);
    assertFalse(EntangledValues.in(fit), fit.toString());
  }
}
