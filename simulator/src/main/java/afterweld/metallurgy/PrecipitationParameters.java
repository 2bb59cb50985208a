package afterweld.metallurgy;

import afterweld.material.Source;
import afterweld.material.Status;

/**
 * Every constant of the precipitation model, in the order of its parts. Those marked as fitted were
 * adjusted together to 96 values of published tempers, ageing curves, short reheats and
 * heat-affected zones; they are effective values of this model and not physical constants of the
 * phases.
 */
public final class PrecipitationParameters {
  private static final Source FITTED =
      new Source(
          "fitted together to tempers, ageing curves, reheats and heat-affected zones of 6xxx",
          Status.COMPUTED);
  private static final Source BY_HAND =
      new Source("common practice or plain assumption, set by hand", Status.ASSUMED);
  private static final Source NUMERICAL =
      new Source("numerical choice, see the convergence test", Status.ASSUMED);

  /** Gas constant. */
  public static final Parameter GAS_CONSTANT = memory("R", 8.314462, "J/(mol K)", "CODATA");

  /** Atoms per formula unit volume: molar volume of aluminium. */
  public static final Parameter ALUMINIUM_MOLAR_VOLUME =
      memory("V_Al", 1e-5, "m³/mol", "atomic weight over density of aluminium");

  /** Molar volume of one formula unit Mg2Si. */
  public static final Parameter PRECIPITATE_MOLAR_VOLUME =
      memory("V_m", 3.95e-5, "m³/mol", "Myhr, Grong, Andersen, Acta Mater. 49 (2001) 65");

  /** Silicon bound by each weight percent of iron, manganese and chromium. */
  public static final Parameter SILICON_BOUND_BY_IRON = assumed("k_Fe", 0.25, "-");

  /** Diffusivity of every solute at 175 °C. */
  public static final Parameter DIFFUSIVITY_AT_175C = fitted("D175", 5.113e-20, "m²/s");

  /** Activation energy of diffusion; Myhr, Grong, Andersen (2001) have 130 kJ/mol. */
  public static final Parameter ACTIVATION_ENERGY = fitted("Q", 123000, "J/mol");

  /** ln([Mg]²[Si]) of 6061 in atomic fractions: solvus temperatures are those of 6061. */
  public static final Parameter SOLVUS_PRODUCT =
      new Parameter(
          "ln K_0",
          -14.45,
          "-",
          new Source("1.0 % Mg and 0.46 % Si left by the iron phases", Status.COMPUTED));

  /** Flat-interface solvus temperature of the needles in 6061. */
  public static final Parameter NEEDLE_SOLVUS = fitted("T_H", 675, "K");

  /** Slope of the needle line over 1/T. */
  public static final Parameter NEEDLE_SOLVUS_SLOPE = fitted("B_H", 11660, "K");

  /** Solvus temperature of the least stable coarse phase in 6061. */
  public static final Parameter COARSE_SOLVUS = fitted("T_B", 733.7, "K");

  /** Slope of that line over 1/T. */
  public static final Parameter COARSE_SOLVUS_SLOPE = fitted("B_B", 10360, "K");

  /**
   * Constant of the equilibrium line: log10([Mg]²[Si]) = 5.97 - 5212/T in wt%, raised by 0.40 so
   * that 6061 is just dissolved at 530 °C.
   */
  public static final Parameter EQUILIBRIUM_SOLVUS =
      memory("ln K_E0", 0.4995, "-", "solubility product of Mg2Si in aluminium, raised");

  /** Slope of the equilibrium line over 1/T. */
  public static final Parameter EQUILIBRIUM_SOLVUS_SLOPE =
      memory("B_E", 12001, "K", "solubility product of Mg2Si in aluminium");

  /** How far the lines of the coarse groups reach from the first towards the equilibrium line. */
  public static final Parameter GROUP_REACH = fitted("λ", 0.91, "-");

  /** Fall of the share of sites from the least to the most stable coarse group. */
  public static final Parameter GROUP_SHARE_FALL = fitted("σ", 7.091, "-");

  /** Number of coarse groups. */
  public static final Parameter GROUPS = new Parameter("m", 16, "-", NUMERICAL);

  /** Rate factor of needle nucleation. */
  public static final Parameter NUCLEATION_RATE = fitted("J0", Math.exp(83.87), "1/(m³ s)");

  /** Barrier of needle nucleation; Myhr, Grong, Andersen (2001) have 16220 J/mol. */
  public static final Parameter NUCLEATION_BARRIER = fitted("A0", 13530, "J/mol");

  /** Surface energy of needles. */
  public static final Parameter NEEDLE_SURFACE_ENERGY = fitted("γ_H", 0.225, "J/m²");

  /** Loss of driving force by clusters. */
  public static final Parameter CLUSTER_HINDRANCE = fitted("φ", 0.2937, "-");

  /** Least driving force at which needles nucleate. */
  public static final Parameter LEAST_DRIVING_FORCE = new Parameter("S_min", 0.1, "-", NUMERICAL);

  /** Least radius of a new needle. */
  public static final Parameter LEAST_NUCLEUS = assumed("r_min", 0.7e-9, "m");

  /** Radius of a new needle over the critical radius. */
  public static final Parameter NUCLEUS_OVER_CRITICAL = assumed("k_n", 1.1, "-");

  /** Largest over smallest radius of new needles. */
  public static final Parameter NUCLEUS_SPREAD = new Parameter("k_s", 1.5, "-", NUMERICAL);

  /** Surface energy of the coarse phases. */
  public static final Parameter COARSE_SURFACE_ENERGY = fitted("γ_B", 0.1012, "J/m²");

