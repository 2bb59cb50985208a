package afterweld.section;

import afterweld.quantity.BothUnits;
import afterweld.strength.Strength;
import afterweld.thermal.furnace.FurnaceStep;
import afterweld.thermal.furnace.FurnaceStep.Age;
import afterweld.thermal.furnace.FurnaceStep.SolutionTreat;
import afterweld.weld.Warning;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Ageing after welding without solution treatment promises three metals no more strength than they
 * had before it:
 *
 * <ul>
 *   <li>Weld metal: how it answers as deposited is not verified, and the model probably shows too
 *       much.
 *   <li>Metal that was welded with its hardening needles (T6, T5) and that the weld annealed or
 *       overaged: what the needles held lies in coarse precipitates, which ageing does not dissolve
 *       ({@link ZoneRule}).
 *   <li>Metal delivered aged (T6, T5) that the weld left as it was: T5 hardens less than T6 for its
 *       slow cooling at the press, which no second ageing makes good, and T6 has its ageing behind
 *       it (common practice; the model lets both rise).
 * </ul>
 *
 * <p>Applied once, where strengths are computed, so that every reader gets the same number. That T6
 * which is only aged stays near as welded is common practice.
 */
public final class AgedOnly {
  /** The code of the warning that it changed a number. */
  public static final String CODE = "aged-only";

  private static final int BEFORE_STEPS = 2;
  private static final int NEVER = -1;
  private static final double NOTICED = 1e-3;

  /** Where nothing is held back. */
  static final AgedOnly NOTHING = new AgedOnly(NEVER);

  private final int beforeAgeing;

  private AgedOnly(int beforeAgeing) {
    this.beforeAgeing = beforeAgeing;
  }

  /** The rule for the steps after a weld. */
  static AgedOnly of(List<FurnaceStep> steps) {
    int ageing = 0;
    while (is(steps) && !(steps.get(ageing) instanceof Age)) {
      ageing++;
    }
    return new AgedOnly(is(steps) ? BEFORE_STEPS + ageing - 1 : NEVER);
  }

  /** Whether steps age without dissolving first. */
  public static boolean is(List<FurnaceStep> steps) {
    return steps.stream().noneMatch(SolutionTreat.class::isInstance)
        && steps.stream().anyMatch(Age.class::isInstance);
  }

  /**
   * Strengths of such metal, none after the ageing above that before it.
   *
   * @param strengths two before the first step (the second as welded), then one after each step
   */
  List<Strength> held(List<Strength> strengths) {
    List<Strength> held = new ArrayList<>();
    for (int state = 0; state < strengths.size(); state++) {
      Strength strength = strengths.get(state);
      held.add(limits(state) ? lower(strength, strengths.get(beforeAgeing)) : strength);
    }
    return held;
  }

  /** Whether a state, by its place in {@link #held}, comes after the ageing began. */
  boolean limits(int state) {
    return beforeAgeing != NEVER && state > beforeAgeing;
  }

  /** The lower of two strengths, value by value. */
  static Strength lower(Strength one, Strength other) {
    return new Strength(
        Math.min(one.yield(), other.yield()),
        Math.min(one.tensile(), other.tensile()),
        Math.min(one.hardness(), other.hardness()));
  }

  /** What is said where the rule changed a number; empty where it did not. */
  static Optional<Warning> warning(List<StationRun> runs) {
    List<StationRun> held = runs.stream().filter(StationRun::heldBack).toList();
    List<Metal> metals =
        Stream.of(Metal.values()).filter(metal -> held.stream().anyMatch(metal.in)).toList();
    return metals.isEmpty() ? Optional.empty() : Optional.of(about(metals));
  }

  private static Warning about(List<Metal> metals) {
    List<String> names = metals.stream().map(metal -> metal.name).toList();
    return new Warning(
        CODE,
        "Aged without solution treatment: "
            + String.join(" and ", names)
            + (metals.size() > 1 ? " are" : " is")
            + " taken no stronger than before the ageing; "
            + metals.stream().map(metal -> metal.why).collect(Collectors.joining("; "))
            + ".");
  }

  private enum Metal {
    WELD(StationRun::melted, "weld metal", "how weld metal answers to ageing is not verified"),
    SOFTENED(
        run -> !run.melted() && run.zone() != Zone.BASE,
        "metal beside it that the weld annealed or overaged",
        "ageing does not dissolve the coarse precipitates of metal that stayed under "
            + BothUnits.temperature(ZoneRule.DISSOLVES)),
    AGED(
        run -> run.zone() == Zone.BASE,
        "base metal delivered aged",
        "a second ageing brings aged metal nothing");

    private final Predicate<StationRun> in;
    private final String name;
    private final String why;

    Metal(Predicate<StationRun> in, String name, String why) {
      this.in = in;
      this.name = name;
      this.why = why;
    }
  }

  /** Whether the rule changed any of these strengths. */
  static boolean changed(List<Strength> computed, List<Strength> held) {
    return IntStream.range(0, computed.size())
        .anyMatch(state -> below(held.get(state), computed.get(state)));
  }

  private static boolean below(Strength held, Strength computed) {
    return held.yield() < (1 - NOTICED) * computed.yield()
        || held.tensile() < (1 - NOTICED) * computed.tensile()
        || held.hardness() < (1 - NOTICED) * computed.hardness();
  }
}
