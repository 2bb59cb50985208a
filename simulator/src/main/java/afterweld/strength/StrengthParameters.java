package afterweld.strength;

import afterweld.material.Source;
import afterweld.material.Status;
import afterweld.metallurgy.Parameter;

/** Every constant that turns a state of precipitation into strength. */
public final class StrengthParameters {
  private static final Source FITTED =
      new Source(
          "fitted together to tempers, ageing curves, reheats and heat-affected zones of 6xxx",
          Status.COMPUTED);

  /** Strength of the pure metal. */
  public static final Parameter PURE = fitted("s0", 22.15, "MPa");

  /** Solid solution of silicon; Myhr, Grong, Andersen (2001) have 66.3. */
  public static final Parameter SILICON = fitted("k_Si", 48.89, "MPa/wt%^(2/3)");

  /** Solid solution of magnesium. */
  public static final Parameter MAGNESIUM = fitted("k_Mg", 18.36, "MPa/wt%");

  /** Solid solution of copper; Myhr, Grong, Andersen (2001) have 46.4. */
  public static final Parameter COPPER = fitted("k_Cu", 48.85, "MPa/wt%^(2/3)");

  /** Solid solution of manganese. */
  public static final Parameter MANGANESE = fitted("k_Mn", 15.01, "MPa/wt%^(2/3)");

  /** Share of the copper that goes into the precipitates when all that can form has formed. */
  public static final Parameter COPPER_IN_PRECIPITATES =
      new Parameter(
          "c_Cu", 0.7, "-", new Source("common practice or plain assumption", Status.ASSUMED));

  /** Strength of clusters. */
  public static final Parameter CLUSTER = fitted("k_cl", 103, "MPa");

  /** Exponent of the solute in the strength of clusters. */
  public static final Parameter CLUSTER_EXPONENT = fitted("n_cl", 0.8339, "-");

  /** Radius up to which needles are cut; Myhr, Grong, Andersen (2001) have 5 nm. */
  public static final Parameter CUTTING_RADIUS = fitted("r_c", 5.528e-9, "m");

  /** Radius up to which intermediate phases are cut. */
  public static final Parameter INTERMEDIATE_CUTTING_RADIUS = fitted("r_B", 3.099e-8, "m");

  /** Shear modulus of aluminium. */
  public static final Parameter SHEAR_MODULUS = memory("G", 2.7e10, "Pa");

  /** Burgers vector of aluminium. */
  public static final Parameter BURGERS_VECTOR = memory("b", 2.84e-10, "m");

  /** Taylor factor. */
  public static final Parameter TAYLOR_FACTOR = memory("M", 3.1, "-");

  /** Line tension of a dislocation over {@code G b²}. */
  public static final Parameter LINE_TENSION = memory("β", 0.36, "-");

  /** Strength of eutectic silicon. */
  public static final Parameter EUTECTIC = fitted("c_eu", 211, "MPa");

  /** Share of that strength which rounding takes away. */
  public static final Parameter ROUNDING =
      new Parameter(
          "c_X", 0.6, "-", new Source("common practice or plain assumption", Status.ASSUMED));

  /** Volume of silicon phase per atom share: molar volume of silicon over that of aluminium. */
  public static final Parameter SILICON_VOLUME = memory("v_Si", 1.16, "-");

  /** Hardening capacity of the pure metal. */
  public static final Parameter CAPACITY = fitted("u0", 15.33, "MPa");

  /** Its rise with magnesium. */
  public static final Parameter CAPACITY_MAGNESIUM = fitted("u_Mg", 54.07, "MPa/wt%");

  /** Its rise with the strength of clusters. */
  public static final Parameter CAPACITY_CLUSTERS = fitted("u_cl", 2.095, "-");

  /** Its rise with the volume fraction of precipitates. */
  public static final Parameter CAPACITY_PRECIPITATES = fitted("u_p", 3901, "MPa");

  /** Its rise with the square root of eutectic silicon. */
  public static final Parameter CAPACITY_EUTECTIC = fitted("u_eu", 474.7, "MPa");

  /** Initial hardening rate. */
  public static final Parameter HARDENING_RATE =
      new Parameter(
          "θ", 1500, "MPa", new Source("common practice or plain assumption", Status.ASSUMED));

  /** Hardness over the sum of yield and tensile strength. */
  public static final Parameter HARDNESS_OVER_FLOW =
      new Parameter(
          "c_HV",
          0.183,
          "HV/MPa",
          new Source("a third of the flow stress in kgf/mm², set by hand", Status.ASSUMED));

  private StrengthParameters() {}

  private static Parameter fitted(String symbol, double value, String unit) {
    return new Parameter(symbol, value, unit, FITTED);
  }

  private static Parameter memory(String symbol, double value, String unit) {
    return new Parameter(
        symbol,
        value,
        unit,
        new Source("Myhr, Grong, Andersen, Acta Mater. 49 (2001) 65; handbooks", Status.MEMORY));
  }
}
