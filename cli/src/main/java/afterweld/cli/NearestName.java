package afterweld.cli;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/** Finds the known name that a mistyped one most likely means. */
final class NearestName {
  private NearestName() {}

  /** Whether two spellings are one alloy: case does not count, nor the {@code .0} of castings. */
  static boolean same(String known, String wanted) {
    return plain(known).equals(plain(wanted));
  }

  private static String plain(String name) {
    String upper = name.strip().toUpperCase(Locale.ROOT);
    return upper.endsWith(".0") ? upper.substring(0, upper.length() - 2) : upper;
  }

  /** The known name with the fewest letters to change; of equals the first. */
  static String to(String wanted, List<String> known) {
    return known.stream()
        .min(Comparator.comparingInt(name -> changes(plain(name), plain(wanted))))
        .orElseThrow();
  }

  /** Letters to insert, delete or replace (Levenshtein, Soviet Physics Doklady 10, 1966). */
  private static int changes(String from, String to) {
    int[] row = new int[to.length() + 1];
    for (int j = 0; j <= to.length(); j++) {
      row[j] = j;
    }
    for (int i = 1; i <= from.length(); i++) {
      int diagonal = row[0];
      row[0] = i;
      for (int j = 1; j <= to.length(); j++) {
        int replaced = diagonal + (from.charAt(i - 1) == to.charAt(j - 1) ? 0 : 1);
        diagonal = row[j];
        row[j] = Math.min(replaced, 1 + Math.min(row[j], row[j - 1]));
      }
    }
    return row[to.length()];
  }
}
