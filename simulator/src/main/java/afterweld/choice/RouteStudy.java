package afterweld.choice;

import afterweld.joint.JointSettings;
import afterweld.joint.JointStrength;
import afterweld.section.WeldCase;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Weld before or after heat treatment: every route the case allows, simulated in full with the arc
 * efficiency of the case as written, held against its constraints and ranked.
 *
 * @param routes in the order they were tried
 * @param scores of the routes with equal weights, in their order; NaN for those that are out
 * @param choice name of the chosen route; empty if every route is out
 * @param clear whether the choice holds for most weights and at both ends of the strength
 * @param why sentences on the choice
 * @param shelf what natural ageing alone brings back
 */
public record RouteStudy(
    List<RouteResult> routes,
    List<Double> scores,
    Optional<String> choice,
    boolean clear,
    List<String> why,
    List<Shelf> shelf) {
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
   */
  public record Shelf(double days, JointStrength joint) {}

  /** Tries every route. */
  public static RouteStudy of(
      WeldCase weldCase, JointSettings joint, Requirement requirement, RouteSettings settings) {
    RouteTrial trial = new RouteTrial(weldCase, joint, requirement, settings);
    List<RouteTrial.Tried> alone =
        Arrays.stream(RouteKind.values())
            .parallel()
            .flatMap(kind -> trial.of(kind).stream())
            .toList();
    RouteResult leftAlone = alone.get(RouteKind.LEAVE.ordinal()).route();
    List<RouteTrial.Tried> tried = alone.stream().map(one -> one.beside(leftAlone)).toList();
    List<RouteRanking.Entry> entries = entries(tried);
    RouteRanking ranking = new RouteRanking(entries, settings.order());
    return new RouteStudy(
        tried.stream().map(RouteTrial.Tried::route).toList(),
        tried.stream().map(one -> score(entries, one.route())).toList(),
        ranking.winner().map(entry -> entry.route().name()),
        ranking.clear(),
        RouteWords.why(ranking),
        Arrays.stream(SHELF_DAYS).parallel().mapToObj(trial::shelf).toList());
  }

  /**
   * The routes that compete: those that meet what is asked, or where none surely does, those that
   * may.
   */
  private static List<RouteRanking.Entry> entries(List<RouteTrial.Tried> tried) {
    List<RouteTrial.Tried> choosable =
        tried.stream().filter(one -> one.route().allowed() && one.choosable()).toList();
    boolean anyMeets = choosable.stream().anyMatch(one -> strong(one.route()));
    return choosable.stream()
        .filter(one -> !anyMeets || strong(one.route()))
        .map(one -> new RouteRanking.Entry(one.route(), one.margin()::margin))
        .toList();
  }

  private static boolean strong(RouteResult route) {
    return route.strength().state() == RouteConstraint.State.MET;
  }

  private static double score(List<RouteRanking.Entry> entries, RouteResult route) {
    return entries.stream()
        .filter(entry -> entry.route().name().equals(route.name()))
        .mapToDouble(RouteRanking::score)
        .findFirst()
        .orElse(Double.NaN);
  }
}
