package afterweld.material;

/**
 * Where a value comes from.
 *
 * @param text the publication, table or rule
 * @param status how well it is supported
 */
public record Source(String text, Status status) {
  /** Checks that something is named. */
  public Source {
    if (text.isBlank()) {
      throw new IllegalArgumentException("a value without a source");
    }
  }
}
