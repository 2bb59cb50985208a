package afterweld.choice.answer;

/**
 * Something asked that has no chance of its own: it is met, open or not met.
 *
 * @param head what is asked
 * @param verdict how it stands
 * @param why the reason, beginning in lower case and ending in a full stop
 */
public record Remark(String head, Verdict verdict, String why) {
  /** All of it in one sentence. */
  public String sentence() {
    return head + ": " + verdict.label() + ", " + why;
  }

  /** The reason as a sentence of its own. */
  public String reason() {
    return Character.toUpperCase(why.charAt(0)) + why.substring(1);
  }
}
