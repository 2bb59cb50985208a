package afterweld.thermal;

import java.util.function.DoubleBinaryOperator;

/**
 * Modified Bessel functions of the second kind of order 0 and 1, multiplied by e^x so that they
 * never underflow: the shape of the temperature around a heat source that moves through a plate.
 *
 * <p>Up to x = 2 the ascending series (Abramowitz and Stegun, Handbook of Mathematical Functions,
 * 9.6.13 and 9.6.11). Above, Chebyshev polynomials in 1/x through √x K(x) e^x, which is the
 * integral
 *
 * <pre>√x K0(x) eˣ = √2 ∫ exp(−w²) / √(1 + w²/2x) dw,   w from 0 to ∞</pre>
 *
 * (for K1 with the factor 1 + w²/x), taken once by the trapezoid rule, which converges
 * exponentially here. Relative error below 1e-13 for every x above 0.
 */
final class ScaledBessel {
  private static final double EULER = 0.5772156649015329;
  private static final double SERIES_END = 2;
  private static final double MIDDLE_END = 8;
  private static final int SERIES_TERMS = 13;
  private static final int MIDDLE_TERMS = 20;
  private static final int FAR_TERMS = 18;

  private static final double[] I0 = new double[SERIES_TERMS];
  private static final double[] REST0 = new double[SERIES_TERMS];
  private static final double[] I1 = new double[SERIES_TERMS];
  private static final double[] REST1 = new double[SERIES_TERMS];

  static {
    double factorial = 1;
    double harmonic = 0;
    for (int n = 0; n < SERIES_TERMS; n++) {
      double nextHarmonic = harmonic + 1.0 / (n + 1);
      I0[n] = 1 / (factorial * factorial);
      REST0[n] = harmonic * I0[n];
      I1[n] = I0[n] / (n + 1);
      REST1[n] = (harmonic + nextHarmonic) / 2 * I1[n];
      harmonic = nextHarmonic;
      factorial *= n + 1;
    }
  }

  private static final double[] MIDDLE0 =
      chebyshev(ScaledBessel::integral0, 1 / MIDDLE_END, 1 / SERIES_END, MIDDLE_TERMS);
  private static final double[] MIDDLE1 =
      chebyshev(ScaledBessel::integral1, 1 / MIDDLE_END, 1 / SERIES_END, MIDDLE_TERMS);
  private static final double[] FAR0 =
      chebyshev(ScaledBessel::integral0, 0, 1 / MIDDLE_END, FAR_TERMS);
  private static final double[] FAR1 =
      chebyshev(ScaledBessel::integral1, 0, 1 / MIDDLE_END, FAR_TERMS);

  private ScaledBessel() {}

  /** K0(x) eˣ for x above 0. */
  static double k0(double x) {
    if (x <= SERIES_END) {
      double z = x * x / 4;
      return Math.exp(x) * (horner(REST0, z) - (Math.log(x / 2) + EULER) * horner(I0, z));
    }
    return tail(x, MIDDLE0, FAR0);
  }

  /** K1(x) eˣ for x above 0. */
  static double k1(double x) {
    if (x <= SERIES_END) {
      double z = x * x / 4;
      double inner = (Math.log(x / 2) + EULER) * horner(I1, z) - horner(REST1, z);
      return Math.exp(x) * (1 / x + x / 2 * inner);
    }
    return tail(x, MIDDLE1, FAR1);
  }

  private static double tail(double x, double[] middle, double[] far) {
    double inverse = 1 / x;
    double sum =
        x <= MIDDLE_END
            ? clenshaw(middle, inverse, 1 / MIDDLE_END, 1 / SERIES_END)
            : clenshaw(far, inverse, 0, 1 / MIDDLE_END);
    return sum / Math.sqrt(x);
  }

  private static double horner(double[] coefficients, double z) {
    double sum = 0;
    for (int n = coefficients.length - 1; n >= 0; n--) {
      sum = sum * z + coefficients[n];
    }
    return sum;
  }

  private static double clenshaw(double[] coefficients, double at, double from, double to) {
    double t = (2 * at - from - to) / (to - from);
    double last = 0;
    double beforeLast = 0;
    for (int n = coefficients.length - 1; n > 0; n--) {
      double sum = 2 * t * last - beforeLast + coefficients[n];
      beforeLast = last;
      last = sum;
    }
    return t * last - beforeLast + coefficients[0];
  }

  private static double[] chebyshev(
      DoubleBinaryOperator integrand, double from, double to, int terms) {
    double[] coefficients = new double[terms];
    for (int node = 0; node < terms; node++) {
      double angle = Math.PI * (node + 0.5) / terms;
      double value = integrate(integrand, (from + to) / 2 + (to - from) / 2 * Math.cos(angle));
      for (int n = 0; n < terms; n++) {
        coefficients[n] += (n == 0 ? 1 : 2) * value * Math.cos(n * angle) / terms;
      }
    }
    return coefficients;
  }

  /** Trapezoid rule over w; the integrand takes w² and 1/x. */
  private static double integrate(DoubleBinaryOperator integrand, double inverse) {
    double step = 0.2;
    double sum = 0.5 * integrand.applyAsDouble(0, inverse);
    for (double w = step; w < 6.4; w += step) {
      sum += integrand.applyAsDouble(w * w, inverse);
    }
    return Math.sqrt(2) * step * sum;
  }

  private static double integral0(double square, double inverse) {
    return Math.exp(-square) / Math.sqrt(1 + square * inverse / 2);
  }

  private static double integral1(double square, double inverse) {
    return (1 + square * inverse) * integral0(square, inverse);
  }
}
