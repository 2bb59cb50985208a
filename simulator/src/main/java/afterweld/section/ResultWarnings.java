package afterweld.section;

import afterweld.quantity.BothUnits;
import afterweld.quantity.UnitSystem;
import afterweld.thermal.TemperatureHistory;
import afterweld.thermal.furnace.FurnaceHistory;
import afterweld.thermal.furnace.FurnaceStep;
import afterweld.thermal.furnace.FurnaceStep.Quench;
import afterweld.weld.Side;
import afterweld.weld.Warning;
import afterweld.weld.WeldCase;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.Set;

/** What the computed stations themselves give reason to say. */
final class ResultWarnings {
  /**
   * A load that stays above this until it is in the bath may exceed the quench delay, K (AMS 2770,
   * from memory).
   */
  private static final double WARM_ENOUGH_TO_QUENCH = 413 + UnitSystem.ZERO_CELSIUS;

  private static final Set<String> NATURALLY_AGED = Set.of("T1", "T4");

  private ResultWarnings() {}

  /**
   * All of them.
   *
   * @param fusedThrough whether the root is fused; where it is not, that is said in the first place
   */
  static List<Warning> of(WeldCase weldCase, List<StationRun> runs, boolean fusedThrough) {
    List<Warning> warnings = new ArrayList<>();
    if (fusedThrough && !has(runs, Zone.FUSION)) {
      warnings.add(belowThePools(weldCase.depth()));
    }
    aboutZones(runs, warnings);
    AgedOnly.warning(runs).ifPresent(warnings::add);
    warnings.add(ErrorBand.origin());
    DeliveredMinimum.said(weldCase).forEach(warnings::add);
    aboutNaturallyAgedStart(weldCase, runs, warnings);
    if (weldCase.right().equals(weldCase.left())) {
      aboutQuench(weldCase.left(), "", weldCase, warnings);
    } else {
      aboutQuench(weldCase.left(), "the left side, ", weldCase, warnings);
      aboutQuench(weldCase.right(), "the right side, ", weldCase, warnings);
    }
    return warnings;
  }

  private static Warning belowThePools(double depth) {
    return new Warning(
        "no-weld-metal",
        "No pass melts the metal "
            + BothUnits.length(depth)
            + " below the arc side, where this section is taken: it shows no weld metal. A smaller"
            + " 'depth:' in the case shows the weld.");
  }

  private static void aboutZones(List<StationRun> runs, List<Warning> warnings) {
    if (has(runs, Zone.PARTIALLY_MELTED)) {
      warnings.add(
          new Warning(
              "liquation-not-modelled",
              "Partially melted metal is computed as base metal: liquation along its grain"
                  + " boundaries is not modelled, so its band reaches as far down as that of"
                  + " weld metal."));
    }
    if (has(runs, Zone.ANNEALED) || has(runs, Zone.OVERAGED)) {
      warnings.add(
          new Warning(
              "softest-place-uncertain",
              "The peak temperature of the softest place is uncertain by 25 °C (45 °F) either way, so its"
                  + " distance from the weld is too."));
      if (!has(runs, Zone.SOLUTIONIZED)) {
        warnings.add(
            new Warning("cooled-too-slowly", "No station cooled fast enough to stay in solution."));
      }
    }
  }

  private static void aboutNaturallyAgedStart(
      WeldCase weldCase, List<StationRun> runs, List<Warning> warnings) {
    boolean naturallyAged =
        NATURALLY_AGED.contains(weldCase.left().temper().name())
            || NATURALLY_AGED.contains(weldCase.right().temper().name());
    if (naturallyAged && has(runs, Zone.SOLUTIONIZED)) {
      warnings.add(
          new Warning(
              "ages-again",
              "Metal that was welded in T4 or T1 and is solutionized by the weld ages again by"
                  + " itself."));
    }
  }

  private static boolean has(List<StationRun> runs, Zone zone) {
    return runs.stream().anyMatch(run -> run.zone() == zone);
  }

  private static void aboutQuench(
      Side side, String name, WeldCase weldCase, List<Warning> warnings) {
    List<FurnaceStep> steps = weldCase.afterWeld();
    List<TemperatureHistory> histories =
        new FurnaceHistory(side.alloy(), side.temper().name(), side.thickness()).of(steps);
    for (int i = 0; i < steps.size(); i++) {
      OptionalDouble rate = FurnaceHistory.coolingRate(histories.get(i));
      if (steps.get(i) instanceof Quench quench && rate.isPresent()) {
        warnings.add(rateNote(side, name, rate.getAsDouble()));
        if (histories.get(i).at(quench.delay()) < WARM_ENOUGH_TO_QUENCH) {
          warnings.add(lateNote(side, name));
        }
      }
    }
  }

  private static Warning rateNote(Side side, String name, double rate) {
    return new Warning(
        "quench-rate",
        String.format(
            Locale.ROOT,
            "The quench cools %s at about %s °C/s (%s °F/s) between 450 and 250 °C"
                + " (840 and 480 °F); real baths differ by a factor of two.",
            part(side, name),
            twoFigures(rate),
            twoFigures(1.8 * rate)));
  }

  /** A side by its name, or where both are alike what there is. */
  private static String part(Side side, String name) {
    String thick = BothUnits.length(side.thickness());
    return name.isEmpty() ? thick : name + thick + ",";
  }

  private static String twoFigures(double value) {
    return new BigDecimal(value).round(new MathContext(2)).toPlainString();
  }

  private static Warning lateNote(Side side, String name) {
    return new Warning(
        "quench-late",
        "Before the bath "
            + part(side, name)
            + " falls below "
            + BothUnits.temperature(WARM_ENOUGH_TO_QUENCH)
            + ".");
  }
}
