package afterweld.choice;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;

/**
 * Ranks the routes that no constraint rules out. Scores run from 0 to 1 on a straight line between
 * stated ends: strength margin 0 to 30 %, distortion severe to none, 5 steps to 1, 24 furnace hours
 * to none. Equal weights unless the user gives an order of importance, in which the first criterion
 * that differs by more than its tolerance (5 % of margin, half a distortion class, one step, two
 * hours) decides.
 *
 * <p>The choice is called clear only if it wins under at least 70 % of 2000 random weight sets
 * (seeded), stays the winner at the 5 and the 95 % strength of every route, and no other route is
 * as good in every criterion.
 */
final class RouteRanking {
  static final List<String> CRITERIA =
      List.of("strength margin", "distortion", "steps", "furnace hours");

  /** What each criterion may miss and still count as alike, of its range (assumed). */
  private static final double[] TOLERANCES = {0.05 / 0.30, 0.25, 0.25, 2.0 / 24};

  /** Margin over what is asked from which on more is worth nothing (assumed). */
  private static final double FULL_MARGIN = 0.30;

  /** Steps of the shop that count as the most (assumed). */
  private static final double MOST_STEPS = 5;

  /** Furnace hours that count as the most (assumed). */
  private static final double MOST_HOURS = 24;

  private static final int WEIGHT_SETS = 2000;
  private static final long SEED = 6061;

  /** Share of the weights from which on a choice is clear (assumed). */
  private static final double CLEAR_SHARE = 0.70;

  /** Standard deviations to the 5 % value of a normal distribution (standard). */
  private static final double FIVE_PERCENT = 1.645;

  /** Scores that differ by less are shown as the same number (rounding). */
  private static final double SAME = 0.01;

  private static final double ROUNDING = 1e-9;

  private final List<Entry> entries;
  private final List<String> order;

  /**
   * A route with its margin.
   *
   * @param route the route
   * @param margin relative margin at a number of standard deviations from the mean
   */
  record Entry(RouteResult route, ToDoubleFunction<Double> margin) {
    double[] scores(double deviations) {
      return new double[] {
        clamp(margin.applyAsDouble(deviations) / FULL_MARGIN),
        route.distortion(),
        clamp((MOST_STEPS - route.shopSteps()) / (MOST_STEPS - 1)),
        clamp(1 - route.furnaceHours() / MOST_HOURS)
      };
    }

    /** Whether another route scores the same in every criterion. */
    boolean asGoodAs(Entry other) {
      double[] own = scores(0);
      double[] others = other.scores(0);
      return IntStream.range(0, own.length).allMatch(i -> Math.abs(own[i] - others[i]) < SAME);
    }

    long questions() {
      return route.constraints().stream()
          .filter(constraint -> constraint.state() == RouteConstraint.State.NEEDS_ANSWER)
          .count();
    }

    private static double clamp(double value) {
      return Math.max(0, Math.min(1, value));
    }
  }

  RouteRanking(List<Entry> entries, List<String> order) {
    this.entries = List.copyOf(entries);
    this.order = List.copyOf(order);
  }

  /**
   * The best route, if there is one. Of several that are as good in every criterion it is the one
   * with the fewest open questions: a part that is there needs no other temper.
   */
  Optional<Entry> winner() {
    return winner(0, equal())
        .flatMap(
            best ->
                entries.stream()
                    .filter(entry -> entry.asGoodAs(best))
                    .min(Comparator.comparingLong(Entry::questions)));
  }

  /** Whether the user gave an order of importance. */
  boolean ordered() {
    return !order.isEmpty();
  }

  /** The best of the routes that are not as good as the winner. */
  Optional<Entry> runnerUp() {
    return winner()
        .flatMap(
            winner ->
                new RouteRanking(
                        entries.stream().filter(entry -> !entry.asGoodAs(winner)).toList(), order)
                    .winner());
  }

  /** Other routes that are as good as the winner in every criterion. */
  List<Entry> asGood() {
    return winner().stream()
        .flatMap(
            winner ->
                entries.stream().filter(entry -> !entry.equals(winner) && entry.asGoodAs(winner)))
        .toList();
  }

  private Optional<Entry> winner(double deviations, double[] weights) {
    List<Entry> left =
        entries.stream()
            .filter(entry -> entry.margin().applyAsDouble(deviations) >= 0)
            .filter(entry -> !dominated(entry, deviations))
            .toList();
    return order.isEmpty()
        ? left.stream().max(Comparator.comparingDouble(entry -> score(entry, deviations, weights)))
        : inOrder(left, deviations);
  }

