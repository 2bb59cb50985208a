package afterweld.choice;

import afterweld.choice.answer.Objection;
import afterweld.choice.answer.Objection.Severity;
import afterweld.choice.answer.Requirement;
import afterweld.choice.practice.StandardTreatment;
import afterweld.choice.schedule.FurnaceOrder;
import afterweld.quantity.Check;
import afterweld.quantity.OutputQuantity;
import afterweld.quantity.UnitSystem;
import afterweld.section.SectionProfile;
import afterweld.section.soundness.Soundness;
import afterweld.thermal.furnace.FurnaceStep;
import afterweld.weld.WeldCase;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * The instruction for the furnace shop: what to do, within which limits, what does not fit them,
 * what to measure afterwards and what a soft reading would mean.
 *
 * @param title of the case
 * @param ownSchedule whether the case names the schedule; the standard one else
 * @param soundness whether the weld has a strength; no hardness is expected of one that has none
 * @param objections what stands against the filler or the treatment; the lines then give the
 *     allowed figure, and no hardness is expected
 * @param lines the instruction, in the order of the work
 * @param expected hardness to expect, place by place
 * @param warnings what the prediction says of this treatment
 * @param refusals why the schedule must not be run; empty if it may be
 */
public record FurnaceSheet(
    String title,
    boolean ownSchedule,
    Soundness soundness,
    List<Objection> objections,
    List<Line> lines,
    List<Expected> expected,
    List<String> warnings,
    List<String> refusals) {

  /** What to do with a reading under the limit. */
  public static final String RECHECK =
      "Readings beyond the limit: measure again beside it, then ask. The band is the model's, not a"
          + " code's.";

  /** Why no hardness is expected where something stands against the filler or the treatment. */
  public static final String NOTHING_EXPECTED =
      "No hardness is given while something stands against it: put that right and write the sheet"
          + " again.";

  /** Why no hardness is expected of a weld whose strength is not computed. */
  public static final String NOT_COMPUTED =
      "No hardness is promised: the joint is not computed, and the sheet only says how to treat"
          + " it.";

  /** What a reading does not tell. */
  public static final String NO_PROOF =
      "Hardness alone does not prove the quench: a late one costs ductility and resistance to"
          + " corrosion before it costs hardness. Time it, and keep the furnace chart.";

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
   * @param brinell the estimate in whole HV, as the sheet shows it, in HB 500 kgf
   * @param rockwell the same in HRB where that scale is valid
   * @param recheck which reading is to be taken again
   */
  public record Expected(
      String place, double vickers, double brinell, Optional<Double> rockwell, Recheck recheck) {
    /** Refuses what it cannot be. */
    public Expected {
      Check.said("place", place);
      Check.positive("hardness", vickers, "HV");
      Check.positive("hardness", brinell, "HB");
    }
  }

  /**
   * A reading that shows that something went wrong: a hard one after an anneal, else a soft one.
   *
   * @param over whether it lies over the limit, and not under it
   * @param limit HV
   * @param means what it would mean
   */
  public record Recheck(boolean over, double limit, String means) {
    /** Refuses what it cannot be. */
    public Recheck {
      Check.positive("limit of a reading", limit, "HV");
      Check.said("what it would mean", means);
    }

    /** Which side of the limit, a word. */
    public String side() {
      return over ? "over" : "under";
    }
  }

  /** What is to be said of the hardness, before any number or instead of it. */
  public List<String> onHardness() {
    boolean objected = objections.stream().anyMatch(one -> one.severity() == Severity.OBJECTED);
    boolean quenched = lines.stream().anyMatch(line -> line.what().equals("Quench"));
    return Stream.of(objected ? NOTHING_EXPECTED : onReadings(), quenched ? NO_PROOF : "")
        .filter(text -> !text.isEmpty())
        .toList();
  }

  private String onReadings() {
    if (!soundness.sound()) {
      return NOT_COMPUTED;
    }
    return expected.isEmpty() ? "" : RECHECK;
  }

  /** Whose schedule it is, in a sentence. */
  public String origin() {
    return ownSchedule
        ? "Schedule as stated in the case."
        : "Standard schedule of the base, since the case states none.";
  }

  /**
   * The sheet of a case: empty if it names no treatment and its bases answer to none.
   *
   * @param requirement what the case asks, which its filler must suit
   * @param first the system of units that leads
   * @param simulation from the case with the treatment of the sheet to its section
   */
  public static Optional<FurnaceSheet> of(
      WeldCase weldCase,
      Requirement requirement,
      UnitSystem first,
      Function<WeldCase, SectionProfile> simulation) {
    boolean own = !weldCase.afterWeld().isEmpty();
    Optional<List<FurnaceStep>> steps =
        own ? Optional.of(weldCase.afterWeld()) : StandardTreatment.full(weldCase);
    return steps.map(
        list -> {
          WeldCase treated = weldCase.withAfterWeld(list);
          return sheet(new FurnaceOrder(treated, own), requirement, first, simulation);
        });
  }

  private static FurnaceSheet sheet(
      FurnaceOrder order,
      Requirement requirement,
      UnitSystem first,
      Function<WeldCase, SectionProfile> simulation) {
    WeldCase weldCase = order.weldCase();
    List<Objection> objections = CaseObjections.of(weldCase, requirement);
    List<String> refusals =
        objections.stream()
            .filter(one -> one.severity() == Severity.REFUSED)
            .map(Objection::text)
            .toList();
    boolean passes = objections.stream().allMatch(one -> one.severity() == Severity.NOTED);
    List<Line> lines = new FurnaceInstruction(order, first, !passes).lines();
    Optional<SectionProfile> profile =
        refusals.isEmpty() ? Optional.of(simulation.apply(weldCase)) : Optional.empty();
    Soundness soundness = profile.map(SectionProfile::soundness).orElse(Soundness.SOUND);
    boolean clean = soundness.sound() && passes;
    Optional<ExpectedHardness> hardness =
        profile.map(
            one -> ExpectedHardness.of(order, one, requirement.asked(OutputQuantity.HARDNESS)));
    return new FurnaceSheet(
        weldCase.title(),
        order.own(),
        soundness,
        objections,
        lines,
        hardness.filter(unused -> clean).map(ExpectedHardness::places).orElse(List.of()),
        hardness.map(ExpectedHardness::warnings).orElse(List.of()),
        refusals);
  }
}
