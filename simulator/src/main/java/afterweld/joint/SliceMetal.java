package afterweld.joint;

import afterweld.quantity.BothUnits;
import afterweld.quantity.Check;
import afterweld.weld.Warning;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

/**
 * The metal of one slice.
 *
 * @param proof 0.2 % proof stress, Pa
 * @param tensile tensile strength, Pa
 * @param ductility true strain at which poor metal breaks, if it breaks before it necks
 * @param uniformStrain true plastic strain at the largest force, if measured; the slice then
 *     follows the {@link VoceLaw} in place of the {@link PowerLaw}
 */
public record SliceMetal(
    double proof, double tensile, OptionalDouble ductility, OptionalDouble uniformStrain) {
  private static final double CREDIBLE_RATIO = 4;
  private static final double CREDIBLE_EXPONENT = 0.35;
  private static final double HARDLY_HARDENS = 1.01;

  /** Refuses strengths that aren't positive, a tensile strength below proof, strains below 0. */
  public SliceMetal {
    checkStrengths(proof, tensile);
    ductility.ifPresent(strain -> Check.positive("ductility", strain, ""));
    uniformStrain.ifPresent(strain -> Check.positive("uniform strain", strain, ""));
  }

  /** Metal known by its two strengths (Pa) alone. */
  public static SliceMetal of(double proof, double tensile) {
    return new SliceMetal(proof, tensile, OptionalDouble.empty(), OptionalDouble.empty());
  }

  /** The same metal that breaks at a true strain, if it has not necked before. */
  public SliceMetal breakingAt(double strain) {
    return new SliceMetal(proof, tensile, OptionalDouble.of(strain), uniformStrain);
  }

  /** The same metal with a measured uniform strain (true, plastic). */
  public SliceMetal withUniformStrain(double strain) {
    return new SliceMetal(proof, tensile, ductility, OptionalDouble.of(strain));
  }

  /** Its stress-strain law with the given Young's modulus (Pa). */
  public StressStrainLaw law(double modulus) {
    return uniformStrain.isPresent()
        ? VoceLaw.through(proof, tensile, uniformStrain.getAsDouble(), modulus)
        : PowerLaw.through(proof, tensile, modulus);
  }

  /** A metal part of the way to another; what only one of the two knows is taken over. */
  SliceMetal towards(SliceMetal other, double fraction) {
    return new SliceMetal(
        mix(proof, other.proof, fraction),
        mix(tensile, other.tensile, fraction),
        mix(ductility, other.ductility, fraction),
        mix(uniformStrain, other.uniformStrain, fraction));
  }

  SliceMetal strengthened(double proofFactor, double tensileFactor) {
    return new SliceMetal(proof * proofFactor, tensile * tensileFactor, ductility, uniformStrain);
  }

  /** What makes the two strengths doubtful as a pair, given the law through them. */
  List<Warning> warnings(StressStrainLaw law) {
    List<Warning> warnings = new ArrayList<>();
    if (tensile > CREDIBLE_RATIO * proof) {
      warnings.add(doubt("strength-ratio", "tensile strength over 4 times the proof stress"));
    }
    if (law instanceof PowerLaw power && power.exponent() > CREDIBLE_EXPONENT) {
      warnings.add(doubt("hardening-exponent", "the two strengths are not credible together"));
    }
    if (tensile < HARDLY_HARDENS * proof) {
      warnings.add(doubt("no-hardening", "tensile strength hardly above the proof stress"));
    }
    return warnings;
  }

  private Warning doubt(String code, String text) {
    return new Warning(
        code,
        "proof "
            + BothUnits.stress(proof)
            + ", tensile "
            + BothUnits.stress(tensile)
            + ": "
            + text);
  }

  static void checkStrengths(double proof, double tensile) {
    Check.positive("proof stress", proof, "Pa");
    Check.positive("tensile strength", tensile, "Pa");
    if (tensile < proof) {
      throw new IllegalArgumentException(
          String.format(
              Locale.ROOT,
              "tensile strength %.1f MPa: must be at least the proof stress %.1f MPa",
              tensile * 1e-6,
              proof * 1e-6));
    }
  }

  private static double mix(double from, double to, double fraction) {
    return from + fraction * (to - from);
  }

  private static OptionalDouble mix(OptionalDouble from, OptionalDouble to, double fraction) {
    if (from.isEmpty() || to.isEmpty()) {
      return from.isPresent() ? from : to;
    }
    return OptionalDouble.of(mix(from.getAsDouble(), to.getAsDouble(), fraction));
  }
}
