package afterweld.joint;

/**
 * How one metal answers a slow pull at room temperature, up to the strain where a bar of it would
 * start to neck. True strain throughout; nominal stress is force over the section before the pull.
 */
public sealed interface StressStrainLaw permits PowerLaw, VoceLaw {
  /** Young's modulus used unless another is given, Pa (common practice for aluminium). */
  double DEFAULT_MODULUS = 69e9;

  /** Largest nominal stress: the tensile strength, Pa. */
  double tensile();

  /** True strain at the largest nominal stress, where a neck starts. */
  double uniformStrain();

  /** Nominal stress at a total true strain of at least 0, Pa. */
  double nominalStress(double strain);

  /**
   * Total true strain at a nominal stress (Pa) while it still rises; {@link #uniformStrain()} for
   * stresses at or above the tensile strength.
   */
  double strainAt(double nominalStress);
}