  private boolean dominated(Entry entry, double deviations) {
    double[] own = entry.scores(deviations);
    return entries.stream()
        .filter(other -> other.margin().applyAsDouble(deviations) >= 0)
        .map(other -> other.scores(deviations))
        .anyMatch(other -> !Arrays.equals(other, own) && noWorse(other, own));
  }

  private static boolean noWorse(double[] other, double[] own) {
    return IntStream.range(0, own.length).allMatch(i -> other[i] >= own[i]);
  }

  private static double score(Entry entry, double deviations, double[] weights) {
    double[] scores = entry.scores(deviations);
    return IntStream.range(0, scores.length).mapToDouble(i -> weights[i] * scores[i]).sum();
  }

  private Optional<Entry> inOrder(List<Entry> left, double deviations) {
    List<Entry> remaining = new ArrayList<>(left);
    for (String criterion : order) {
      int i = CRITERIA.indexOf(criterion);
      double best =
          remaining.stream().mapToDouble(entry -> entry.scores(deviations)[i]).max().orElse(0);
      remaining.removeIf(entry -> entry.scores(deviations)[i] < best - TOLERANCES[i]);
    }
    return remaining.stream()
        .max(Comparator.comparingDouble(entry -> score(entry, deviations, equal())));
  }

  private static double[] equal() {
    return new double[] {0.25, 0.25, 0.25, 0.25};
  }

  /** Score of a route with equal weights. */
  static double score(Entry entry) {
    return score(entry, 0, equal());
  }

  /** Share of random weight sets under which the winner wins. */
  double share() {
    Optional<Entry> winner = winner();
    if (winner.isEmpty()) {
      return 0;
    }
    Random random = new Random(SEED);
    int wins = 0;
    for (int i = 0; i < WEIGHT_SETS; i++) {
      double[] weights = dirichlet(random);
      wins += beaten(winner.get(), weights) ? 0 : 1;
    }
    return (double) wins / WEIGHT_SETS;
  }

  /** Whether a route that is not as good in every criterion scores more under some weights. */
  private boolean beaten(Entry winner, double[] weights) {
    double best = score(winner, 0, weights) + ROUNDING;
    return entries.stream()
        .filter(entry -> entry.margin().applyAsDouble(0.0) >= 0 && !entry.asGoodAs(winner))
        .anyMatch(entry -> score(entry, 0, weights) > best);
  }

  private static double[] dirichlet(Random random) {
    double[] weights =
        IntStream.range(0, CRITERIA.size())
            .mapToDouble(i -> -Math.log(1 - random.nextDouble()))
            .toArray();
    double sum = Arrays.stream(weights).sum();
    return Arrays.stream(weights).map(weight -> weight / sum).toArray();
  }

  /**
   * Whether the choice stands alone: no other route is as good, it wins under enough of the weights
   * (where no order is given), and it wins at both ends of the strength.
   */
  boolean clear() {
    Optional<Entry> winner = winner();
    return winner.isPresent()
        && asGood().isEmpty()
        && (ordered() || share() >= CLEAR_SHARE)
        && atOtherStrengths().isEmpty();
  }

  /** What wins in place of the choice at an end of the strengths; empty where it wins at both. */
  Optional<String> atOtherStrengths() {
    return anotherAt(-FIVE_PERCENT, "low").or(() -> anotherAt(FIVE_PERCENT, "high"));
  }

  private Optional<String> anotherAt(double deviations, String end) {
    Optional<Entry> there = winner(deviations, equal());
    return there.equals(winner())
        ? Optional.empty()
        : Optional.of(
            "At the "
                + end
                + " end of the strengths "
                + there
                    .map(entry -> entry.route().name() + " would come first.")
                    .orElse("no route meets what is asked."));
  }

  /**
   * The smallest change of one weight (from 0.25) that gives another winner; empty if none does or
   * if an order decides instead of weights.
   */
  Optional<String> flip() {
    Optional<Entry> winner = winner();
    if (winner.isEmpty() || ordered()) {
      return Optional.empty();
    }
    String found = null;
    double smallest = Double.POSITIVE_INFINITY;
    for (int i = 0; i < CRITERIA.size(); i++) {
      for (int step = 0; step <= 100; step++) {
        double weight = step / 100.0;
        double change = Math.abs(weight - 0.25);
        if (change < smallest && beaten(winner.get(), withOne(i, weight))) {
          smallest = change;
          found = CRITERIA.get(i) + " at " + step + " % of the weight instead of 25 %";
        }
      }
    }
    return Optional.ofNullable(found);
  }

  private static double[] withOne(int which, double weight) {
    double[] weights = new double[CRITERIA.size()];
    Arrays.fill(weights, (1 - weight) / (CRITERIA.size() - 1));
    weights[which] = weight;
    return weights;
  }
}
