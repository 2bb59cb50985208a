package afterweld.choice;

import afterweld.choice.Objection.Severity;
import afterweld.section.WeldCase;
import afterweld.thermal.FurnaceStep;
import java.util.List;
import java.util.Optional;

/**
 * The instruction for the furnace shop: what to do, within which limits, what does not fit them,
 * what to measure afterwards and what a soft reading would mean.
 *
 * @param title of the case
 * @param ownSchedule whether the case names the schedule; the standard one else
 * @param objections where what is ordered lies outside the limits of practice
 * @param lines the instruction, in the order of the work
 * @param expected hardness to expect, place by place
 * @param warnings what the prediction says of this treatment
 * @param refusals why the schedule must not be run; empty if it may be
 */
public record FurnaceSheet(
    String title,
    boolean ownSchedule,
    List<Objection> objections,
    List<Line> lines,
    List<Expected> expected,
    List<String> warnings,
    List<String> refusals) {

  /** What to do with a reading under the limit. */
  public static final String RECHECK =
      "Readings under the limit: measure again beside it, then ask. The band is the model's, not a"
          + " code's.";

  /** Copies the lists. */
  public FurnaceSheet {
    objections = List.copyOf(objections);
    lines = List.copyOf(lines);
    expected = List.copyOf(expected);
    warnings = List.copyOf(warnings);
    refusals = List.copyOf(refusals);
  }

  /**
   * One line of the instruction.
   *
   * @param what what it is about
   * @param text what to do, with limits and their sources
   */
  public record Line(String what, String text) {}

  /**
   * Hardness at one place after the treatment.
   *
   * @param place where
   * @param vickers best estimate, HV
   * @param recheckUnder lower end of the predicted band, HV
   * @param brinell the estimate in HB 500 kgf
   * @param rockwell the estimate in HRB where that scale is valid
   * @param softMeans what a reading under the band would mean
   */
  public record Expected(
      String place,
      double vickers,
      double recheckUnder,
      double brinell,
      Optional<Double> rockwell,
      String softMeans) {}

  /** Whose schedule it is, in a sentence. */
  public String origin() {
    return ownSchedule
        ? "Schedule as stated in the case."
        : "Standard schedule of the base, since the case states none.";
  }

  /** The sheet of a case: empty if it names no treatment and its bases answer to none. */
  public static Optional<FurnaceSheet> of(WeldCase weldCase) {
    boolean own = !weldCase.afterWeld().isEmpty();
    Optional<List<FurnaceStep>> steps =
        own ? Optional.of(weldCase.afterWeld()) : StandardTreatment.full(weldCase);
    return steps.map(list -> sheet(weldCase.withAfterWeld(list), own));
  }

  private static FurnaceSheet sheet(WeldCase weldCase, boolean own) {
    FurnaceOrder order = new FurnaceOrder(weldCase, own);
    List<String> refusals = ScheduleCheck.of(weldCase, Severity.REFUSED);
    List<Line> lines = new FurnaceInstruction(order).lines();
    if (!refusals.isEmpty()) {
      return new FurnaceSheet(
          weldCase.title(), own, List.of(), lines, List.of(), List.of(), refusals);
    }
    ExpectedHardness hardness = ExpectedHardness.of(order);
    return new FurnaceSheet(
        weldCase.title(),
        own,
        ScheduleCheck.of(weldCase),
        lines,
        hardness.places(),
        hardness.warnings(),
        refusals);
  }
}
