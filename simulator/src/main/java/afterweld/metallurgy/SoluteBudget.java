package afterweld.metallurgy;

import static afterweld.metallurgy.PrecipitationParameters.ALUMINIUM_MOLAR_VOLUME;
import static afterweld.metallurgy.PrecipitationParameters.MANGANESE_SITES;
import static afterweld.metallurgy.PrecipitationParameters.PLAIN_SITES;
import static afterweld.metallurgy.PrecipitationParameters.PRECIPITATE_MOLAR_VOLUME;
import static afterweld.metallurgy.PrecipitationParameters.SILICON_BOUND_BY_IRON;
import static afterweld.metallurgy.PrecipitationParameters.SITES_CHROMIUM;

import afterweld.material.Composition;
import afterweld.material.Element;

/**
 * What a composition has to give to its precipitates, and the sites it offers them.
 *
 * <p>Iron, manganese and chromium bind silicon during solidification: {@code Si_eff = Si - 0.25 (Fe
 * + Mn + Cr)} wt%. Precipitates are counted as Mg2Si, in formula units per atom of metal: with
 * {@code q} of them the matrix keeps {@code Mg = Mg0 - 2q} and {@code Si = Si0 - s - q} ({@code s}
 * silicon as silicon phase), and acts on every precipitate through one effective concentration
 * {@code C = (Mg² Si / 4)^(1/3)}, formula units per atom. Dispersoids of chromium and manganese are
 * the sites of the coarse phases: {@code z = 0.04 + (Cr + 0.4 Mn) / 0.2}.
 *
 * <p>Validity: stoichiometric Mg2Si only; iron and chromium content as in 6xxx. Atomic weights:
 * IUPAC.
 */
final class SoluteBudget {
  /** Formula units per atom of a metal that is all precipitate. */
  static final double PURE_PRECIPITATE =
      ALUMINIUM_MOLAR_VOLUME.value() / PRECIPITATE_MOLAR_VOLUME.value();

  /** Atoms of magnesium per wt%, as a share (standard atomic weights). */
  private static final double MAGNESIUM_PER_WT = 0.2698 / 24.305;

  /** Atoms of silicon per wt%, as a share (standard atomic weights). */
  private static final double SILICON_PER_WT = 0.2698 / 28.086;

  private static final double LEAST_MAGNESIUM = 1e-3;
  private static final double LEAST_SILICON = 1e-4;
  private static final double LEAST_HARDENING = 1e-6;
  private static final double LEAST_IN_MATRIX = 1e-9;
  private static final double OVERDRAFT = 1e-8;

  private final Composition composition;
  private final double effectiveSilicon;
  private final double magnesium;
  private final double silicon;
  private final double hardening;
  private final double siteFactor;

  SoluteBudget(Composition composition) {
    this.composition = composition;
    double manganese = composition.of(Element.MN);
    double chromium = composition.of(Element.CR);
    double binders = composition.of(Element.FE) + manganese + chromium;
    double free = composition.of(Element.SI) - SILICON_BOUND_BY_IRON.value() * binders;
    effectiveSilicon = Math.max(LEAST_SILICON, free);
    magnesium = Math.max(LEAST_MAGNESIUM, composition.of(Element.MG)) * MAGNESIUM_PER_WT;
    silicon = siliconAtoms(effectiveSilicon);
    hardening = Math.max(LEAST_HARDENING, Math.min(magnesium / 2, silicon));
    siteFactor =
        PLAIN_SITES.value()
            + (chromium + MANGANESE_SITES.value() * manganese) / SITES_CHROMIUM.value();
  }

  /** Silicon atoms per atom of metal in so many weight percent. */
  static double siliconAtoms(double weightPercent) {
    return weightPercent * SILICON_PER_WT;
  }

  Composition composition() {
    return composition;
  }

  /** Silicon that the iron phases leave, wt%. */
  double effectiveSilicon() {
    return effectiveSilicon;
  }

  /** Magnesium, atoms per atom. */
  double magnesium() {
    return magnesium;
  }

  /** Silicon that the iron phases leave, atoms per atom. */
  double silicon() {
    return silicon;
  }

  /** Most formula units that can form, per atom. */
  double hardening() {
    return hardening;
  }

  /** Sites of the coarse phases against those of 6061. */
  double siteFactor() {
    return siteFactor;
  }

  /** Effective concentration of the matrix, formula units per atom; falls with {@code q}. */
  double concentration(double q, double siliconPhase) {
    double mg = Math.max(LEAST_IN_MATRIX, magnesium - 2 * q);
    double si = Math.max(LEAST_IN_MATRIX, silicon - siliconPhase - q);
    return Math.cbrt(mg * mg * si / 4) * left(q);
  }

  /**
   * 1 up to the hardening solute, 0 a little beyond it: without it the floors above would go on
   * feeding precipitates in a matrix that is exhausted.
   */
  private double left(double q) {
    double beyond = Math.max(0, q - hardening) / (most() - hardening);
    return Math.max(0, 1 - beyond);
  }

  /** What the precipitates cannot exceed, formula units per atom. */
  double most() {
    return hardening * (1 + OVERDRAFT);
  }

  /** Magnesium in solution beside so many formula units, wt%. */
  double matrixMagnesium(double q) {
    return Math.max(0, magnesium - 2 * q) / MAGNESIUM_PER_WT;
  }

  /** Silicon in solution beside so many formula units and silicon phase, wt%. */
  double matrixSilicon(double q, double siliconPhase) {
    return Math.max(0, silicon - q - siliconPhase) / SILICON_PER_WT;
  }
}
