package afterweld.choice.schedule;

import afterweld.choice.answer.Objection;
import afterweld.choice.practice.HardeningAge;
import afterweld.choice.practice.StandardTreatment;
import afterweld.quantity.BothUnits;
import afterweld.section.BaseTrial;
import afterweld.section.CoolAgeing;
import afterweld.thermal.furnace.FurnaceStep;
import afterweld.thermal.furnace.FurnaceStep.Age;
import afterweld.thermal.furnace.FurnaceStep.NaturalAge;
import afterweld.thermal.furnace.FurnaceStep.Quench;
import afterweld.thermal.furnace.FurnaceStep.SolutionTreat;
import afterweld.thermal.furnace.QuenchMedium;
import afterweld.weld.Side;
import afterweld.weld.WeldCase;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;

/**
 * What each base keeps of the strength that its own schedule would give it, computed without the
 * weld; of two bases in one furnace one may suffer.
 */
public final class SharedTreatment {
  /** A base that keeps this share of what its own schedule gives does not suffer (assumed). */
  private static final double SUITED = 0.97;

  /** A schedule that leaves a base less than this does not serve it (assumed). */
  private static final double SERVED = 0.90;

  /** Cold water, K: 25 °C (common practice). */
  private static final double COLD_WATER = 298.15;

  private static final FurnaceStep NO_WAIT = new NaturalAge(0);

  private SharedTreatment() {}

  /**
   * A remark for each base that loses by the schedule; an objection where one of two loses much.
   *
   * @param clean whether nothing else stands against the schedule: else a single alloy that loses
   *     by it is no news
   */
  static List<Objection> of(WeldCase weldCase, boolean clean) {
    if (!dissolves(weldCase) || !(clean || unlike(weldCase))) {
      return List.of();
    }
    boolean meant =
        weldCase.afterWeld().stream().anyMatch(step -> step instanceof Age age && age.overage());
    List<Objection> found = new ArrayList<>();
    shortfalls(weldCase)
        .forEach(
            loss ->
                found.add(
                    loss.isMuch() && unlike(weldCase) && !meant
                        ? Objection.objected(loss.sentence(true))
                        : Objection.noted(loss.sentence(unlike(weldCase)))));
    warmWater(weldCase).ifPresent(found::add);
    return found;
  }

  /** The sentences on what two different bases lose; empty for one alloy. */
  public static List<String> losses(WeldCase weldCase) {
    return dissolves(weldCase) && unlike(weldCase)
        ? shortfalls(weldCase).map(loss -> loss.sentence(true)).toList()
        : List.of();
  }

  private static boolean dissolves(WeldCase weldCase) {
    return weldCase.afterWeld().stream().anyMatch(SolutionTreat.class::isInstance);
  }

  private static boolean unlike(WeldCase weldCase) {
    return !weldCase.left().alloy().equals(weldCase.right().alloy());
  }

  /**
   * @param slow whether it is wrought metal that ages cooler than the model is matched to, so that
   *     the loss is overstated
   */
  private record Loss(Side side, double kept, double own, String aged, boolean slow) {
    double share() {
      return kept / own;
    }

    boolean isMuch() {
      return share() < SERVED - (slow ? CoolAgeing.COMPUTED_SHORT : 0);
    }

    String sentence(boolean unlike) {
      String name = side.alloy().name();
      return unlike
          ? "The schedule does not suit both bases: "
              + name
              + " suffers, with "
              + BothUnits.stress(kept)
              + " yield in place of "
              + BothUnits.stress(own)
              + " by its own schedule"
              + aged
              + "."
          : name
              + " comes to "
              + BothUnits.stress(kept)
              + " yield by this schedule, to "
              + BothUnits.stress(own)
              + " by the one that its T6 is computed from"
              + aged
              + ".";
    }
  }

  private static Stream<Loss> shortfalls(WeldCase weldCase) {
    return Stream.of(weldCase.left(), weldCase.right())
        .distinct()
        .flatMap(side -> loss(weldCase.afterWeld(), side).stream());
  }

