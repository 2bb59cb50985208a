package afterweld.choice;

import afterweld.choice.Objection.Severity;
import afterweld.section.WeldCase;
import java.util.List;
import java.util.stream.Stream;

/**
 * The one list of what stands against the heat treatment of a case. A case that orders none has
 * none; the standard treatments are put to it in the case they are tried in.
 *
 * <p>Refused: nothing is computed and every command ends at the case file. Objected: it is
 * computed, the objection stands before every other answer, and no command ranks it. Noted: said.
 */
public final class ScheduleCheck {
  private ScheduleCheck() {}

  /** All objections, the gravest first. */
  public static List<Objection> of(WeldCase weldCase) {
    FurnaceOrder order = new FurnaceOrder(weldCase, true);
    List<String> refusals = FurnaceObjections.refusals(order);
    return refusals.isEmpty()
        ? FurnaceObjections.of(order).stream().map(Objection::objected).toList()
        : refusals.stream().map(Objection::refused).toList();
  }

  /** The sentences of one severity. */
  public static List<String> of(WeldCase weldCase, Severity severity) {
    return of(weldCase).stream()
        .filter(objection -> objection.severity() == severity)
        .map(Objection::text)
        .toList();
  }

  /** Whether nothing stands against it but remarks: only such a treatment may be ranked. */
  public static boolean passes(WeldCase weldCase) {
    return of(weldCase).stream().allMatch(one -> one.severity() == Severity.NOTED);
  }

  /** What speaks against ranking it, for the hard conditions of a route. */
  static Stream<RouteConstraint> constraint(WeldCase weldCase) {
    return of(weldCase).stream()
        .filter(objection -> objection.severity() != Severity.NOTED)
        .map(
            objection ->
                new RouteConstraint(
                    "furnace schedule", RouteConstraint.State.NOT_MET, objection.text()));
  }
}
