package afterweld.strength;

import afterweld.material.Alloy;
import afterweld.material.Temper.Handbook;
import afterweld.metallurgy.StoredWorkModel;
import afterweld.metallurgy.StoredWorkState;

/**
 * Strength of work-hardened metal from its state.
 *
 * <pre>
 * yield    = annealed yield + hardening left
 * tensile  = Voce's law with θ = 1500 MPa and capacity Q_O for annealed metal, with hardening h left
 *            Q = max(Q_O + min(18, 0.9 h) - 0.95 h, 9)                                     (MPa)
 * hardness HV = 0.26 tensile + 0.025 yield
 * </pre>
 *
 * Q_O is what makes the annealed tensile strength of the handbook. Validity: hardness is a fit by
 * hand, 10 % low at 5083-H116. Source: handbook strengths as input, form fitted by hand.
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

  private StoredWorkStrength(double annealedYield, double annealedCapacity) {
    this.annealedYield = annealedYield;
    this.annealedCapacity = annealedCapacity;
  }

  /** Strengths of a library alloy, from its annealed handbook pair. */
  public static StoredWorkStrength of(Alloy alloy) {
    Handbook annealed = StoredWorkModel.annealed(alloy);
    double yield = annealed.yield() / MEGA;
    return new StoredWorkStrength(yield, capacity(yield, annealed.tensile() / MEGA));
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

  /** Yield, tensile strength and hardness of a state of that alloy. */
  public Strength of(StoredWorkState state) {
    double hardening = state.hardening() / MEGA;
    double yield = annealedYield + hardening;
    double tensile = VoceLaw.tensile(yield, capacity(hardening), HARDENING_RATE);
    double hardness = HARDNESS_OVER_TENSILE * tensile + HARDNESS_OVER_YIELD * yield;
    return new Strength(yield * MEGA, tensile * MEGA, hardness);
  }

  private double capacity(double hardening) {
    if (hardening == 0) {
      return annealedCapacity;
    }
    double gain = Math.min(FIRST_GAIN, FIRST_GAIN_SHARE * hardening);
    return Math.max(annealedCapacity + gain - CAPACITY_LOSS * hardening, LEAST_CAPACITY);
  }
}
