package afterweld.choice.answer;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The answer to what the drawing asks.
 *
 * @param verdict all that is asked, taken together; {@code MET} where nothing is asked
 * @param chance that all strengths asked are met, 0 to 1; empty where none is asked or predicted
 * @param reasons sentences for people, never empty
 * @param beside whether something else than the strengths keeps it from being met
 */
public record Judgement(
    Verdict verdict, OptionalDouble chance, List<String> reasons, boolean beside) {
  /** The answer where the drawing asks nothing. */
  public static final Judgement NOTHING_ASKED =
      new Judgement(Verdict.MET, OptionalDouble.empty(), List.of("The case requires nothing."));

  /** Of strengths alone, or of nothing. */
  public Judgement(Verdict verdict, OptionalDouble chance, List<String> reasons) {
    this(verdict, chance, reasons, false);
  }

  /** Copies the list. */
  public Judgement {
    reasons = List.copyOf(reasons);
    if (reasons.isEmpty()) {
      throw new IllegalArgumentException("a judgement without a reason");
    }
    double given = chance.orElse(0);
    if (!(given >= 0 && given <= 1)) {
      throw new IllegalArgumentException("a chance outside 0 to 1: " + given);
    }
  }

  /**
   * Its word with its chance, such as {@code likely (chance 90 %)}; the word alone without one.
   * Where something else is asked too and not met, the chance is said to be the strength's.
   */
  public String words() {
    if (chance.isEmpty()) {
      return verdict.label();
    }
    boolean alone = beside || verdict != Verdict.of(chance.getAsDouble());
    return verdict.label()
        + (alone ? " (chance of the strength alone " : " (chance ")
        + StrengthFinding.percent(chance.getAsDouble())
        + ")";
  }

  /** Whether the drawing asks anything. */
  public boolean asked() {
    return !equals(NOTHING_ASKED);
  }

  /** Whether it is met: yes (also where nothing is asked), no, or empty where a coupon decides. */
  public Optional<Boolean> met() {
    return verdict.met();
  }
}