  /** Surface energy of the equilibrium phase. */
  public static final Parameter EQUILIBRIUM_SURFACE_ENERGY = assumed("γ_E", 0.3, "J/m²");

  /** Radius below which a coarse particle grows as if it had this radius. */
  public static final Parameter COARSE_SEED_RADIUS = assumed("r_0", 5e-9, "m");

  /** The same for the equilibrium phase. */
  public static final Parameter EQUILIBRIUM_SEED_RADIUS = assumed("r_0E", 20e-9, "m");

  /** Sites of the coarse phases at a site factor of 1. */
  public static final Parameter COARSE_SITES = fitted("N1", Math.exp(45.96), "1/m³");

  /** Sites of the equilibrium phase at a site factor of 1. */
  public static final Parameter EQUILIBRIUM_SITES = fitted("N_E0", Math.exp(39.99), "1/m³");

  /** Site factor of an alloy without chromium and manganese. */
  public static final Parameter PLAIN_SITES = assumed("z_0", 0.04, "-");

  /** Weight of manganese against chromium as a maker of sites. */
  public static final Parameter MANGANESE_SITES = assumed("z_Mn", 0.4, "-");

  /** Chromium content at a site factor of about 1. */
  public static final Parameter SITES_CHROMIUM = assumed("z_Cr", 0.2, "wt%");

  /** Share of dissolving needles that become seeds of coarse particles. */
  public static final Parameter SEEDS_FROM_NEEDLES = fitted("f_m", Math.exp(-3.438), "-");

  /** Radius at which a shrinking needle counts as dissolving. */
  public static final Parameter DISSOLVING_RADIUS = assumed("r_d", 2e-9, "m");

  /** Seeds of coarse particles from dissolving clusters. */
  public static final Parameter SEEDS_FROM_CLUSTERS = fitted("f_y", Math.exp(46.24), "1/m³");

  /** Loss of sites of dissolving coarse particles. */
  public static final Parameter SITE_LOSS = fitted("w", 0.2772, "-");

  /** Share of the hardening solute below which a population does not coarsen. */
  public static final Parameter COARSENING_ONSET = assumed("k_c", 0.02, "-");

  /** Precipitation of silicon in wrought metal. */
  public static final Parameter SILICON_RATE_WROUGHT = assumed("W", 4e10, "1/m²");

  /** The same in cast metal. */
  public static final Parameter SILICON_RATE_CAST = assumed("W_cast", 2e10, "1/m²");

  /** Solubility of silicon at infinite temperature. */
  public static final Parameter SILICON_SOLUBILITY =
      memory("s_0", 2925, "wt%", "solvus of silicon in aluminium (Al-Si phase diagram)");

  /** Slope of the solubility of silicon over 1/T. */
  public static final Parameter SILICON_SOLUBILITY_SLOPE =
      memory("B_S", 6358, "K", "solvus of silicon in aluminium (Al-Si phase diagram)");

  /** Temperature at which half the clusters are stable. */
  public static final Parameter CLUSTER_SOLVUS = assumed("T_y", 383, "K");

  /** Width of the range in which clusters become unstable. */
  public static final Parameter CLUSTER_SOLVUS_WIDTH = assumed("ΔT_y", 10, "K");

  /** Activation energy of clustering. */
  public static final Parameter CLUSTERING_ENERGY = assumed("Q_y", 65000, "J/mol");

  /** Slowing down of clustering. */
  public static final Parameter CLUSTERING_DECAY = fitted("B", 8.697, "-");

  /** Diffusion length of a dissolving cluster. */
  public static final Parameter CLUSTER_LENGTH = fitted("L", 2.839e-8, "m");

  /** Time in which eutectic silicon spheroidises at 530 °C. */
  public static final Parameter SPHEROIDISATION_TIME = assumed("t_X", 1800, "s");

  /** Temperature that time belongs to. */
  public static final Parameter SPHEROIDISATION_TEMPERATURE = assumed("T_X", 803.15, "K");

  /** Activation energy of spheroidisation. */
  public static final Parameter SPHEROIDISATION_ENERGY = assumed("Q_X", 250000, "J/mol");

  /** Silicon kept in solution by the solidification of a weld. */
  public static final Parameter RETAINED_SILICON = assumed("s_r", 1.1, "wt%");

  /** Silicon of the eutectic liquid. */
  public static final Parameter EUTECTIC_SILICON =
      memory("s_E", 12.6, "wt%", "Al-Si phase diagram");

  /** Share of magnesium bound in a structure that is all eutectic. */
  public static final Parameter MAGNESIUM_BOUND = assumed("b_0", 0.5, "-");

  /** Exponent of the eutectic share in the bound magnesium. */
  public static final Parameter MAGNESIUM_BOUND_EXPONENT = assumed("b_1", 0.43, "-");

  /** Number of equilibrium particles in cast metal. */
  public static final Parameter CAST_EQUILIBRIUM_SITES = assumed("N_E cast", 1e15, "1/m³");

  /** Temperature down to which the equilibrium phase forms during solidification. */
  public static final Parameter CAST_EQUILIBRIUM_TEMPERATURE = assumed("T_cast", 813.15, "K");

  private PrecipitationParameters() {}

  private static Parameter fitted(String symbol, double value, String unit) {
    return new Parameter(symbol, value, unit, FITTED);
  }

  private static Parameter memory(String symbol, double value, String unit, String text) {
    return new Parameter(symbol, value, unit, new Source(text, Status.MEMORY));
  }

  private static Parameter assumed(String symbol, double value, String unit) {
    return new Parameter(symbol, value, unit, BY_HAND);
  }
}
