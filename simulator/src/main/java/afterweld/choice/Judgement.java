package afterweld.choice;

import java.util.List;

/**
 * The answer to what the drawing asks.
 *
 * @param verdict all that is asked, taken together; {@code MET} where nothing is asked
 * @param reasons sentences for people, never empty
 */
public record Judgement(Verdict verdict, List<String> reasons) {
  /** The answer where the drawing asks nothing. */
  public static final Judgement NOTHING_ASKED =
      new Judgement(Verdict.MET, List.of("The case requires nothing."));

  /** Copies the list. */
  public Judgement {
    reasons = List.copyOf(reasons);
    if (reasons.isEmpty()) {
      throw new IllegalArgumentException("a judgement without a reason");
    }
  }
}
