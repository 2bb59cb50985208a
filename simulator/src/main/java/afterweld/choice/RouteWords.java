package afterweld.choice;

import afterweld.choice.schedule.FurnaceWords;
import afterweld.choice.schedule.SharedTreatment;
import afterweld.joint.JointStrength;
import afterweld.quantity.TimeWords;
import afterweld.section.AgedOnly;
import afterweld.section.SectionProfile;
import afterweld.thermal.furnace.FurnaceStep.SolutionTreat;
import afterweld.weld.Side;
import afterweld.weld.WeldCase;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** What is said about a route and about the choice, in sentences a customer understands. */
final class RouteWords {
  /** From this share of the weights on a route counts as first in all of them (assumed). */
  private static final double ALWAYS = 0.995;

  private static final String SOFTENS_FURTHER =
      "Lower in tensile strength than left alone: ageing softens the metal where the joint fails"
          + " still further, since the weld has overaged or annealed it already.";

  /** Less than half a per cent of strength nobody notices (assumed). */
  private static final double NOTICED = 0.995;

  /** From an even chance on a route would be worth having (assumed). */
  private static final double EVEN = 0.5;

  private RouteWords() {}

  /** What the shop does, in order. */
  static List<String> steps(WeldCase weldCase) {
    List<String> steps = new ArrayList<>();
    steps.add("weld " + tempers(weldCase));
    steps.add(FurnaceWords.time(weldCase.naturalAge()) + " at room temperature");
    weldCase.afterWeld().forEach(step -> steps.add(FurnaceWords.of(step)));
    return steps;
  }

  private static String tempers(WeldCase weldCase) {
    Side left = weldCase.left();
    Side right = weldCase.right();
    if (left.alloy().equals(right.alloy()) && left.temper().equals(right.temper())) {
      return "in " + left.temper().name();
    }
    return inTemper(left) + " to " + inTemper(right);
  }

  private static String inTemper(Side side) {
    return side.alloy().name() + " in " + side.temper().name();
  }

  /** What speaks for and against a route beside its numbers. */
  static List<String> reasons(SectionProfile profile) {
    WeldCase weldCase = profile.weldCase();
    List<String> reasons = new ArrayList<>();
    profile.warnings().stream()
        .filter(warning -> AgedOnly.is(weldCase.afterWeld()))
        .filter(warning -> warning.code().equals(AgedOnly.CODE))
        .forEach(warning -> reasons.add(warning.text()));
    if (weldCase.afterWeld().stream().anyMatch(SolutionTreat.class::isInstance)) {
      reasons.add(
          "Residual stress of the weld goes, that of the quench comes; the part moves in the"
              + " quench.");
      reasons.addAll(SharedTreatment.losses(weldCase));
    }
    if (!weldCase.afterWeld().isEmpty()) {
      reasons.add("A code's as-welded value governs unless the code allows the heat-treated one.");
      if (!weldCase.left().alloy().heatTreatable() || !weldCase.right().alloy().heatTreatable()) {
        reasons.add("A work-hardened side gains nothing: for it the treatment is an anneal.");
      }
    }
    return reasons;
  }

  /** Why a route that ages has a lower tensile strength than the weld left alone. */
  static List<String> weakerThan(RouteResult leftAlone, RouteResult route) {
    double alone = leftAlone.joint().tensile().orElse(Double.NaN);
    double tensile = route.joint().tensile().orElse(Double.NaN);
    boolean weaker = AgedOnly.is(route.treatment()) && tensile < NOTICED * alone;
    if (!weaker) {
      return List.of();
    }
    return List.of(
        route.rest() < leftAlone.rest()
            ? "Lower in tensile strength than left alone, since it is aged "
                + TimeWords.of(route.rest())
                + " after welding and the weld left alone has "
                + TimeWords.of(leftAlone.rest())
                + " to age at room temperature."
            : SOFTENS_FURTHER);
  }

  /** Why no route is weighed against another where no strength is asked. */
  static List<String> notWeighed(List<RouteResult> routes, Optional<String> choice) {
    if (routes.stream().noneMatch(route -> route.joint().withheld().isEmpty())) {
      return notComputed(routes);
    }
    return choice.isPresent()
        ? List.of(
            "No strength is asked, so there is nothing to weigh the routes by: the case stands as"
                + " it is written.")
        : List.of(
            "No strength is asked, and the case as written is ruled out: see the constraint that is"
                + " not met.");
  }

