package afterweld.weldmetal;

import afterweld.material.ClassPathTable;
import afterweld.material.Composition;
import afterweld.material.Element;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * How prone weld metal is to cracking while it freezes, from its composition: the one word on it in
 * every command. Restraint and the shape of the bead are not in it.
 *
 * <p>{@code crack_sensitivity.csv} holds the crack-prone ranges of the binary metals. Magnesium and
 * silicon bind each other (1.73 to 1 by weight), so each is counted less what the other takes: free
 * silicon by the Al-Si range; free magnesium by the Al-Mg range moved by what 0.3 % silicon binds,
 * because weld metal of 3 % Mg and 0.3 % Si is known to resist. Magnesium must also pass the range
 * as it stands. Copper decides from 1 % on unless free silicon is plentiful (4145). Nearly pure
 * metal lies under every range and is moderate, as the filler guides rate it.
 */
public enum CrackTendency {
  LOW("low"),
  MODERATE("moderate"),
  HIGH("high");

  private static final Map<String, Double> LIMITS =
      ClassPathTable.rows(CrackTendency.class, "crack_sensitivity.csv").stream()
          .collect(
              Collectors.toMap(
                  row -> row.get("system") + " " + row.get("limit"),
                  row -> Double.parseDouble(row.get("wt_percent"))));

  /** Weight of magnesium to silicon in Mg2Si (standard atomic weights). */
  private static final double MAGNESIUM_PER_SILICON = 1.73;

  /** Weight of Mg2Si to its magnesium (standard atomic weights). */
  private static final double MG2SI_PER_MAGNESIUM = 1 / 0.634;

  /** Magnesium that the silicon of an ordinary 5xxx alloy binds, wt% (assumed 0.3 % Si). */
  private static final double BOUND_BY_USUAL_SILICON = 0.3 * MAGNESIUM_PER_SILICON;

  private static final double ROUNDING = 1e-6;

  private final String label;

  CrackTendency(String label) {
    this.label = label;
  }

  /** The word used in results. */
  public String label() {
    return label;
  }

  /** The tendency of a weld metal. */
  public static CrackTendency of(Composition metal) {
    double silicon = metal.of(Element.SI);
    double magnesium = metal.of(Element.MG);
    CrackTendency bySilicon = between("Al-Si", silicon - magnesium / MAGNESIUM_PER_SILICON);
    double copper = metal.of(Element.CU);
    if (copper >= limit("Al-Cu", "high from")) {
      return bySilicon == LOW ? LOW : between("Al-Cu", copper);
    }
    if (nearlyPure(silicon, magnesium)) {
      return MODERATE;
    }
    return min(bySilicon, byMagnesium(silicon, magnesium));
  }

  private static CrackTendency byMagnesium(double silicon, double magnesium) {
    double free = magnesium - silicon * MAGNESIUM_PER_SILICON;
    return max(between("Al-Mg", magnesium), between("Al-Mg", free + BOUND_BY_USUAL_SILICON));
  }

  private static boolean nearlyPure(double silicon, double magnesium) {
    double compound = MG2SI_PER_MAGNESIUM * Math.min(magnesium, silicon * MAGNESIUM_PER_SILICON);
    return silicon < limit("Al-Si", "high from")
        && magnesium < limit("Al-Mg", "high from")
        && compound < limit("Al-Mg2Si", "high from");
  }

  private static CrackTendency between(String system, double share) {
    if (share >= limit(system, "low from") - ROUNDING) {
      return LOW;
    }
    return share > limit(system, "high up to") ? MODERATE : HIGH;
  }

  private static CrackTendency min(CrackTendency one, CrackTendency other) {
    return one.compareTo(other) <= 0 ? one : other;
  }

  private static CrackTendency max(CrackTendency one, CrackTendency other) {
    return one.compareTo(other) >= 0 ? one : other;
  }

  private static double limit(String system, String name) {
    return LIMITS.get(system + " " + name);
  }
}
