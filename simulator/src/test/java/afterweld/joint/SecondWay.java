package afterweld.joint;

import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.analysis.solvers.BrentSolver;

/** The same quantities by other means than the library's: bracketed roots, grids, sums by hand. */
final class SecondWay {
  static final double E = 69e9;

  private SecondWay() {}

  static double root(DoubleUnaryOperator f, double low, double high) {
    return new BrentSolver(1e-14, 1e-16).solve(1000, f::applyAsDouble, low, high);
  }

  /** Hardening exponent, strengths in MPa. */
  static double exponent(double proof, double tensile) {
    double nominal = 0.002 + proof * 1e6 / E;
    double strain = Math.log(1 + nominal);
    double stress = proof * (1 + nominal);
    return root(n -> n * Math.log(n / (Math.E * strain)) - Math.log(tensile / stress), strain, 1);
  }

  static double greatestOnGrid(DoubleUnaryOperator f, double low, double high, int points) {
    double greatest = Double.NEGATIVE_INFINITY;
    for (int i = 0; i <= points; i++) {
      greatest = Math.max(greatest, f.applyAsDouble(low + (high - low) * i / points));
    }
    return greatest;
  }

  /** Nominal stress where the curve meets the elastic line moved by 0.2 %, Pa. */
  static double offsetStress(PowerLaw law) {
    double strain =
        root(
            e -> law.nominalStress(e) - E * (Math.expm1(e) - 0.002),
            law.elasticLimit(),
            law.exponent());
    return law.nominalStress(strain);
  }

  /** Outer strain of half a turn round a former: outer arc over middle arc. */
  static double arcs(double thickness, double former) {
    double outer = Math.PI * (former / 2 + thickness);
    double middle = Math.PI * (former / 2 + thickness / 2);
    return outer / middle - 1;
  }

  /** Force at which the von Mises stress of a throat reaches fw: stresses per unit of force. */
  static double vonMisesForce(double weldMetal, double normal, double shear) {
    return root(f -> f * Math.sqrt(normal * normal + 3 * shear * shear) - weldMetal, 0, 10e6);
  }

  /** Shortest way from the root to the face of a fillet, over all directions. */
  static double shortestLigament(double leg, double secondLeg) {
    return -greatestOnGrid(
        angle -> -1 / (Math.cos(angle) / leg + Math.sin(angle) / secondLeg),
        0,
        Math.PI / 2,
        200_000);
  }
}
