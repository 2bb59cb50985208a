package afterweld.choice.filler;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.IntStream;

/**
 * The row of the guides for two bases that no row names: that of their nearest relatives. Source:
 * families of the Aluminum Association by what the metals hold, and filler charts of the trade that
 * group them so (from memory).
 *
 * <p>6005A stands with 6061, 6060 with 6063, 6351 with 6082, and all of them with 6061 where their
 * own row is missing; A357 with A356; 3003 with 1100; 5086 and 5083 (over 3 % Mg) with each other,
 * the weaker 5086 first; 5454 with 5052, or with 5083 where the 5052 row begins with a filler that
 * 5454 does not stand. The row with the fewest steps away from the bases is taken.
 */
final class PairRule {
  /** Nearest first; 5086 stands for itself once more, so that it goes before 5083. */
  private static final Map<String, List<String>> RELATIVES =
      Map.ofEntries(
          Map.entry("6005A", List.of("6061")),
          Map.entry("6063", List.of("6061")),
          Map.entry("6060", List.of("6063", "6061")),
          Map.entry("6082", List.of("6061")),
          Map.entry("6351", List.of("6082", "6061")),
          Map.entry("A357", List.of("A356")),
          Map.entry("3003", List.of("1100")),
          Map.entry("5083", List.of("5086")),
          Map.entry("5086", List.of("5086", "5083")),
          Map.entry("5454", List.of("5052", "5083")));

  private PairRule() {}

  /** A base's stand-in and how far away it is. */
  private record Kin(String base, int steps) {}

  /** A row and how far away it is. */
  private record Found(FillerPair pair, int steps) {}

  /**
   * The row for two bases.
   *
   * @param suits whether a row may serve the real bases
   */
  static Optional<FillerPair> of(String left, String right, Predicate<FillerPair> suits) {
    return kin(left).stream()
        .flatMap(one -> kin(right).stream().flatMap(other -> found(one, other).stream()))
        .filter(found -> suits.test(found.pair()))
        .min(Comparator.comparingInt(Found::steps).thenComparing(found -> found.pair().bases()))
        .map(Found::pair);
  }

  private static Optional<Found> found(Kin one, Kin other) {
    return FillerPair.of(one.base(), other.base())
        .map(pair -> new Found(pair, one.steps() + other.steps()));
  }

  private static List<Kin> kin(String base) {
    List<String> relatives = RELATIVES.getOrDefault(base, List.of());
    return IntStream.rangeClosed(0, relatives.size())
        .mapToObj(step -> new Kin(step == 0 ? base : relatives.get(step - 1), step))
        .distinct()
        .toList();
  }
}
