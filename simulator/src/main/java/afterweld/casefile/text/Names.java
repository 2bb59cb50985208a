package afterweld.casefile.text;

import java.util.Collection;
import java.util.Locale;
import java.util.Optional;

/**
 * The known name that is nearest to a mistyped one: fewest letters to insert, remove, replace or
 * swap with a neighbour (optimal string alignment distance). A name that contains the other counts
 * as one letter away.
 */
public final class Names {
  private static final int LONGEST = 40;
  private static final int SHORTEST_PART = 3;

  private Names() {}

  /** The nearest of the known names, if one is near enough to be meant. */
  public static Optional<String> nearest(String found, Collection<String> known) {
    String name = found.strip().toLowerCase(Locale.ROOT);
    if (name.isEmpty() || name.length() > LONGEST) {
      return Optional.empty();
    }
    String best = null;
    int bestDistance = Math.max(1, name.length() / 3) + 1;
    for (String candidate : known) {
      int distance = distance(name, candidate.toLowerCase(Locale.ROOT));
      if (distance < bestDistance) {
        best = candidate;
        bestDistance = distance;
      }
    }
    return Optional.ofNullable(best);
  }

  /** The end of a message: {@code ; did you mean 'x'?}, or nothing. */
  public static String hint(String found, Collection<String> known) {
    return nearest(found, known).map(name -> "; did you mean '" + name + "'?").orElse("");
  }

  private static int distance(String found, String known) {
    int edits = edits(found, known);
    int shorter = Math.min(found.length(), known.length());
    boolean part = shorter >= SHORTEST_PART && (known.contains(found) || found.contains(known));
    return part ? Math.min(edits, 1) : edits;
  }

  private static int edits(String a, String b) {
    int[][] cost = new int[a.length() + 1][b.length() + 1];
    for (int i = 0; i <= a.length(); i++) {
      for (int j = 0; j <= b.length(); j++) {
        cost[i][j] = i == 0 || j == 0 ? i + j : cheapest(a, b, i, j, cost);
      }
    }
    return cost[a.length()][b.length()];
  }

  private static int cheapest(String a, String b, int i, int j, int[][] cost) {
    int replaced = cost[i - 1][j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
    int best = Math.min(replaced, 1 + Math.min(cost[i - 1][j], cost[i][j - 1]));
    boolean swapped =
        i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
    return swapped ? Math.min(best, cost[i - 2][j - 2] + 1) : best;
  }
}
