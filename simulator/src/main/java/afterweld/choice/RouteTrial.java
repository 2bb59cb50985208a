package afterweld.choice;

import afterweld.choice.answer.Judgement;
import afterweld.choice.answer.Objection;
import afterweld.choice.answer.Requirement;
import afterweld.choice.answer.Verdict;
import afterweld.choice.schedule.ScheduleCheck;
import afterweld.joint.JointReport;
import afterweld.joint.JointSettings;
import afterweld.joint.JointStrength;
import afterweld.joint.JointStrength.Bead;
import afterweld.material.Temper;
import afterweld.quantity.UnitSystem;
import afterweld.section.Estimate;
import afterweld.section.SectionProfile;
import afterweld.section.WeldSession;
import afterweld.thermal.HeatInputException;
import afterweld.thermal.Pass;
import afterweld.thermal.PassHeat;
import afterweld.thermal.furnace.FurnaceStep;
import afterweld.thermal.furnace.FurnaceStep.Age;
import afterweld.thermal.furnace.FurnaceStep.Anneal;
import afterweld.thermal.furnace.FurnaceStep.SolutionTreat;
import afterweld.weld.Side;
import afterweld.weld.WeldCase;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Simulates one route after another with the heat of the case as written. */
final class RouteTrial {
  private static final double DAY = 86400;
  private static final double HOUR = 3600;
  private static final int AS_WELDED = 1;

  private final WeldSession session;
  private final WeldCase delivered;
  private final JointSettings jointSettings;
  private final Requirement requirement;
  private final RouteSettings settings;
  private final List<Pass> passes;

  RouteTrial(
      WeldSession session,
      WeldCase weldCase,
      JointSettings jointSettings,
      Requirement requirement,
      RouteSettings settings) {
    this.session = session;
    this.delivered = weldCase;
    this.jointSettings = jointSettings;
    this.requirement = requirement;
    this.settings = settings;
    this.passes = session.heats(weldCase).stream().map(PassHeat::passAtThisEfficiency).toList();
  }

  /**
   * A route that was simulated.
   *
   * @param check its joint against what is asked; empty where its heat makes no weld
   * @param choosable whether it may be the choice
   */
  record Tried(RouteResult route, Optional<RequirementCheck> check, boolean choosable) {
    Tried beside(RouteResult leftAlone) {
      return new Tried(route.and(RouteWords.weakerThan(leftAlone, route)), check, choosable);
    }
  }

  /** The joint left at room temperature for a number of days. */
  RouteStudy.Shelf shelf(double days) {
    WeldCase left = routeCase(delivered.left(), delivered.right(), List.of(), days * DAY);
    Tried tried = simulated(RouteKind.LEAVE, left);
    boolean longer = days * DAY > delivered.naturalAge();
    return new RouteStudy.Shelf(
        days,
        tried.route().joint(),
        longer && tried.choosable() && tried.check().orElseThrow().margin(0) >= 0
            ? Optional.of(tried.route().judgement())
            : Optional.empty());
  }

  /** A route; empty if it does not exist for this case or only repeats another. */
  Optional<Tried> of(RouteKind kind) {
    Optional<List<FurnaceStep>> treatment = kind.treatment(delivered);
    Optional<Side> left = inTemper(delivered.left(), kind.temper());
    Optional<Side> right = inTemper(delivered.right(), kind.temper());
    if (treatment.isEmpty() || left.isEmpty() || right.isEmpty()) {
      return Optional.empty();
    }
    boolean asDelivered =
        left.get().equals(delivered.left()) && right.get().equals(delivered.right());
    if (kind == RouteKind.T4_AGE && asDelivered) {
      return Optional.empty();
    }
    List<FurnaceStep> steps = treatment.get();
    double rest = restBefore(steps);
    WeldCase route = routeCase(left.get(), right.get(), steps, rest);
    try {
      return Optional.of(simulated(kind, route));
    } catch (HeatInputException fault) {
      if (asDelivered) {
        throw fault;
      }
      return Optional.of(unmade(kind, route, fault));
    }
  }

