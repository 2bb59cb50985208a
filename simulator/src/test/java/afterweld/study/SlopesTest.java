package afterweld.study;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/** What one point tells of one value, on lines whose slope is known beforehand. */
class SlopesTest {
  private static final FitParameter VALUE = new FitParameter("centre offset", "m", 0, -5, 5, 2);

  private static Slopes slopes(DoubleUnaryOperator line) {
    return new Slopes(List.of(VALUE), values -> new double[] {line.applyAsDouble(values[0])}, 0.05);
  }

  private static double told(DoubleUnaryOperator line, double at) {
    return slopes(line).told(new double[] {at})[0][0];
  }

  @Test
  void aStraightLineIsToldInFullPerStep() {
    assertEquals(6, told(x -> 3 * x, 1.2), 1e-9);
    assertEquals(-6, told(x -> -3 * x, 1.2), 1e-9);
  }

  /** The difference is 50 a unit; the line is level on either side. */
  @Test
  void aStepTellsNothing() {
    DoubleUnaryOperator step = x -> x < 0.02 ? 0 : 10;
    assertEquals(50, slopes(step).jacobian(new double[] {0})[0][0], 1e-9);
    assertEquals(0, told(step, 0), 1e-12);
  }

  /** Up to twice what the wider look finds: 5 across the step, the slope of 1 beside it. */
  @Test
  void aStepInASlopeTellsLittleMoreThanTheSlope() {
    double told = told(x -> x + (x < 0.02 ? 0 : 10), 0);
    assertTrue(told >= 2 && told <= 4 + 1e-9, "" + told);
  }

  @Test
  void aBendKeepsItsSlope() {
    assertEquals(2 * Math.exp(0.3), told(Math::exp, 0.3), 0.01);
  }

  /** Beyond a limit the model stands still, which is no step of the line. */
  @Test
  void atALimitTheWiderLookKeepsInside() {
    assertEquals(6, told(x -> 3 * Math.min(4.99, x), 4.9), 1.5);
  }

  @Test
  void aChangeCountsOnlyWhereItGoesOn() {
    double[] changes =
        Slopes.onBothSides(
            new double[] {0, 0, 2, 0}, new double[] {1, 1, 1, 0}, new double[] {3, 0, 0.5, 4});
    assertArrayEquals(new double[] {1, 0, -0.5, 0}, changes, 1e-12);
  }
}
