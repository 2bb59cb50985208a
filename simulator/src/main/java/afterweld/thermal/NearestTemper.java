package afterweld.thermal;

import java.util.Arrays;
import java.util.Comparator;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Finds a property listed per temper: that of the temper itself, else that of the nearest listed
 * one. Tempers of the same letter are nearer than others; among them the digits decide, read as a
 * decimal (T651 is 6.51, so it takes T6 before T5).
 */
final class NearestTemper {
  private static final Pattern NAME = Pattern.compile("([A-Z])(\\d)?(\\d*)");
  private static final double OTHER_LETTER = 100;

  private NearestTemper() {}

  /**
   * The value for a temper.
   *
   * @param values per temper name; a key may list several names, or be {@code all}
   * @throws IllegalArgumentException if nothing is listed
   */
  static double value(Map<String, Double> values, String temper) {
    return values.entrySet().stream()
        .min(
            Comparator.comparingDouble(
                    (Map.Entry<String, Double> entry) -> distance(entry.getKey(), temper))
                .thenComparing(Map.Entry::getKey, Comparator.reverseOrder()))
        .orElseThrow(() -> new IllegalArgumentException("no conductivity for temper " + temper))
        .getValue();
  }

  private static double distance(String key, String temper) {
    return Arrays.stream(key.split("[/ ]"))
        .mapToDouble(name -> between(name, temper))
        .min()
        .orElse(OTHER_LETTER);
  }

  private static double between(String one, String other) {
    Matcher first = NAME.matcher(one);
    Matcher second = NAME.matcher(other);
    if (!first.matches() || !second.matches()) {
      return 2 * OTHER_LETTER;
    }
    double letters = first.group(1).equals(second.group(1)) ? 0 : OTHER_LETTER;
    return letters + Math.abs(degree(first) - degree(second));
  }

  private static double degree(Matcher name) {
    String whole = name.group(2) == null ? "0" : name.group(2);
    return Double.parseDouble(whole + "." + name.group(3) + "0");
  }
}
