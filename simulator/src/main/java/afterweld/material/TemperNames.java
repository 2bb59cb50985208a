package afterweld.material;

import java.util.Locale;
import java.util.Map;

/** Names under which the trade knows the same temper. */
final class TemperNames {
  private static final Map<String, String> ALIASES =
      Map.of(
          "T651", "T6",
          "T6511", "T6",
          "T62", "T6",
          "T42", "T4",
          "T61", "T6",
          "T451", "T4",
          "T4511", "T4",
          "H321", "H116");

  private TemperNames() {}

  /** The library's name of a temper. */
  static String resolve(String name) {
    String upper = name.toUpperCase(Locale.ROOT);
    return ALIASES.getOrDefault(upper, upper);
  }
}