  /** A route whose parts, in another temper, lead the heat of the case away otherwise. */
  private Tried unmade(RouteKind kind, WeldCase weldCase, HeatInputException fault) {
    String why = "In this temper the heat of the case makes no weld: " + fault.getMessage() + ".";
    RouteResult route =
        new RouteResult(
            kind.label(),
            RouteWords.steps(weldCase),
            weldCase.naturalAge(),
            weldCase.afterWeld(),
            JointStrength.withheld(AS_WELDED, Bead.FLUSH, jointSettings.gauge(), why),
            Double.NaN,
            new Judgement(Verdict.NOT_MET, OptionalDouble.empty(), List.of(why)),
            List.of(),
            List.of(
                new RouteConstraint(RouteConstraint.STRENGTH, RouteConstraint.State.NOT_MET, why)),
            kind.steps(delivered),
            furnaceHours(weldCase.afterWeld()),
            1,
            List.of());
    return new Tried(route, Optional.empty(), false);
  }

  /**
   * How long a route rests after welding: what the case says or takes, so that as welded is one
   * state everywhere; a day before a furnace where the case names no furnace.
   */
  private double restBefore(List<FurnaceStep> steps) {
    return steps.isEmpty() || !delivered.afterWeld().isEmpty() ? delivered.naturalAge() : DAY;
  }

  private WeldCase routeCase(Side left, Side right, List<FurnaceStep> steps, double naturalAge) {
    return delivered
        .change()
        .sides(left, right)
        .passes(passes)
        .naturalAge(naturalAge)
        .afterWeld(steps)
        .notes(List.of())
        .done();
  }

  /** The side in a temper; work-hardened sides stay as they are. */
  private static Optional<Side> inTemper(Side side, Optional<String> temper) {
    if (temper.isEmpty() || !side.alloy().heatTreatable()) {
      return Optional.of(side);
    }
    Optional<Temper> found = side.alloy().temper(temper.get());
    return found.map(side::inTemper);
  }

  /** The weld left alone, at the stations of the case as written. */
  private SectionProfile leftAlone(WeldCase weldCase) {
    return session.profile(weldCase.withAfterWeld(delivered.afterWeld())).asWelded();
  }

  private Tried simulated(RouteKind kind, WeldCase weldCase) {
    SectionProfile profile =
        kind == RouteKind.LEAVE ? leftAlone(weldCase) : session.profile(weldCase);
    Optional<String> refused = refused(weldCase);
    JointStrength finished = JointReport.finished(profile, jointSettings.gauge());
    JointStrength joint = refused.map(why -> without(finished, why)).orElse(finished);
    RequirementCheck check = RequirementCheck.of(profile, joint, requirement);
    RouteResult route =
        new RouteResult(
            kind.label(),
            RouteWords.steps(weldCase),
            weldCase.naturalAge(),
            weldCase.afterWeld(),
            joint,
            refused.isPresent() ? Double.NaN : lowestHardness(profile),
            check.judgement(UnitSystem.METRIC),
            profile.soundness().sound() ? check.strengths() : List.of(),
            new RouteConstraints(delivered, profile, check, settings).all(),
            kind.steps(delivered),
            furnaceHours(weldCase.afterWeld()),
            solutions(weldCase.afterWeld()) ? 0.5 : 1,
            RouteWords.reasons(profile));
    return new Tried(route, Optional.of(check), profile.soundness().sound() && route.allowed());
  }

  private static double lowestHardness(SectionProfile profile) {
    return profile.soundness().sound() ? LowestHardness.of(profile, Estimate::middle) : Double.NaN;
  }

  /** Why the furnace must not be run at all, as the command for that case alone would say. */
  private Optional<String> refused(WeldCase weldCase) {
    return ScheduleCheck.of(weldCase, requirement).stream()
        .filter(one -> one.severity() == Objection.Severity.REFUSED)
        .map(Objection::text)
        .findFirst();
  }

  private static JointStrength without(JointStrength joint, String why) {
    return JointStrength.withheld(joint.state(), joint.bead(), joint.gauge(), why);
  }

  private static boolean solutions(List<FurnaceStep> steps) {
    return steps.stream().anyMatch(SolutionTreat.class::isInstance);
  }

  private static double furnaceHours(List<FurnaceStep> steps) {
    return steps.stream().mapToDouble(RouteTrial::furnaceHours).sum();
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
}
