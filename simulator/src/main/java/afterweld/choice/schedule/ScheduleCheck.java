package afterweld.choice.schedule;

import afterweld.choice.answer.Objection;
import afterweld.choice.answer.Objection.Severity;
import afterweld.choice.answer.Requirement;
import afterweld.quantity.UnitSystem;
import afterweld.thermal.furnace.FurnaceStep.Age;
import afterweld.thermal.furnace.FurnaceStep.Quench;
import afterweld.weld.WeldCase;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;

/**
 * The one list of what stands against the heat treatment of a case. A case that orders none has
 * none; the standard treatments are put to it in the case they are tried in.
 *
 * <p>Refused: nothing is computed and every command ends at the case file. Objected: it is
 * computed, the objection stands before every other answer, and no command ranks it. Noted: said.
 */
public final class ScheduleCheck {
  private ScheduleCheck() {}

  /**
   * All objections, the gravest first.
   *
   * @param requirement what a filler that is advised instead must suit too
   */
  public static List<Objection> of(WeldCase weldCase, Requirement requirement) {
    if (weldCase.afterWeld().isEmpty()) {
      return List.of();
    }
    FurnaceOrder order = new FurnaceOrder(weldCase, true);
    List<Objection> refused = new ScheduleRefusal(order, requirement).all();
    if (!refused.isEmpty()) {
      return refused;
    }
    List<Objection> all = new ArrayList<>(UnsuitedMetal.of(order));
    all.addAll(new StepOrder(order).objections());
    all.addAll(new FurnaceObjections(order).all());
    boolean clean = all.stream().allMatch(one -> one.severity() == Severity.NOTED);
    all.addAll(SharedTreatment.of(weldCase, clean));
    return all.stream().sorted(Comparator.comparing(Objection::severity)).toList();
  }

  /**
   * Whether a case quenches later than practice allows, which costs more than the strengths show.
   */
  public static boolean quenchesLate(WeldCase weldCase) {
    FurnaceObjections figures = new FurnaceObjections(new FurnaceOrder(weldCase, true));
    return weldCase.afterWeld().stream()
        .anyMatch(step -> step instanceof Quench quench && figures.isLate(quench));
  }

  /** Whether the trade ages a part of a case longer than that where it hardens by it. */
  public static boolean agesShort(WeldCase weldCase, Age age) {
    return new FurnaceObjections(new FurnaceOrder(weldCase, true)).isShort(age);
  }

  /** The longest that practice lets a part of a case take to the bath, s; empty for no bath. */
  public static OptionalDouble longestQuenchDelay(WeldCase weldCase) {
    return new FurnaceLimits(new FurnaceOrder(weldCase, true), UnitSystem.METRIC)
        .longestDelay().stream().mapToDouble(FurnaceLimits.Limit::value).findFirst();
  }

  /** The sentences of one severity. */
  public static List<String> of(WeldCase weldCase, Requirement requirement, Severity severity) {
    return of(weldCase, requirement).stream()
        .filter(objection -> objection.severity() == severity)
        .map(Objection::text)
        .toList();
  }
}
