package afterweld.joint.bend;

import afterweld.joint.PowerLaw;

/**
 * Bending of a rectangular section b x t of power-law metal: moment against curvature and back.
 *
 * <p>With the strain {@code kappa z} at a depth z from mid-thickness, {@code x = kappa t / (2 e*)},
 * and {@code M* = E b t^2 e* / 6} the moment at which the surface leaves the elastic line:
 *
 * <pre>
 * M = M* x                                       up to x = 1
 * M = M* ( 3 x^n - (1 - n) / x^2 ) / (n + 2)     beyond
 * </pre>
 *
 * which is {@code 2b [ E kappa c^3/3 + K kappa^n ((t/2)^(n+2) - c^(n+2))/(n+2) ]} with the elastic
 * core's half height {@code c = t/(2x)}. The moment rises without limit, a bend doesn't neck, so
 * every moment has one curvature: Newton in logarithms from below, where the curve is hollow
 * downwards and no step overshoots. Validity: neutral axis at mid-thickness, radius over about 3
 * thicknesses. Source: model definition (integral of the law over the section).
 */
public final class BendSection {
  private static final int STEPS = 100;

  private final double exponent;
  private final double elasticMoment;
  private final double elasticCurvature;

  /**
   * The section.
   *
   * @param modulus E, Pa
   * @param coefficient K, Pa
   * @param exponent n; 0 for a metal that doesn't harden
   * @param width b, m
   * @param thickness t, m
   */
  public BendSection(
      double modulus, double coefficient, double exponent, double width, double thickness) {
    double limit = Math.pow(coefficient / modulus, 1 / (1 - exponent));
    this.exponent = exponent;
    this.elasticMoment = modulus * width * thickness * thickness * limit / 6;
    this.elasticCurvature = 2 * limit / thickness;
  }

  /** The section of a metal that follows the power law. */
  static BendSection of(PowerLaw law, double width, double thickness) {
    return new BendSection(law.modulus(), law.coefficient(), law.exponent(), width, thickness);
  }

  /** Moment at a curvature (1/m), N m. */
  public double moment(double curvature) {
    double x = curvature / elasticCurvature;
    return x <= 1
        ? elasticMoment * x
        : elasticMoment * (3 * Math.pow(x, exponent) - (1 - exponent) / (x * x)) / (exponent + 2);
  }

  /** Curvature under a moment (N m), 1/m; infinite if no double can hold it. */
  double curvature(double moment) {
    double ratio = moment / elasticMoment;
    return elasticCurvature * (ratio <= 1 ? ratio : Math.exp(logCurvature(ratio)));
  }

  /** Curvature that springs back when the moment (N m) is released, 1/m. */
  double elasticCurvature(double moment) {
    return elasticCurvature * moment / elasticMoment;
  }

  private double logCurvature(double ratio) {
    double target = Math.log(ratio * (exponent + 2));
    double v = Math.max(0, (target - Math.log(3)) / exponent);
    for (int step = 0; step < STEPS; step++) {
      double core = (1 - exponent) * Math.exp(-(2 + exponent) * v);
      double value = exponent * v + Math.log(3 - core);
      double slope = exponent + (2 + exponent) * core / (3 - core);
      double change = (target - value) / slope;
      v += change;
      if (Math.abs(change) <= 1e-13 * (1 + v)) {
        break;
      }
    }
    return v;
  }
}
