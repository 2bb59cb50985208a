package afterweld.choice;

import afterweld.choice.answer.Remark;
import afterweld.choice.answer.Verdict;
import afterweld.choice.filler.MagnesiumRule;
import afterweld.quantity.BothUnits;
import afterweld.quantity.UnitSystem;
import afterweld.section.SectionProfile;
import java.util.List;

/**
 * Whether a joint may serve at a temperature: metal rich in magnesium ({@link MagnesiumRule}) not
 * above its limit; above 100 °C strength at room temperature says nothing, so the answer is open.
 */
final class ServiceRule {
  /** Above this, K, strength at room temperature tells nothing (common practice). */
  private static final double HOT = 100 + UnitSystem.ZERO_CELSIUS;

  private static final double HAIR = 1e-6;

  private ServiceRule() {}

  /**
   * The answer.
   *
   * @param asked service temperature, K
   */
  static Remark of(SectionProfile profile, double asked) {
    String head = "Service at " + BothUnits.temperature(asked);
    if (asked <= MagnesiumRule.WARM_SERVICE) {
      String how = asked > MagnesiumRule.WARM_LIMIT + HAIR ? "at the limit of " : "not above ";
      return new Remark(head, Verdict.MET, how + MagnesiumRule.LIMIT + ".");
    }
    List<String> rich = MagnesiumRule.richOf(profile);
    if (!rich.isEmpty()) {
      String why = "more than 3 % Mg in " + String.join(" and ", rich) + ": not for service above ";
      return new Remark(head, Verdict.NOT_MET, why + MagnesiumRule.LIMIT + ".");
    }
    if (asked > HOT) {
      String why = "strength is predicted for room temperature only; a coupon decides.";
      return new Remark(head, Verdict.OPEN, why);
    }
    return new Remark(head, Verdict.MET, "no metal of the joint has more than 3 % Mg.");
  }
}
