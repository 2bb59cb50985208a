package afterweld.joint;

import afterweld.quantity.Check;
import afterweld.weld.Warning;
import java.util.List;
import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.univariate.BrentOptimizer;
import org.apache.commons.math3.optim.univariate.SearchInterval;
import org.apache.commons.math3.optim.univariate.UnivariateObjectiveFunction;

/**
 * A flat member with a weld along it (or across it): the code's characteristic values beside what
 * the predicted profile sums up to. The two columns must not be mixed.
 *
 * <p>Along the weld all fibres share one strain e:
 *
 * <pre>
 * proof force    integral of proof x t dy              (within 0.3 % of the parallel pull)
 * greatest force max over e of integral of s(e, y) t dy (less than the sum of tensile strengths)
 * equivalent code width, each side:  integral of (base - proof) dy / (2 (base - lowest proof))
 * </pre>
 *
 * Validity: tension, no buckling. Source: model definition; codes see {@link MemberCode}.
 *
 * @param codeAlong force along the weld, EN, characteristic, N
 * @param codeAcross force across the weld, EN, characteristic, N
 * @param codeWeightedProof weighted proof stress along the weld, US form with the same strengths,
 *     Pa
 * @param predictedProofForce along the weld, N
 * @param predictedGreatestForce along the weld, N
 * @param equivalentReach width each side over which the lowest proof would do the same harm, m
 * @param warnings what sets the columns apart
 */
public record WeldedMember(
    double codeAlong,
    double codeAcross,
    double codeWeightedProof,
    double predictedProofForce,
    double predictedGreatestForce,
    double equivalentReach,
    List<Warning> warnings) {
  private static final double PRECISION = 1e-9;
  private static final Warning TWO_COLUMNS =
      new Warning(
          "code-and-model",
          "code values are characteristic minima, predicted values are means: never put a predicted"
              + " strength into a code formula; the code's value governs");

  /** Copies the list. */
  public WeldedMember {
    Check.positive("force", codeAlong, "N");
    Check.positive("force", codeAcross, "N");
    Check.positive("stress", codeWeightedProof, "Pa");
    Check.positive("force", predictedProofForce, "N");
    Check.positive("force", predictedGreatestForce, "N");
    Check.notNegative("reach", equivalentReach, "m");
    warnings = List.copyOf(warnings);
  }

  /**
   * Both columns for a plate.
   *
   * @param line predicted profile, cut or continued to the plate's width
   * @param width of the plate, m
   * @param code characteristic strengths
   * @param reach the code's heat-affected zone each side of the weld, m
   * @param modulus Young's modulus, Pa
   */
  public static WeldedMember of(
      SliceLine line, double width, CodeStrength code, double reach, double modulus) {
    double thickness = line.referenceSection();
    SliceLine plate = line.over(width);
    return new WeldedMember(
        MemberCode.alongWeld(width, thickness, code, reach),
        MemberCode.acrossWeld(width, thickness, code),
        MemberCode.weighted(width, code.proof(), code.hazProof()),
        proofForce(plate),
        greatestForce(plate, modulus),
        equivalentReach(plate),
        List.of(TWO_COLUMNS));
  }

  /** Sum of proof stress over the section of a line, N. */
  static double proofForce(SliceLine plate) {
    return plate.slices().stream()
        .mapToDouble(s -> s.metal().proof() * s.section() * s.length())
        .sum();
  }

  /** Greatest force along the weld with one strain for all, N. */
  static double greatestForce(SliceLine plate, double modulus) {
    List<PowerLaw> laws = plate.slices().stream().map(slice -> slice.metal().law(modulus)).toList();
    double low = laws.stream().mapToDouble(PowerLaw::uniformStrain).min().orElseThrow();
    double high = laws.stream().mapToDouble(PowerLaw::uniformStrain).max().orElseThrow();
    if (high - low < PRECISION) {
      return parallelForce(plate, laws, low);
    }
    return new BrentOptimizer(PRECISION, PRECISION)
        .optimize(
            new UnivariateObjectiveFunction(strain -> parallelForce(plate, laws, strain)),
            GoalType.MAXIMIZE,
            new SearchInterval(low, high),
            new MaxEval(500))
        .getValue();
  }

  private static double parallelForce(SliceLine plate, List<PowerLaw> laws, double strain) {
    double force = 0;
    for (int i = 0; i < laws.size(); i++) {
      Slice slice = plate.slices().get(i);
      force += laws.get(i).nominalStress(strain) * slice.section() * slice.length();
    }
    return force;
  }

  /** Width each side, m: mean of the sides, each against its own base. */
  static double equivalentReach(SliceLine plate) {
    double lowest = plate.slices().stream().mapToDouble(s -> s.metal().proof()).min().orElseThrow();
    return 0.5
        * (oneSide(plate, plate.left(), lowest, plate.from(), 0)
            + oneSide(plate, plate.right(), lowest, 0, plate.to()));
  }

  private static double oneSide(
      SliceLine plate, Slice base, double lowest, double from, double to) {
    double depth = base.metal().proof() - lowest;
    if (depth <= 0) {
      return 0;
    }
    double missing =
        plate.slices().stream()
            .mapToDouble(s -> (base.metal().proof() - s.metal().proof()) * s.overlap(from, to))
            .sum();
    return missing / depth;
  }
}
