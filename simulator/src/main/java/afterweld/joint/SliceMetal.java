package afterweld.joint;

import afterweld.quantity.BothUnits;
import afterweld.quantity.Check;
import afterweld.weld.Warning;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * The metal of one slice.
 *
 * @param proof 0.2 % proof stress, Pa
 * @param tensile tensile strength, Pa
 */
public record SliceMetal(double proof, double tensile) {
  /**
   * Tensile over proof beyond which no aluminium lies; O metal has up to 3.5 (handbook, from
   * memory).
   */
  private static final double CREDIBLE_RATIO = 4;

  /** Strain hardening beyond that of annealed aluminium (handbook, from memory). */
  private static final double CREDIBLE_EXPONENT = 0.35;

  /** Tensile over proof from which on a power law can be fitted (assumed). */
  private static final double HARDLY_HARDENS = 1.01;

  /** Refuses strengths that aren't positive, and a tensile strength below proof. */
  public SliceMetal {
    checkStrengths(proof, tensile);
  }

  /** Its stress-strain law with the given Young's modulus (Pa). */
  public PowerLaw law(double modulus) {
    return PowerLaw.through(proof, tensile, modulus);
  }

  /** A metal part of the way to another. */
  SliceMetal towards(SliceMetal other, double fraction) {
    return new SliceMetal(mix(proof, other.proof, fraction), mix(tensile, other.tensile, fraction));
  }

  /** What makes the two strengths doubtful as a pair, given the law through them. */
  List<Warning> warnings(PowerLaw law) {
    List<Warning> warnings = new ArrayList<>();
    if (tensile > CREDIBLE_RATIO * proof) {
      warnings.add(doubt("strength-ratio", "tensile strength over 4 times the proof stress"));
    }
    if (law.exponent() > CREDIBLE_EXPONENT) {
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
}