  private static List<String> notComputed(List<RouteResult> routes) {
    JointStrength joint = routes.get(RouteKind.LEAVE.ordinal()).joint();
    String why = joint.note();
    return List.of(
        "No route can be chosen: "
            + (joint.withheld().isEmpty() ? why + "." : "the joint is " + why));
  }

  /** Why no route is chosen where a strength is asked, and whether waiting longer helps. */
  static List<String> noChoice(List<RouteResult> routes, List<RouteStudy.Shelf> shelf) {
    if (routes.stream().allMatch(route -> route.joint().middle().isEmpty())) {
      return notComputed(routes);
    }
    List<String> said = new ArrayList<>();
    String barred = barring(routes);
    said.add(
        barred.isEmpty()
            ? "No route is as likely as not to meet what is asked: see the constraints, and what"
                + " would be met."
            : "What would meet it is barred, by " + barred + ": see the constraints.");
    waiting(shelf).ifPresent(said::add);
    return said;
  }

  /** What rules out the routes that would as likely as not be strong enough, by name. */
  private static String barring(List<RouteResult> routes) {
    return routes.stream()
        .filter(route -> route.judgement().chance().orElse(0) >= EVEN && !route.allowed())
        .flatMap(route -> route.constraints().stream())
        .filter(constraint -> constraint.state() == RouteConstraint.State.NOT_MET)
        .map(RouteConstraint::name)
        .distinct()
        .collect(Collectors.joining(" and "));
  }

  private static Optional<String> waiting(List<RouteStudy.Shelf> shelf) {
    Map<String, String> helping = new LinkedHashMap<>();
    shelf.forEach(
        wait -> wait.helps().ifPresent(one -> helping.putIfAbsent(one.words(), days(wait))));
    return helping.values().stream()
        .findFirst()
        .map(
            first ->
                "Waiting at room temperature helps: left alone it is "
                    + helping.entrySet().stream()
                        .map(wait -> wait.getKey() + " after " + wait.getValue())
                        .collect(Collectors.joining(", "))
                    + ". Write the wait as natural_age, such as natural_age: "
                    + first
                    + ".");
  }

  private static String days(RouteStudy.Shelf wait) {
    return wait.days() == 1 ? "1 day" : String.format(Locale.ROOT, "%.0f days", wait.days());
  }

  /**
   * Why the winner is the choice, beside its strengths.
   *
   * @param waits at room temperature that would let the joint left alone compete; else none
   */
  static List<String> why(RouteRanking ranking, List<RouteStudy.Shelf> waits) {
    RouteRanking.Entry winner = ranking.winner().orElseThrow();
    List<String> why = new ArrayList<>();
    winner.route().constraints().stream()
        .filter(constraint -> constraint.state() == RouteConstraint.State.NEEDS_ANSWER)
        .filter(constraint -> !constraint.name().equals(RouteConstraint.STRENGTH))
        .forEach(constraint -> why.add("Still to be answered: " + constraint.text()));
    why.add(
        ranking.ordered()
            ? "It comes first in the order of importance asked for."
            : share(ranking));
    ranking.atOtherStrengths().ifPresent(why::add);
    ranking
        .asGood()
        .forEach(
            other ->
                why.add(
                    "As good in all that is weighed (a margin over 30 % counts no more): "
                        + other.route().name()
                        + ". Take the one that is easier to get done."));
    ranking.runnerUp().ifPresent(next -> why.add("Next: " + next.route().name() + "."));
    ranking.flip().ifPresent(change -> why.add("Another route would win with " + change + "."));
    waiting(waits).ifPresent(why::add);
    return why;
  }

  private static String share(RouteRanking ranking) {
    double share = ranking.share();
    String ways = "weigh margin, distortion, steps and furnace hours";
    return share >= ALWAYS && ranking.flip().isEmpty()
        ? "It comes first whichever way you " + ways + "."
        : String.format(
            Locale.ROOT, "It comes first in %.0f of 100 ways to " + ways + ".", 100 * share);
  }
}
