package afterweld.choice;

import afterweld.choice.RouteConstraint.State;
import afterweld.choice.RouteSettings.Box;
import afterweld.choice.answer.Objection;
import afterweld.choice.answer.Remark;
import afterweld.quantity.BothUnits;
import afterweld.quantity.UnitSystem;
import afterweld.section.SectionProfile;
import afterweld.thermal.furnace.FurnaceStep;
import afterweld.thermal.furnace.FurnaceStep.SolutionTreat;
import afterweld.weld.Side;
import afterweld.weld.WeldCase;
import afterweld.weldmetal.FurnaceMargin;
import afterweld.weldmetal.WeldPool;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** The hard conditions of one route, one by one, with their numbers. */
final class RouteConstraints {

  private final WeldCase delivered;
  private final SectionProfile profile;
  private final RequirementCheck check;
  private final RouteSettings settings;
  private final WeldCase weldCase;
  private final boolean solution;
  private final boolean furnace;

  /**
   * Conditions of a route.
   *
   * @param delivered the case as the user gave it
   * @param profile the route simulated
   * @param check its joint against what is asked
   */
  RouteConstraints(
      WeldCase delivered, SectionProfile profile, RequirementCheck check, RouteSettings settings) {
    this.delivered = delivered;
    this.profile = profile;
    this.check = check;
    this.settings = settings;
    this.weldCase = profile.weldCase();
    List<FurnaceStep> steps = weldCase.afterWeld();
    this.solution = steps.stream().anyMatch(SolutionTreat.class::isInstance);
    this.furnace = !steps.isEmpty();
  }

  /** All of them, strength first. */
  List<RouteConstraint> all() {
    List<RouteConstraint> all = new ArrayList<>();
    all.add(strength());
    melting().ifPresent(all::add);
    check.named().forEach((name, remark) -> all.add(of(name, remark)));
    furnaceSize().ifPresent(all::add);
    distortion().ifPresent(all::add);
    all.addAll(tempers());
    check.objections().stream().map(RouteConstraints::of).forEach(all::add);
    return all;
  }

  private static RouteConstraint of(String name, Remark remark) {
    return new RouteConstraint(name, State.of(remark.verdict()), remark.reason());
  }

  private static RouteConstraint of(Objection objection) {
    String name =
        switch (objection.subject()) {
          case FILLER -> "filler";
          case HEAT_TREATMENT -> "furnace schedule";
        };
    return new RouteConstraint(name, State.NOT_MET, objection.text());
  }

  private RouteConstraint strength() {
    if (!profile.soundness().sound()) {
      return new RouteConstraint(
          RouteConstraint.STRENGTH,
          profile.soundness().notSound() ? State.NOT_MET : State.NEEDS_ANSWER,
          "The joint is " + profile.soundness().note());
    }
    if (check.strengths().isEmpty()) {
      return new RouteConstraint(RouteConstraint.STRENGTH, State.MET, "No strength is asked.");
    }
    String text = RouteResult.text(check.strengths(), check.joint(), UnitSystem.METRIC);
    return new RouteConstraint(RouteConstraint.STRENGTH, strengthState(), text);
  }

  /** A chance that the user names decides; else the word does. */
  private State strengthState() {
    State state = State.of(check.strengthVerdict());
    if (settings.target().isEmpty() || check.chance().isEmpty() || state == State.NOT_MET) {
      return state;
    }
    boolean reached = check.chance().getAsDouble() >= settings.target().getAsDouble();
    return reached ? State.MET : State.NEEDS_ANSWER;
  }

