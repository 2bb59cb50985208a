package afterweld.casefile;

import java.util.Map;
import java.util.Optional;

/**
 * Keys that say something true about a weld which is not computed from them: what to state instead.
 */
final class UnreadKeys {
  private static final String CASE = "the case";
  private static final String WIRE =
      "how much wire a pass lays down is not computed from it; state the dilution of the filler, or"
          + " its melted_area and deposit_area from a macro section";
  private static final Map<String, String> OF_THE_CASE =
      Map.of(
          "groove",
          "angle, gap and root face are not computed with; state preparation: square, single-v or"
              + " double-v, and the dilution of the filler, or its melted_area and deposit_area from"
              + " a macro section",
          "fill",
          "no passes are added to fill a groove; write out every pass under passes",
          "may_change",
          "what may change is not searched by itself; change the case and run profile again, or"
              + " spread --grid over one or two inputs");
  private static final Map<String, String> OF_A_PASS =
      Map.of(
          "side",
          "every pass counts as laid from the face; state what reaches the back by penetration",
          "wire_feed",
          WIRE,
          "wire_diameter",
          WIRE,
          "deposit_area",
          WIRE);

  private UnreadKeys() {}

  /**
   * What to say about a key.
   *
   * @param section as messages name it, such as {@code pass 1}
   * @return empty if it is none of these keys
   */
  static Optional<String> advice(String section, String key) {
    Map<String, String> keys =
        section.startsWith("pass ") ? OF_A_PASS : section.equals(CASE) ? OF_THE_CASE : Map.of();
    return Optional.ofNullable(keys.get(key)).map(text -> key + ": not read yet: " + text);
  }
}
