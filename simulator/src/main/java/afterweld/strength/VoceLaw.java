package afterweld.strength;

/**
 * Tensile strength from yield strength and hardening capacity.
 *
 * <p>Voce hardening {@code σ = Y + Q (1 - exp(-θ ε / Q))} with the maximum load where the slope of
 * the true stress equals the stress (Considère) gives, with {@code x = (Y + Q)/(θ + Q)}, {@code UTS
 * = (Y + Q (1 - x)) x^(Q/θ)}; metal with {@code Y >= θ} necks at once, {@code UTS = Y}. Validity:
 * ductile metal, uniform elongation below 30 %. Source: Voce's law and Considère's criterion,
 * textbooks.
 */
final class VoceLaw {
  private VoceLaw() {}

  /**
   * Engineering tensile strength, MPa.
   *
   * @param yield Y, MPa
   * @param capacity Q, MPa
   * @param rate θ, MPa
   */
  static double tensile(double yield, double capacity, double rate) {
    if (yield >= rate) {
      return yield;
    }
    double x = (yield + capacity) / (rate + capacity);
    return (yield + capacity * (1 - x)) * Math.pow(x, capacity / rate);
  }
}