  private static Optional<Loss> loss(List<FurnaceStep> steps, Side side) {
    if (usualAndComputedSlow(steps, side)) {
      return Optional.empty();
    }
    boolean ages = steps.stream().anyMatch(Age.class::isInstance);
    return (ages ? StandardTreatment.full(side) : StandardTreatment.naturallyAged(side))
        .map(own -> waitingAs(steps, own))
        .map(
            own ->
                new Loss(
                    side,
                    yieldOf(side, steps),
                    yieldOf(side, own),
                    schedule(own),
                    !side.alloy().casting() && computedSlow(steps, side)))
        .filter(loss -> loss.share() < SUITED);
  }

  /** An alloy's own schedule with the case's wait before ageing: that is not what is compared. */
  private static List<FurnaceStep> waitingAs(List<FurnaceStep> steps, List<FurnaceStep> own) {
    OptionalInt ageing = HardeningAge.place(steps);
    if (ageing.isEmpty()) {
      return own;
    }
    FurnaceStep before = ageing.getAsInt() > 0 ? steps.get(ageing.getAsInt() - 1) : NO_WAIT;
    FurnaceStep wait = before instanceof NaturalAge ? before : NO_WAIT;
    return own.stream().map(step -> step instanceof NaturalAge ? wait : step).toList();
  }

  private static String schedule(List<FurnaceStep> own) {
    String dissolved =
        own.get(0) instanceof SolutionTreat treat
            ? "solution treated at " + BothUnits.temperature(treat.temperature())
            : "";
    return HardeningAge.place(own).stream()
        .mapToObj(place -> (Age) own.get(place))
        .map(
            age ->
                " ("
                    + dissolved
                    + ", aged "
                    + FurnaceWords.time(age.time())
                    + " at "
                    + BothUnits.temperature(age.temperature())
                    + ")")
        .findFirst()
        .orElse("");
  }

  /** What the trade ages long enough, and the model too slowly, is not held against a schedule. */
  private static boolean usualAndComputedSlow(List<FurnaceStep> steps, Side side) {
    return computedSlow(steps, side)
        && hardening(steps).noneMatch(age -> FurnaceObjections.isShort(age, side));
  }

  private static boolean computedSlow(List<FurnaceStep> steps, Side side) {
    return hardening(steps).anyMatch(age -> CoolAgeing.isSlow(side, age));
  }

  private static Stream<Age> hardening(List<FurnaceStep> steps) {
    return HardeningAge.place(steps).stream().mapToObj(place -> (Age) steps.get(place));
  }

  private static double yieldOf(Side side, List<FurnaceStep> steps) {
    return BaseTrial.of(side, steps).yield();
  }

  /** What wrought metal loses in water that is warm for the sake of the casting beside it. */
  private static Optional<Objection> warmWater(WeldCase weldCase) {
    List<FurnaceStep> cold =
        weldCase.afterWeld().stream().map(SharedTreatment::inColdWater).toList();
    if (!weldCase.hasCasting() || cold.equals(weldCase.afterWeld())) {
      return Optional.empty();
    }
    return Stream.of(weldCase.left(), weldCase.right())
        .filter(side -> side.alloy().schedule().isPresent() && !side.alloy().casting())
        .findFirst()
        .map(
            side ->
                Objection.noted(
                    "Warm water spares the casting; "
                        + side.alloy().name()
                        + " keeps "
                        + BothUnits.stress(yieldOf(side, weldCase.afterWeld()))
                        + " yield of the "
                        + BothUnits.stress(yieldOf(side, cold))
                        + " it would have from cold water (computed)."));
  }

  private static FurnaceStep inColdWater(FurnaceStep step) {
    return step instanceof Quench quench && quench.medium() == QuenchMedium.WATER
        ? new Quench(quench.medium(), COLD_WATER, quench.delay())
        : step;
  }
}
