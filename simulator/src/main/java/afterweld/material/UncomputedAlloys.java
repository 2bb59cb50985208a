package afterweld.material;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Alloys that the trade welds, or asks about, and that no model here computes: why, and what to do
 * instead. The facts with their sources: {@code not_computed.csv}.
 */
public final class UncomputedAlloys {
  private static final String TABLE = "/afterweld/material/not_computed.csv";

  private UncomputedAlloys() {}

  /** Their names. */
  public static Set<String> names() {
    return rows().stream()
        .map(row -> row.get("alloy"))
        .collect(Collectors.toCollection(LinkedHashSet::new));
  }

  /**
   * What to tell somebody who asks for an alloy.
   *
   * @param alloy one of {@link #names}
   * @return sentences in lower case without a full stop; empty if it is none of them
   */
  public static Optional<String> advice(String alloy) {
    String why = said(alloy, "why");
    return why.isEmpty()
        ? Optional.empty()
        : Optional.of(
            "known to the trade, not computed here ("
                + why
                + "); instead: "
                + said(alloy, "instead")
                + "; a test coupon welded and treated like the part gives its strength");
  }

  private static String said(String alloy, String about) {
    return rows().stream()
        .filter(row -> row.get("alloy").equals(alloy) && row.get("about").equals(about))
        .map(row -> row.get("text"))
        .collect(Collectors.joining("; "));
  }

  private static List<Map<String, String>> rows() {
    return ClassPathTable.rows(UncomputedAlloys.class, TABLE);
  }
}
