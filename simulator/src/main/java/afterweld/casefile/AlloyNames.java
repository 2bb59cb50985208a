package afterweld.casefile;

import afterweld.material.Alloy;
import afterweld.material.UncomputedAlloys;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** How alloys are written: A356.0 is A356, and AA6061, EN AW-6061 and ER4043 are known as well. */
public final class AlloyNames {
  private AlloyNames() {}

  /** Alloys by name. */
  public static Choices<Alloy> of(List<Alloy> alloys) {
    return Choices.of(alloys, Alloy::name, AlloyNames::plain);
  }

  /**
   * What to tell somebody who asks for an alloy that is not computed; empty if the name is none of
   * them.
   */
  public static Optional<String> uncomputed(String name) {
    return UncomputedAlloys.advice(plain(name));
  }

  private static String plain(String name) {
    return name.toUpperCase(Locale.ROOT)
        .replaceAll("[\\s_-]+", "")
        .replaceFirst("^(?:ENAW|AA|ER|R)(?=\\d)", "")
        .replaceFirst("\\.0$", "");
  }
}
