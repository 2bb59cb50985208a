package afterweld.choice;

import static afterweld.section.UnitSystem.ZERO_CELSIUS;

import afterweld.section.BothUnits;
import afterweld.section.FurnaceMargin;
import afterweld.section.Side;
import afterweld.thermal.FurnaceStep;
import afterweld.thermal.FurnaceStep.Age;
import afterweld.thermal.FurnaceStep.Furnace;
import afterweld.thermal.FurnaceStep.Quench;
import afterweld.thermal.FurnaceStep.SolutionTreat;
import afterweld.thermal.QuenchMedium;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Where an order lies outside the limits of practice, and where it must not be run at all.
 *
 * <p>Limits: soak and quench delay by thickness for wrought metal; 6 to 12 h of soak and water of
 * 65 to 100 °C for castings; water of at most 38 °C for wrought metal; ageing from 150 to 205 °C; a
 * solution temperature at most 15 °C under the alloy's usual one (common practice, the last two
 * rounded from the usual schedules).
 */
final class FurnaceObjections {
  private static final double HOUR = 3600;
  private static final double USUALLY_COLDER = 15;
  private static final double SHORT_CAST_SOAK = 6 * HOUR;
  private static final double LONG_CAST_SOAK = 12 * HOUR;
  private static final double COOL_AGE = 150 + ZERO_CELSIUS;
  private static final double HOT_AGE = 205 + ZERO_CELSIUS;
  private static final double WARM_WATER = 38 + ZERO_CELSIUS;
  private static final double HOT_WATER = 65 + ZERO_CELSIUS;
  private static final double HAIR = 1e-6;

  private FurnaceObjections() {}

  /** Why the order must not be run; empty if it may be. */
  static List<String> refusals(FurnaceOrder order) {
    return order.steps().stream()
        .filter(SolutionTreat.class::isInstance)
        .flatMap(step -> refusal(order, (SolutionTreat) step).stream())
        .toList();
  }

  private static Optional<String> refusal(FurnaceOrder order, SolutionTreat treat) {
    double lowest = Math.min(order.weldMetalSolidus(), order.baseSolidus());
    if (treat.temperature() <= FurnaceMargin.highestSetting(lowest) + HAIR) {
      return Optional.empty();
    }
    String at = "Solution treatment at " + BothUnits.temperature(treat.temperature());
    if (order.weldMetalOnlyMayMelt()) {
      return Optional.of(
          at
              + ": weld metal with 2.5 % Mg or more may begin to melt from 450 °C (842 °F) on. Filler"
              + " with so much magnesium is not meant for heat treatment after welding.");
    }
    return Optional.of(
        at
            + ", with its tolerance of "
            + BothUnits.difference(FurnaceMargin.TOLERANCE)
            + ", comes within "
            + BothUnits.difference(FurnaceMargin.MARGIN)
            + " of the lowest solidus, "
            + BothUnits.temperature(lowest)
            + ": metal may melt.");
  }

  /** What lies outside the limits, a sentence each. */
  static List<String> of(FurnaceOrder order) {
    return order.steps().stream()
        .flatMap(step -> order.sides().flatMap(side -> of(step, side)))
        .distinct()
        .toList();
  }

  private static Stream<String> of(FurnaceStep step, Side side) {
    if (step instanceof SolutionTreat treat) {
      return Stream.concat(coldSolution(treat, side).stream(), soak(treat, side).stream());
    }
    if (step instanceof Quench quench) {
      return Stream.of(delay(quench, side), bath(quench, side), air(quench))
          .flatMap(Optional::stream);
    }
    return step instanceof Age age && side.alloy().heatTreatable()
        ? ageing(age).stream()
        : Stream.of();
  }

  private static Optional<String> coldSolution(SolutionTreat treat, Side side) {
    return side.alloy()
        .schedule()
        .filter(usual -> treat.temperature() < usual.solutionTemperature() - USUALLY_COLDER)
        .map(
            usual ->
                "Ordered solution treatment at "
                    + BothUnits.temperature(treat.temperature())
                    + " is well under the usual "
                    + BothUnits.temperature(usual.solutionTemperature())
                    + " of "
                    + side.alloy().name()
                    + ".");
  }

  private static Optional<String> soak(SolutionTreat treat, Side side) {
    String ordered =
        "Ordered soak of " + FurnaceWords.time(treat.soak()) + " is outside the limit of ";
    if (side.alloy().casting()) {
      boolean outside =
          treat.soak() < SHORT_CAST_SOAK - HAIR || treat.soak() > LONG_CAST_SOAK + HAIR;
      return outside
          ? Optional.of(ordered + side.alloy().name() + ": " + castSoak() + ".")
          : Optional.empty();
    }
    FurnacePractice.Limit least = leastSoak(treat, side);
    return treat.soak() < 60 * least.value() - HAIR
        ? Optional.of(ordered + side.alloy().name() + ": at least " + least.text() + ".")
        : Optional.empty();
  }

  static FurnacePractice.Limit leastSoak(SolutionTreat treat, Side side) {
    String rule = treat.furnace() == Furnace.SALT ? "soak in salt" : "soak in air";
    return FurnacePractice.of(rule, side.thickness());
  }

  static String castSoak() {
    return "castings 6 to 12 h (common practice)";
  }

  private static Optional<String> delay(Quench quench, Side side) {
    FurnacePractice.Limit longest = FurnacePractice.of("longest quench delay", side.thickness());
    return quench.delay() > longest.value() + HAIR
        ? Optional.of(
            "Ordered quench delay of "
                + FurnaceWords.time(quench.delay())
                + " is outside the limit of "
                + side.alloy().name()
                + ": at most "
                + longest.text()
                + ".")
        : Optional.empty();
  }

  private static Optional<String> bath(Quench quench, Side side) {
    boolean casting = side.alloy().casting();
    boolean outside =
        casting
            ? quench.temperature() < HOT_WATER - HAIR
            : quench.temperature() > WARM_WATER + HAIR;
    boolean water =
        quench.medium() == QuenchMedium.WATER || quench.medium() == QuenchMedium.BOILING_WATER;
    return water && outside
        ? Optional.of(
            "Ordered water of "
                + BothUnits.temperature(quench.temperature())
                + " is outside the usual for "
                + side.alloy().name()
                + ": "
                + usualWater(casting)
                + ".")
        : Optional.empty();
  }

  static String usualWater(boolean casting) {
    return casting
        ? "castings 65 to 100 °C, 149 to 212 °F (common practice)"
        : "wrought metal at most 38 °C (100 °F) at the start, its rise under 11 °C (20 °F) (AMS 2770,"
            + " memory)";
  }

  private static Optional<String> air(Quench quench) {
    boolean air =
        quench.medium() == QuenchMedium.STILL_AIR || quench.medium() == QuenchMedium.FORCED_AIR;
    return air
        ? Optional.of(
            "Ordered cooling in "
                + quench.medium().label()
                + " is slower than the usual water quench: prove it on a coupon (common practice).")
        : Optional.empty();
  }

  private static Optional<String> ageing(Age age) {
    boolean outside = age.temperature() < COOL_AGE - HAIR || age.temperature() > HOT_AGE + HAIR;
    return outside
        ? Optional.of(
            "Ordered ageing at "
                + BothUnits.temperature(age.temperature())
                + " is outside the usual "
                + BothUnits.temperature(COOL_AGE)
                + " to "
                + BothUnits.temperature(HOT_AGE)
                + " (common practice)"
                + (age.overage() ? "; the order says that overageing is meant." : "."))
        : Optional.empty();
  }
}
