package afterweld.choice;

import afterweld.joint.JointReport;
import afterweld.joint.JointSettings;
import afterweld.joint.JointStrength;
import afterweld.material.Element;
import afterweld.material.Temper;
import afterweld.section.Estimate;
import afterweld.section.SectionProfile;
import afterweld.section.SectionSimulation;
import afterweld.section.Side;
import afterweld.section.Station;
import afterweld.section.WeldCase;
import afterweld.section.Zone;
import afterweld.strength.Strength;
import afterweld.thermal.FurnaceStep;
import afterweld.thermal.FurnaceStep.Age;
import afterweld.thermal.FurnaceStep.Anneal;
import afterweld.thermal.FurnaceStep.SolutionTreat;
import afterweld.thermal.Pass;
import afterweld.thermal.PassHeat;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/**
 * Weld before or after heat treatment: every route the case allows, simulated in full with the arc
 * efficiency of the case as written, held against its constraints and ranked.
 *
 * <p>Where ageing follows without solution treatment the response of as-deposited weld metal is not
 * verified: the joint is computed with the weld metal as the model ages it and as welded, and the
 * lower value decides.
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
  private static final double DAY = 86400;
  private static final double HOUR = 3600;
  private static final double SHELF_DEFAULT = 30 * DAY;
  private static final double[] SHELF_DAYS = {1, 7, 30, 180};
  private static final double MUCH_MAGNESIUM = 3.0;

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
    return new Work(weldCase, joint, requirement, settings).study();
  }

  private record Tried(RouteResult route, StrengthMargin margin, boolean choosable) {}

  private static final class Work {
    private final WeldCase delivered;
    private final JointSettings jointSettings;
    private final Requirement requirement;
    private final RouteSettings settings;
    private final List<Pass> passes;

    Work(
        WeldCase weldCase,
        JointSettings jointSettings,
        Requirement requirement,
        RouteSettings settings) {
      this.delivered = weldCase;
      this.jointSettings = jointSettings;
      this.requirement = requirement;
      this.settings = settings;
      this.passes =
          SectionSimulation.heats(weldCase).stream().map(PassHeat::passAtThisEfficiency).toList();
    }

    RouteStudy study() {
      List<Tried> tried =
          Arrays.stream(RouteKind.values())
              .parallel()
              .flatMap(kind -> tried(kind).stream())
              .toList();
      List<RouteRanking.Entry> entries =
          tried.stream()
              .filter(one -> one.route().allowed() && one.choosable())
              .map(
                  one ->
                      new RouteRanking.Entry(
                          one.route(), deviations -> one.margin().margin(deviations)))
              .toList();
      RouteRanking ranking = new RouteRanking(entries, settings.order());
      return new RouteStudy(
          tried.stream().map(Tried::route).toList(),
          tried.stream().map(one -> score(entries, one.route())).toList(),
          ranking.winner().map(entry -> entry.route().name()),
          ranking.clear(),
          why(ranking, entries),
          Arrays.stream(SHELF_DAYS).parallel().mapToObj(this::shelf).toList());
    }

    private static double score(List<RouteRanking.Entry> entries, RouteResult route) {
      return entries.stream()
          .filter(entry -> entry.route().name().equals(route.name()))
          .mapToDouble(RouteRanking::score)
          .findFirst()
          .orElse(Double.NaN);
    }

    private Shelf shelf(double days) {
      WeldCase left = routeCase(delivered.left(), delivered.right(), List.of(), days * DAY);
      return new Shelf(days, JointReport.of(SectionSimulation.run(left), jointSettings).finished());
    }

    private Optional<Tried> tried(RouteKind kind) {
      Optional<List<FurnaceStep>> treatment = kind.treatment(delivered);
      Optional<Side> left = inTemper(delivered.left(), kind.temper());
      Optional<Side> right = inTemper(delivered.right(), kind.temper());
      if (treatment.isEmpty() || left.isEmpty() || right.isEmpty()) {
        return Optional.empty();
      }
      List<FurnaceStep> steps = treatment.get();
      double shelf =
          kind == RouteKind.OWN ? delivered.naturalAge() : steps.isEmpty() ? SHELF_DEFAULT : DAY;
      return Optional.of(simulated(kind, routeCase(left.get(), right.get(), steps, shelf)));
    }

    private WeldCase routeCase(Side left, Side right, List<FurnaceStep> steps, double naturalAge) {
      return new WeldCase(
          delivered.title(),
          left,
          right,
          delivered.joint(),
          delivered.preparation(),
          delivered.ring(),
          delivered.filler(),
          passes,
          delivered.reinforcement(),
          delivered.ambient(),
          delivered.depth(),
          naturalAge,
          steps,
          delivered.heatFlow(),
          List.of());
    }

    /** The side in a temper; work-hardened sides stay as they are. */
    private static Optional<Side> inTemper(Side side, Optional<String> temper) {
      if (temper.isEmpty() || !side.alloy().heatTreatable()) {
        return Optional.of(side);
      }
      Optional<Temper> found = side.alloy().temper(temper.get());
      return found.map(
          other ->
              new Side(side.alloy(), other, side.thickness(), side.width(), side.composition()));
    }

    private Tried simulated(RouteKind kind, WeldCase weldCase) {
      SectionProfile profile = SectionSimulation.run(weldCase);
      JointStrength aged = JointReport.of(profile, jointSettings).finished();
      boolean agedOnly = agedOnly(weldCase.afterWeld());
      Optional<JointStrength> asWelded =
          agedOnly
              ? Optional.of(
                  JointReport.of(withWeldMetalAsWelded(profile), jointSettings).finished())
              : Optional.empty();
      JointStrength decides = asWelded.filter(other -> tensile(other) < tensile(aged)).orElse(aged);
      int last = profile.states().size() - 1;
      LowestAverage lowest = new LowestAverage(profile, last);
      double hardness = lowest.of(Estimate::middle, Strength::hardness);
      StrengthMargin margin =
          new StrengthMargin(
              decides, requirement, hardness, lowest.of(Estimate::low, Strength::hardness));
      RouteResult route =
          new RouteResult(
              kind.label(),
              steps(weldCase),
              weldCase.afterWeld(),
              decides,
              asWelded.isPresent()
                  ? OptionalDouble.of(
                      decides.equals(aged) ? tensile(asWelded.get()) : tensile(aged))
                  : OptionalDouble.empty(),
              hardness,
              new RouteConstraints(delivered, profile, requirement, settings).all(margin),
              kind.steps(delivered),
              furnaceHours(weldCase.afterWeld()),
              solutions(weldCase.afterWeld()) ? 0.5 : 1,
              reasons(profile, agedOnly));
      return new Tried(route, margin, !(agedOnly && richFiller()));
    }

    private static double tensile(JointStrength joint) {
      return joint.tensile().orElse(Double.NaN);
    }

    private static boolean solutions(List<FurnaceStep> steps) {
      return steps.stream().anyMatch(SolutionTreat.class::isInstance);
    }

    private static boolean agedOnly(List<FurnaceStep> steps) {
      return !solutions(steps) && steps.stream().anyMatch(Age.class::isInstance);
    }

    private boolean richFiller() {
      return delivered
          .filler()
          .alloy()
          .filter(alloy -> alloy.composition().of(Element.MG) > MUCH_MAGNESIUM)
          .isPresent();
    }

    private static SectionProfile withWeldMetalAsWelded(SectionProfile profile) {
      return profile.withStations(
          profile.stations().stream()
              .map(station -> station.zone() == Zone.FUSION ? asWelded(station) : station)
              .toList());
    }

    private static Station asWelded(Station station) {
      List<Estimate> estimates = new ArrayList<>(station.estimates());
      for (int state = 2; state < estimates.size(); state++) {
        estimates.set(state, estimates.get(1));
      }
      return new Station(
          station.distance(),
          station.place(),
          station.zone(),
          station.peakTemperature(),
          estimates);
    }

    private static List<String> steps(WeldCase weldCase) {
      List<String> steps = new ArrayList<>();
      steps.add("weld in " + weldCase.left().temper().name());
      steps.add(FurnaceWords.time(weldCase.naturalAge()) + " at room temperature");
      weldCase.afterWeld().forEach(step -> steps.add(FurnaceWords.of(step)));
      return steps;
    }

    private static double furnaceHours(List<FurnaceStep> steps) {
      return steps.stream().mapToDouble(Work::furnaceHours).sum();
    }

    private static double furnaceHours(FurnaceStep step) {
      if (step instanceof SolutionTreat treat) {
        return treat.soak() / HOUR;
      }
      if (step instanceof Age age) {
        return age.time() / HOUR;
      }
      return step instanceof Anneal anneal ? anneal.time() / HOUR : 0;
    }

    private List<String> reasons(SectionProfile profile, boolean agedOnly) {
      List<String> reasons = new ArrayList<>();
      if (agedOnly) {
        reasons.add(
            "Without solution treatment the weld metal's response to ageing is not verified; the"
                + " lower of two values is shown.");
        if (richFiller()) {
          reasons.add("The filler has more than 3 % Mg: never the choice with ageing.");
        }
      }
      if (solutions(profile.weldCase().afterWeld())) {
        reasons.add(
            "Residual stress of the weld goes, that of the quench comes; the part moves in the"
                + " quench.");
      }
      if (!profile.weldCase().afterWeld().isEmpty()) {
        reasons.add(
            "A code's as-welded value governs unless the code allows the heat-treated one.");
      }
      boolean worked =
          !delivered.left().alloy().heatTreatable() || !delivered.right().alloy().heatTreatable();
      if (worked && !profile.weldCase().afterWeld().isEmpty()) {
        reasons.add("A work-hardened side gains nothing: for it the treatment is an anneal.");
      }
      return reasons;
    }

    private static List<String> why(RouteRanking ranking, List<RouteRanking.Entry> entries) {
      List<String> why = new ArrayList<>();
      Optional<RouteRanking.Entry> winner = ranking.winner();
      if (winner.isEmpty()) {
        return List.of("No route meets what is asked: see the constraint that is not met.");
      }
      RouteResult route = winner.get().route();
      why.add(route.name() + ": " + route.strength().text());
      if (route.open()) {
        why.add("It still needs an answer to the questions above.");
      }
      why.add(
          String.format(
              Locale.ROOT,
              "It comes first under %.0f %% of 2000 random weightings of margin, distortion, steps"
                  + " and furnace hours.",
              100 * ranking.share()));
      runnerUp(entries, route).ifPresent(next -> why.add("Next: " + next + "."));
      ranking.flip().ifPresent(change -> why.add("Another route would win with " + change + "."));
      return why;
    }

    private static Optional<String> runnerUp(List<RouteRanking.Entry> entries, RouteResult winner) {
      return IntStream.range(0, entries.size())
          .boxed()
          .filter(i -> !entries.get(i).route().name().equals(winner.name()))
          .max(
              (a, b) ->
                  Double.compare(
                      RouteRanking.score(entries.get(a)), RouteRanking.score(entries.get(b))))
          .map(i -> entries.get(i).route().name());
    }
  }
}
