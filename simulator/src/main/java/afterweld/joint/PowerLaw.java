package afterweld.joint;

import java.util.Locale;

/**
 * How a metal answers a slow pull at room temperature, up to the strain where a bar of it would
 * start to neck: the stress-strain law through the two numbers a tensile test always reports.
 * Strain is true, nominal stress is force over the section before the pull.
 *
 * <p>Elastic, {@code s = E e}, up to {@code e* = (K/E)^(1/(1-n))}; above it the true stress is
 * {@code K e^n} in the total true strain e, and the nominal stress {@code K e^n exp(-e)}. With
 * {@code ep = ln(1 + 0.002 + proof/E)}, the true strain at proof, and {@code s = proof (1 + 0.002 +
 * proof/E)}, the true stress there, n is the root at or above ep of
 *
 * <pre>n ln( n / (e ep) ) = ln( tensile / s ),   so   n = e ep exp( W( ln(tensile/s) / (e ep) ) )
 * </pre>
 *
 * with e Euler's number and W the Lambert function, and {@code K = s / ep^n}. The curve passes the
 * 0.2 % offset at the proof stress and has its maximum, exactly the tensile strength, at e = n
 * (Considère). One root exists for every tensile strength at or above the proof stress.
 *
 * <p>Validity: sound metal, static pull at room temperature; nothing is fitted but the two
 * strengths, so the uniform strain is a consequence, not a measurement. Above n = 0.35, or with a
 * tensile strength over four times the proof stress, the pair isn't credible together. Source:
 * model definition; power law after Hollomon (1945), maximum after Considère (1885).
 */
public final class PowerLaw {
  /** Young's modulus used unless another is given, Pa (common practice for aluminium). */
  public static final double DEFAULT_MODULUS = 69e9;

  /** Plastic strain that defines the proof stress. */
  static final double OFFSET = 0.002;

  private final double modulus;
  private final double coefficient;
  private final double exponent;
  private final double tensile;
  private final double elasticLimit;
  private final double elasticLimitStress;

  private PowerLaw(double modulus, double coefficient, double exponent) {
    this.modulus = modulus;
    this.coefficient = coefficient;
    this.exponent = exponent;
    this.tensile = coefficient * Math.pow(exponent, exponent) * Math.exp(-exponent);
    this.elasticLimit = Math.pow(coefficient / modulus, 1 / (1 - exponent));
    this.elasticLimitStress = modulus * elasticLimit * Math.exp(-elasticLimit);
  }

  /**
   * The law through a proof stress and a tensile strength.
   *
   * @param proof 0.2 % proof stress, Pa
   * @param tensile tensile strength, Pa, at least the proof stress
   * @param modulus Young's modulus, 60 to 80 GPa, in Pa
   * @throws IllegalArgumentException if no such law exists
   */
  public static PowerLaw through(double proof, double tensile, double modulus) {
    SliceMetal.checkStrengths(proof, tensile);
    double nominalStrain = OFFSET + proof / YoungsModulus.checked(modulus);
    double strain = Math.log1p(nominalStrain);
    double trueStress = proof * (1 + nominalStrain);
    double scale = Math.E * strain;
    double exponent = scale * Math.exp(LambertW.of(Math.log(tensile / trueStress) / scale));
    if (exponent >= 1) {
      throw new IllegalArgumentException(
          String.format(
              Locale.ROOT,
              "tensile strength %.1f MPa is too far above the proof stress %.1f MPa for one metal",
              tensile * 1e-6,
              proof * 1e-6));
    }
    return new PowerLaw(modulus, trueStress / Math.pow(strain, exponent), exponent);
  }

  /** Young's modulus, Pa. */
  public double modulus() {
    return modulus;
  }

  /** K, the true stress that the curve would have at a true strain of 1, Pa. */
  public double coefficient() {
    return coefficient;
  }

  /** n, also the true strain at the largest force. */
  public double exponent() {
    return exponent;
  }

  /** e*, true strain where the straight line ends. */
  public double elasticLimit() {
    return elasticLimit;
  }

  /** Largest nominal stress: the tensile strength, Pa. */
  public double tensile() {
    return tensile;
  }

  /** True strain at the largest nominal stress, where a neck starts. */
  public double uniformStrain() {
    return exponent;
  }

  /** Nominal stress at a total true strain of at least 0, Pa. */
  public double nominalStress(double strain) {
    double trueStress =
        strain <= elasticLimit ? modulus * strain : coefficient * Math.pow(strain, exponent);
    return trueStress * Math.exp(-strain);
  }

  /**
   * Total true strain at a nominal stress (Pa) while it still rises; {@link #uniformStrain()} for
   * stresses at or above the tensile strength.
   */
  public double strainAt(double nominalStress) {
    if (nominalStress <= elasticLimitStress) {
      return -LambertW.of(-nominalStress / modulus);
    }
    if (nominalStress >= tensile) {
      return exponent;
    }
    double reach = Math.pow(nominalStress / tensile, 1 / exponent);
    return -exponent * LambertW.of(-reach / Math.E);
  }
}
