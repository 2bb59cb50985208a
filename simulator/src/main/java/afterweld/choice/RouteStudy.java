package afterweld.choice;

import afterweld.choice.answer.Judgement;
import afterweld.choice.answer.Requirement;
import afterweld.choice.answer.Verdict;
import afterweld.joint.JointSettings;
import afterweld.joint.JointStrength;
import afterweld.quantity.Check;
import afterweld.quantity.UnitSystem;
import afterweld.section.WeldSession;
import afterweld.weld.WeldCase;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * Weld before or after heat treatment: every route the case allows, simulated in full with the arc
 * efficiency of the case as written, held against its constraints and ranked.
 *
 * @param routes in the order they were tried
 * @param scores of the routes with equal weights, in their order; NaN for those that are out
 * @param choice name of the chosen route; empty if every route is out
 * @param clear whether the choice meets all that is asked, and holds for most weights and at both
 *     ends of the strength
 * @param why sentences on the choice beside its strengths
 * @param shelf what natural ageing alone brings back
 */
public record RouteStudy(
    List<RouteResult> routes,
    List<Double> scores,
    Optional<String> choice,
    boolean clear,
    List<String> why,
    List<Shelf> shelf) {
  /** Days, a week, a month and half a year on the shelf (assumed). */
  private static final double[] SHELF_DAYS = {1, 7, 30, 180};

  /** Copies the lists. */
  public RouteStudy {
    routes = List.copyOf(routes);
    scores = List.copyOf(scores);
    why = List.copyOf(why);
    shelf = List.copyOf(shelf);
  }

  /**
   * The joint after a time at room temperature, without an oven.
   *
   * @param days days
   * @param joint dressed flush
   * @param helps how it stands where this is longer than the case waits and the joint may then be
   *     chosen; else empty
   */
  public record Shelf(double days, JointStrength joint, Optional<Judgement> helps) {
    /** Refuses what it cannot be. */
    public Shelf {
      Check.notNegative("time on the shelf", days, "d");
    }
  }

  /**
   * Tries every route.
   *
   * @param session where welds that were computed are kept
   */
  public static RouteStudy of(
      WeldSession session,
      WeldCase weldCase,
      JointSettings joint,
      Requirement requirement,
      RouteSettings settings) {
    RouteTrial trial = new RouteTrial(session, weldCase, joint, requirement, settings);
    List<RouteTrial.Tried> alone =
        Arrays.stream(RouteKind.values())
            .parallel()
            .flatMap(kind -> trial.of(kind).stream())
            .toList();
    RouteResult leftAlone = alone.get(RouteKind.LEAVE.ordinal()).route();
    List<RouteTrial.Tried> tried = alone.stream().map(one -> one.beside(leftAlone)).toList();
    List<RouteResult> routes = tried.stream().map(RouteTrial.Tried::route).toList();
    List<Shelf> shelf = Arrays.stream(SHELF_DAYS).parallel().mapToObj(trial::shelf).toList();
    return requirement.asksStrength()
        ? ranked(routes, entries(tried, settings), settings, shelf)
        : asWritten(routes, RouteKind.asWritten(weldCase), shelf);
  }

  /** Where no strength is asked there is nothing to weigh routes by: the case stands. */
  private static RouteStudy asWritten(
      List<RouteResult> routes, RouteKind written, List<Shelf> shelf) {
    Optional<String> choice =
        routes.stream()
            .filter(route -> route.name().equals(written.label()) && route.allowed())
            .filter(route -> route.joint().withheld().isEmpty())
            .map(RouteResult::name)
            .findFirst();
    return new RouteStudy(
        routes,
        routes.stream().map(route -> Double.NaN).toList(),
        choice,
        met(routes, choice),
        RouteWords.notWeighed(routes, choice),
        shelf);
  }

  private static RouteStudy ranked(
      List<RouteResult> routes,
      List<RouteRanking.Entry> entries,
      RouteSettings settings,
      List<Shelf> shelf) {
    RouteRanking ranking = new RouteRanking(entries, settings.order());
    Optional<String> winner = ranking.winner().map(entry -> entry.route().name());
    boolean waitingWouldDo = winner.isPresent() && waitingWouldDo(routes, shelf);
    return new RouteStudy(
        routes,
        routes.stream().map(route -> score(entries, route)).toList(),
        winner,
        ranking.clear() && !waitingWouldDo && met(routes, winner),
        winner.isPresent()
            ? RouteWords.why(ranking, waitingWouldDo ? shelf : List.of())
            : RouteWords.noChoice(routes, shelf),
        shelf);
  }

  /** Whether the joint left alone would compete if it waited longer, and does not as it waits. */
  private static boolean waitingWouldDo(List<RouteResult> routes, List<Shelf> shelf) {
    return !competes(routes.get(RouteKind.LEAVE.ordinal()).judgement())
        && shelf.stream().flatMap(wait -> wait.helps().stream()).anyMatch(RouteStudy::competes);
  }

  private static boolean competes(Judgement judgement) {
    return judgement.verdict() == Verdict.MET || judgement.verdict() == Verdict.LIKELY;
  }

  private static boolean met(List<RouteResult> routes, Optional<String> choice) {
    return routes.stream()
        .filter(route -> choice.filter(route.name()::equals).isPresent())
        .filter(route -> route.strength().state() == RouteConstraint.State.MET)
        .anyMatch(route -> route.judgement().verdict() == Verdict.MET);
  }

  /** The chosen route. */
  public Optional<RouteResult> chosen() {
    return choice.flatMap(
        name -> routes.stream().filter(route -> route.name().equals(name)).findFirst());
  }

  /** Why the choice is what it is, with strengths in a system of units. */
  public List<String> why(UnitSystem units) {
    return Stream.concat(
            chosen().stream()
                .filter(route -> !route.strengths().isEmpty())
                .map(route -> route.text(route.strength(), units)),
            why.stream())
        .toList();
  }

  /**
   * The routes that compete: those that meet what is asked or, as every shop qualifies such a joint
   * with a coupon before it quenches a finished part, are likely to; where there is none of these,
   * those that may. A chance that the user names is kept to while a route reaches it.
   */
  private static List<RouteRanking.Entry> entries(
      List<RouteTrial.Tried> tried, RouteSettings settings) {
    List<RouteTrial.Tried> choosable = tried.stream().filter(RouteTrial.Tried::choosable).toList();
    return Stream.<Predicate<RouteTrial.Tried>>of(
            one -> settings.target().isPresent() && meets(one),
            one -> meets(one) || one.check().orElseThrow().strengthVerdict() == Verdict.LIKELY,
            one -> true)
        .map(tier -> choosable.stream().filter(tier).toList())
        .filter(tier -> !tier.isEmpty())
        .findFirst()
        .orElse(List.of())
        .stream()
        .map(one -> new RouteRanking.Entry(one.route(), one.check().orElseThrow()::margin))
        .toList();
  }

  private static boolean meets(RouteTrial.Tried one) {
    return one.route().strength().state() == RouteConstraint.State.MET;
  }

  private static double score(List<RouteRanking.Entry> entries, RouteResult route) {
    return entries.stream()
        .filter(entry -> entry.route().name().equals(route.name()))
        .mapToDouble(RouteRanking::score)
        .findFirst()
        .orElse(Double.NaN);
  }
}
