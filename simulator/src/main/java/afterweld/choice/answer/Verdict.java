package afterweld.choice.answer;

import java.util.Optional;

/**
 * How a requirement stands, from best to worst, by the chance that a sound weld made as written
 * meets it. The limits are this project's own.
 */
public enum Verdict {
  /** A chance of 95 % or more. */
  MET("met", 0.95),
  /** 80 to 95 %: worth making, and a test coupon decides. */
  LIKELY("likely", 0.80),
  /** 20 to 80 %, or nothing is predicted: only a test coupon can tell. */
  OPEN("open", 0.20),
  /** 5 to 20 %. */
  UNLIKELY("unlikely", 0.05),
  /** Under 5 %. */
  NOT_MET("not met", 0);

  private final String label;
  private final double from;

  Verdict(String label, double from) {
    this.label = label;
    this.from = from;
  }

  /** The word used in results. */
  public String label() {
    return label;
  }

  /** Lowest chance that earns this word, 0 to 1. */
  public double from() {
    return from;
  }

  /** Whether the requirement is met: yes, no, or empty where a coupon decides. */
  public Optional<Boolean> met() {
    return switch (this) {
      case MET -> Optional.of(true);
      case LIKELY, OPEN -> Optional.empty();
      case UNLIKELY, NOT_MET -> Optional.of(false);
    };
  }

  /**
   * The word for a chance.
   *
   * @param chance 0 to 1; NaN, where nothing is predicted, is open
   */
  public static Verdict of(double chance) {
    if (Double.isNaN(chance)) {
      return OPEN;
    }
    for (Verdict verdict : values()) {
      if (chance >= verdict.from) {
        return verdict;
      }
    }
    throw new IllegalArgumentException("a chance below none: " + chance);
  }

  /** The worse of two. */
  public Verdict and(Verdict other) {
    return compareTo(other) >= 0 ? this : other;
  }
}
