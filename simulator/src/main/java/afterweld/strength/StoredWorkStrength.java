package afterweld.strength;

import afterweld.material.Alloy;
import afterweld.material.Temper;
import afterweld.material.Temper.Handbook;
import afterweld.metallurgy.StoredWorkModel;
import afterweld.metallurgy.StoredWorkState;

/**
 * Strength of work-hardened metal of one temper from its state.
 *
 * <pre>
 * yield    = annealed yield + hardening left
 * tensile  = Voce's law with θ = 1500 MPa and capacity Q_O for annealed metal, with hardening h left
 *            Q = max(Q_O + min(18, 0.9 h) - 0.95 h, 9)                                     (MPa)
 *            times 1 + (k - 1) h/h_0
 * hardness HV = 0.26 tensile + 0.025 yield
 * </pre>
 *
 * Q_O is what makes the annealed tensile strength of the handbook, k what makes that of the temper
 * as delivered, with the hardening h_0: both ends are inputs. Validity: hardness is a fit by hand,
 * 10 % low at 5083-H116. Source: handbook strengths as input, form fitted by hand.
 */
public final class StoredWorkStrength {
  private static final double MEGA = 1e6;
  private static final double HARDENING_RATE = 1500;
  private static final double FIRST_GAIN = 18;
  private static final double FIRST_GAIN_SHARE = 0.9;
  private static final double CAPACITY_LOSS = 0.95;
  private static final double LEAST_CAPACITY = 9;
  private static final double HARDNESS_OVER_TENSILE = 0.26;
  private static final double HARDNESS_OVER_YIELD = 0.025;
  private static final double MOST_CAPACITY = 1000;

  private final double annealedYield;
  private final double annealedCapacity;
  private final double delivered;
  private final double factor;

  private StoredWorkStrength(Handbook annealed, Handbook temper) {
    this.annealedYield = annealed.yield() / MEGA;
    this.annealedCapacity = capacity(annealedYield, annealed.tensile() / MEGA);
    this.delivered = Math.max(0, temper.yield() / MEGA - annealedYield);
    this.factor = delivered > 0 ? temper.tensile() / MEGA / byVoce(delivered) : 1;
  }

  /** Strengths of a library alloy in a temper, from the handbook pairs of that temper and of O. */
  public static StoredWorkStrength of(Alloy alloy, Temper temper) {
    return new StoredWorkStrength(StoredWorkModel.annealed(alloy), temper.handbook().orElseThrow());
  }

  /** The capacity with which Voce's law gives a tensile strength, MPa; it rises with capacity. */
  private static double capacity(double yield, double tensile) {
    double low = 0;
    double high = MOST_CAPACITY;
    for (int i = 0; i < 60; i++) {
      double middle = (low + high) / 2;
      boolean under = VoceLaw.tensile(yield, middle, HARDENING_RATE) < tensile;
      low = under ? middle : low;
      high = under ? high : middle;
    }
    return (low + high) / 2;
  }

  /** Yield, tensile strength and hardness of a state of that metal. */
  public Strength of(StoredWorkState state) {
    double hardening = state.hardening() / MEGA;
    double yield = annealedYield + hardening;
    double share = delivered > 0 ? hardening / delivered : 0;
    double tensile = byVoce(hardening) * (1 + (factor - 1) * share);
    double hardness = HARDNESS_OVER_TENSILE * tensile + HARDNESS_OVER_YIELD * yield;
    return new Strength(yield * MEGA, tensile * MEGA, hardness);
  }

  private double byVoce(double hardening) {
    return VoceLaw.tensile(annealedYield + hardening, capacity(hardening), HARDENING_RATE);
  }

  private double capacity(double hardening) {
    if (hardening == 0) {
      return annealedCapacity;
    }
    double gain = Math.min(FIRST_GAIN, FIRST_GAIN_SHARE * hardening);
    return Math.max(annealedCapacity + gain - CAPACITY_LOSS * hardening, LEAST_CAPACITY);
  }
}