  private Optional<RouteConstraint> melting() {
    OptionalDouble hottest =
        weldCase.afterWeld().stream()
            .filter(SolutionTreat.class::isInstance)
            .mapToDouble(step -> ((SolutionTreat) step).temperature())
            .max();
    if (hottest.isEmpty()) {
      return Optional.empty();
    }
    if (WeldPool.meltingPossibleFrom450(profile.weldMetal().composition())) {
      return Optional.of(
          new RouteConstraint(
              "melting",
              State.NEEDS_ANSWER,
              "Weld metal with so much magnesium may begin to melt from 450 °C (840 °F) on: try it"
                  + " on a piece of the weld."));
    }
    double solidus =
        Math.min(
            profile.weldMetal().solidus(), WeldPool.baseSolidus(weldCase.left(), weldCase.right()));
    double room = solidus - hottest.getAsDouble() - FurnaceMargin.TOLERANCE;
    String text =
        String.format(
            Locale.ROOT,
            "Solution treatment at %s with a tolerance of %s; lowest solidus %s: %s to spare, %s"
                + " wanted.",
            BothUnits.temperature(hottest.getAsDouble()),
            BothUnits.difference(FurnaceMargin.TOLERANCE),
            BothUnits.temperature(solidus),
            BothUnits.difference(room),
            BothUnits.difference(FurnaceMargin.MARGIN));
    return Optional.of(
        new RouteConstraint(
            "melting",
            FurnaceMargin.allows(hottest.getAsDouble(), solidus) ? State.MET : State.NOT_MET,
            text));
  }

  private Optional<RouteConstraint> furnaceSize() {
    if (!furnace) {
      return Optional.empty();
    }
    State oven = fits(settings.furnace());
    State both = solution ? worse(oven, fits(settings.tank())) : oven;
    String text =
        switch (both) {
          case MET -> "The part goes into the furnace" + (solution ? " and the tank." : ".");
          case NOT_MET ->
              "The part does not go into the "
                  + (oven == State.NOT_MET ? "furnace." : "quench tank.");
          case NEEDS_ANSWER ->
              "Does the part go into the furnace"
                  + (solution ? " and the quench tank" : "")
                  + "? Give "
                  + String.join(", ", missingSizes())
                  + ".";
        };
    return Optional.of(new RouteConstraint("furnace size", both, text));
  }

  private List<String> missingSizes() {
    List<String> missing = new ArrayList<>();
    if (settings.part().isEmpty()) {
      missing.add("the part's size");
    }
    if (settings.furnace().isEmpty()) {
      missing.add("the furnace's size");
    }
    if (solution && settings.tank().isEmpty()) {
      missing.add("the tank's size");
    }
    return missing;
  }

  private State fits(Optional<Box> room) {
    if (room.isEmpty() || settings.part().isEmpty()) {
      return State.NEEDS_ANSWER;
    }
    return room.get().holds(settings.part().get()) ? State.MET : State.NOT_MET;
  }

  private static State worse(State one, State other) {
    if (one == State.NOT_MET || other == State.NOT_MET) {
      return State.NOT_MET;
    }
    return one == State.MET ? other : one;
  }

  private Optional<RouteConstraint> distortion() {
    if (!solution) {
      return Optional.empty();
    }
    OptionalDouble allowed = settings.distortionAllowance();
    OptionalDouble expected = settings.expectedMovement();
    if (allowed.isEmpty() || expected.isEmpty()) {
      return Optional.of(
          new RouteConstraint(
              "quench movement",
              State.NEEDS_ANSWER,
              "How far will the part move in the quench, and how much can machining still take?"));
    }
    State state = expected.getAsDouble() <= allowed.getAsDouble() ? State.MET : State.NOT_MET;
    String text =
        BothUnits.length(expected.getAsDouble())
            + " expected, "
            + BothUnits.length(allowed.getAsDouble())
            + " allowed.";
    return Optional.of(new RouteConstraint("quench movement", state, text));
  }

  /** A question for each side that is welded in another temper than it is delivered in. */
  private List<RouteConstraint> tempers() {
    return Stream.of(
            temper(weldCase.left(), delivered.left()), temper(weldCase.right(), delivered.right()))
        .flatMap(Optional::stream)
        .distinct()
        .toList();
  }

  private Optional<RouteConstraint> temper(Side welded, Side asDelivered) {
    if (welded.temper().equals(asDelivered.temper())) {
      return Optional.empty();
    }
    String name = welded.temper().name();
    String needed = welded.alloy().name() + " in " + name;
    List<String> available = settings.tempersAvailable();
    if (available.isEmpty()) {
      return Optional.of(
          new RouteConstraint("temper", State.NEEDS_ANSWER, "Can " + needed + " be had?"));
    }
    boolean listed = available.stream().anyMatch(one -> one.equalsIgnoreCase(name));
    return Optional.of(
        new RouteConstraint(
            "temper",
            listed ? State.MET : State.NOT_MET,
            needed + (listed ? " can be had." : " is not among the tempers that can be had.")));
  }
}
