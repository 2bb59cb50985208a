package afterweld.thermal;

import static org.junit.jupiter.api.Assertions.assertEquals;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ScaledBesselTest {

  /** Values of scipy.special.k0e and k1e, rounded to nine decimals. */
  @ParameterizedTest
  @CsvSource({
    "0.01, 4.768694029, 100.978648458",
    "0.1, 2.682326102, 10.890182683",
    "1, 1.144463080, 1.636153486",
    "5, 0.547807564, 0.600273859",
    "20, 0.278544877, 0.285425497",
    "100, 0.125175622, 0.125799950",
    "600, 0.051155686, 0.051198298"
  })
  void agreesWithTheTable(double x, double k0, double k1) {
    assertEquals(k0, ScaledBessel.k0(x), 5.1e-10);
    assertEquals(k1, ScaledBessel.k1(x), 5.1e-10);
  }

  /** K(x) eˣ = ∫ exp(−x (cosh t − 1)) cosh(νt) dt, a form the class itself does not use. */
  @Property(tries = 400)
  void agreesWithTheIntegral(@ForAll @DoubleRange(min = -4, max = 4) double decade) {
    double x = Math.pow(10, decade);
    double k0 = integral(x, 0);
    double k1 = integral(x, 1);
    assertEquals(k0, ScaledBessel.k0(x), 1e-12 * k0);
    assertEquals(k1, ScaledBessel.k1(x), 1e-12 * k1);
  }

  @ParameterizedTest
  @CsvSource({"2", "8"})
  void joinsItsPieces(double x) {
    double below = Math.nextDown(x);
    double above = Math.nextUp(x);
    assertEquals(ScaledBessel.k0(below), ScaledBessel.k0(above), 1e-13);
    assertEquals(ScaledBessel.k1(below), ScaledBessel.k1(above), 1e-13);
  }

  private static double integral(double x, int order) {
    double end = Math.log(2 * (1 + 42 / x));
    int steps = 600;
    double sum = 0.5;
    for (int i = 1; i <= steps; i++) {
      double t = end * i / steps;
      double half = Math.sinh(t / 2);
      sum += Math.exp(-2 * x * half * half) * Math.cosh(order * t);
    }
    return sum * end / steps;
  }
}
