package afterweld.strength;

import static afterweld.strength.StrengthParameters.BURGERS_VECTOR;
import static afterweld.strength.StrengthParameters.CAPACITY;
import static afterweld.strength.StrengthParameters.CAPACITY_CLUSTERS;
import static afterweld.strength.StrengthParameters.CAPACITY_EUTECTIC;
import static afterweld.strength.StrengthParameters.CAPACITY_MAGNESIUM;
import static afterweld.strength.StrengthParameters.CAPACITY_PRECIPITATES;
import static afterweld.strength.StrengthParameters.CLUSTER;
import static afterweld.strength.StrengthParameters.CLUSTER_EXPONENT;
import static afterweld.strength.StrengthParameters.COPPER;
import static afterweld.strength.StrengthParameters.COPPER_IN_PRECIPITATES;
import static afterweld.strength.StrengthParameters.CUTTING_RADIUS;
import static afterweld.strength.StrengthParameters.EUTECTIC;
import static afterweld.strength.StrengthParameters.HARDENING_RATE;
import static afterweld.strength.StrengthParameters.HARDNESS_OVER_FLOW;
import static afterweld.strength.StrengthParameters.INTERMEDIATE_CUTTING_RADIUS;
import static afterweld.strength.StrengthParameters.LINE_TENSION;
import static afterweld.strength.StrengthParameters.MAGNESIUM;
import static afterweld.strength.StrengthParameters.MANGANESE;
import static afterweld.strength.StrengthParameters.PURE;
import static afterweld.strength.StrengthParameters.ROUNDING;
import static afterweld.strength.StrengthParameters.SHEAR_MODULUS;
import static afterweld.strength.StrengthParameters.SILICON;
import static afterweld.strength.StrengthParameters.SILICON_VOLUME;
import static afterweld.strength.StrengthParameters.TAYLOR_FACTOR;

import afterweld.material.Element;
import afterweld.metallurgy.PrecipitateState;

/**
 * Strength of a precipitating metal from its state: one formula for base metal, heat-affected zone,
 * casting and weld metal.
 *
 * <pre>
 * yield = solution + clusters + precipitates + cast                          (MPa, wt%, m)
 * solution     = s0 + k_Si Si^(2/3) + k_Mg Mg + k_Cu (Cu (1 - 0.7 q/q_max))^(2/3) + k_Mn Mn^(2/3)
 * clusters     = k_cl (min(Mg, 2 Si) min(Mg, Si))^n_cl y
 * precipitates = (M/b) F0 sqrt(Σ 2 N r F³ + Σ 2 N r w² + 2 N_E r_E),  F0 = 2 · 0.36 G b²
 *                F = min(1, r/r_c) for needles, w = min(1, r/r_B) for the intermediate phases
 * cast         = c_eu sqrt(f_Si) (1 - 0.6 X)
 * tensile      = Voce's law with Q = u0 + u_Mg Mg + u_cl clusters + u_p f + u_eu sqrt(f_Si)
 * hardness HV  = 0.183 (yield + tensile)
 * </pre>
 *
 * Validity: as the precipitation model; not for cold-worked metal. Source: solid solution and
 * particle strength in the form of Myhr, Grong and Andersen, Acta Mater. 49 (2001) 65 (from
 * memory); clusters, cast term and hardening capacity fitted.
 */
public final class PrecipitateStrength {
  private static final double MEGA = 1e6;
  private static final double LEAST_CAPACITY = 1;

  private PrecipitateStrength() {}

  /** Yield, tensile strength and hardness. */
  public static Strength of(PrecipitateState state) {
    StrengthBreakdown parts = breakdown(state);
    double yield = parts.total() / MEGA;
    double capacity = capacity(state, parts.clusters() / MEGA);
    double tensile = VoceLaw.tensile(yield, capacity, HARDENING_RATE.value());
    double hardness = HARDNESS_OVER_FLOW.value() * (yield + tensile);
    return new Strength(yield * MEGA, tensile * MEGA, hardness);
  }

  /** What the yield strength is made of. */
  public static StrengthBreakdown breakdown(PrecipitateState state) {
    return new StrengthBreakdown(
        MEGA * solidSolution(state),
        MEGA * clusters(state),
        precipitates(state),
        MEGA * cast(state));
  }

  private static double solidSolution(PrecipitateState state) {
    double bound = state.totalUnits() / state.hardeningSolute();
    double copper =
        state.composition().of(Element.CU) * (1 - COPPER_IN_PRECIPITATES.value() * bound);
    return PURE.value()
        + SILICON.value() * twoThirds(state.matrixSilicon())
        + MAGNESIUM.value() * state.matrixMagnesium()
        + COPPER.value() * twoThirds(copper)
        + MANGANESE.value() * twoThirds(state.composition().of(Element.MN));
  }

  private static double clusters(PrecipitateState state) {
    double mg = state.matrixMagnesium();
    double si = state.matrixSilicon();
    double solute = Math.min(mg, 2 * si) * Math.min(mg, si);
    return CLUSTER.value() * Math.pow(solute, CLUSTER_EXPONENT.value()) * state.clusterDegree();
  }

  private static double precipitates(PrecipitateState state) {
    double obstacles =
        state.needles().sum((r, n) -> 2 * n * r * cube(cut(r, CUTTING_RADIUS.value())))
            + state.intermediate().sum((r, n) -> 2 * n * r * square(cutIntermediate(r)))
            + state.equilibrium().sum((r, n) -> 2 * n * r);
    double b = BURGERS_VECTOR.value();
    double force = 2 * LINE_TENSION.value() * SHEAR_MODULUS.value() * b * b;
    return TAYLOR_FACTOR.value() / b * force * Math.sqrt(obstacles);
  }

  private static double cast(PrecipitateState state) {
    double rounded = 1 - ROUNDING.value() * state.spheroidisation();
    return EUTECTIC.value() * Math.sqrt(eutecticSilicon(state)) * rounded;
  }

  private static double capacity(PrecipitateState state, double clusters) {
    double capacity =
        CAPACITY.value()
            + CAPACITY_MAGNESIUM.value() * state.matrixMagnesium()
            + CAPACITY_CLUSTERS.value() * clusters
            + CAPACITY_PRECIPITATES.value() * PrecipitateState.volumeFraction(state.totalUnits())
            + CAPACITY_EUTECTIC.value() * Math.sqrt(eutecticSilicon(state));
    return Math.max(LEAST_CAPACITY, capacity);
  }

  /** Volume fraction of eutectic silicon. */
  private static double eutecticSilicon(PrecipitateState state) {
    return state.cast() ? SILICON_VOLUME.value() * state.siliconPhase() : 0;
  }

  private static double cut(double radius, double largestCut) {
    return Math.min(1, radius / largestCut);
  }

  private static double cutIntermediate(double radius) {
    return cut(radius, INTERMEDIATE_CUTTING_RADIUS.value());
  }

  private static double twoThirds(double x) {
    return Math.pow(x, 2.0 / 3);
  }

  private static double square(double x) {
    return x * x;
  }

  private static double cube(double x) {
    return x * x * x;
  }
}
