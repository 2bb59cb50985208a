package afterweld.study;

import java.util.Comparator;
import java.util.List;
import java.util.OptionalInt;
import java.util.function.DoublePredicate;
import java.util.stream.IntStream;

/**
 * Which of many joints is best by what the case requires, and which are as good. Joints of which
 * nothing is claimed, and joints that something speaks against, are never among them.
 *
 * @param places in any order; the answers are places in this list
 */
public record Ranking(List<JointPlace> places) {
  /** How much less counts as the same (assumed). */
  public static final double SAME = 0.01;

  /** Copies the list. */
  public Ranking {
    places = List.copyOf(places);
  }

  private IntStream ranked() {
    return IntStream.range(0, places.size()).filter(i -> places.get(i).ranked());
  }

  private double value(int place) {
    return places.get(place).value();
  }

  /** The best; empty if there is none to rank. */
  public OptionalInt best() {
    return ranked().boxed().max(byValue()).map(OptionalInt::of).orElse(OptionalInt.empty());
  }

  /** The least good of those that are ranked. */
  public OptionalInt worst() {
    return ranked().boxed().min(byValue()).map(OptionalInt::of).orElse(OptionalInt.empty());
  }

  private Comparator<Integer> byValue() {
    return Comparator.comparingDouble(this::value);
  }

  /** The places that are as good as the best within 1 %, the best among them. */
  public List<Integer> asGood() {
    return those(value -> value >= (1 - SAME) * value(best().orElseThrow()));
  }

  /** The places that lie within the model's error of the best, the best among them. */
  public List<Integer> withinError() {
    return those(value -> value >= places.get(best().orElseThrow()).valueLow());
  }

  private List<Integer> those(DoublePredicate good) {
    return best().isEmpty()
        ? List.of()
        : ranked().filter(i -> good.test(value(i))).boxed().toList();
  }

  /** Whether there are several to rank and none is better than another by more than 1 %. */
  public boolean even() {
    return ranked().count() > 1 && asGood().size() == ranked().count();
  }

  /** Whether all that are ranked lie within the model's error of the best. */
  public boolean insideError() {
    return best().isPresent() && withinError().size() == ranked().count();
  }
}
