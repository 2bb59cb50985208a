package afterweld.choice.schedule;

import static afterweld.choice.answer.Objection.noted;
import static afterweld.choice.answer.Objection.objected;
import static afterweld.quantity.UnitSystem.ZERO_CELSIUS;

import afterweld.choice.answer.Objection;
import afterweld.choice.practice.AgeingTime;
import afterweld.material.Alloy;
import afterweld.quantity.BothUnits;
import afterweld.quantity.UnitSystem;
import afterweld.thermal.TemperatureHistory;
import afterweld.thermal.furnace.FurnaceHistory;
import afterweld.thermal.furnace.FurnaceStep;
import afterweld.thermal.furnace.FurnaceStep.Age;
import afterweld.thermal.furnace.FurnaceStep.Anneal;
import afterweld.thermal.furnace.FurnaceStep.Furnace;
import afterweld.thermal.furnace.FurnaceStep.Quench;
import afterweld.thermal.furnace.FurnaceStep.SolutionTreat;
import afterweld.thermal.furnace.QuenchMedium;
import afterweld.weld.CoatingBake;
import afterweld.weld.Side;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * Which figures of an order lie outside the limits of practice, step by step.
 *
 * <p>Limits: {@link FurnaceLimits}; a solution temperature at most 15 °C under the usual one;
 * ageing where the trade ages, no shorter than half the shortest time it states and no longer than
 * strength lasts ({@link AgeingTime}).
 */
public final class FurnaceObjections {
  private static final double USUALLY_COLDER = 15;
  private static final double FAR_SHORT = 0.5;
  static final double HAIR = 1e-6;

  private final FurnaceOrder order;
  private final FurnaceLimits limits;

  /** For the steps of an order. */
  public FurnaceObjections(FurnaceOrder order) {
    this.order = order;
    this.limits = new FurnaceLimits(order, UnitSystem.METRIC);
  }

  /** Of what the last solution treatment wipes out nothing is said here. */
  List<Objection> all() {
    List<Objection> found = new ArrayList<>();
    int counting = Math.max(0, order.last(SolutionTreat.class));
    for (int i = counting; i < order.steps().size(); i++) {
      of(i).forEach(found::add);
    }
    return found.stream().distinct().toList();
  }

  private Stream<Objection> of(int index) {
    FurnaceStep step = order.steps().get(index);
    if (step instanceof SolutionTreat treat) {
      return Stream.of(cold(treat), shortSoak(treat), longSoak(treat), tubeInSalt(treat))
          .flatMap(Optional::stream);
    }
    if (FurnaceOrder.isQuench(step)) {
      Stream<Objection> bath =
          step instanceof Quench quench
              ? Stream.of(late(quench), water(quench)).flatMap(Optional::stream)
              : Stream.of();
      Stream<Objection> slow = order.hardening().flatMap(side -> slow(index, side).stream());
      return Stream.of(bath, slow, unknownRates()).flatMap(all -> all);
    }
    if (step instanceof Anneal anneal) {
      return new AnnealRule(order).objections(anneal);
    }
    return step instanceof Age age ? aged(index, age) : Stream.of();
  }

  /** Whether a solution temperature is too low for a part of the joint. */
  public boolean tooCold(SolutionTreat treat) {
    return cold(treat).isPresent();
  }

  private Optional<Objection> cold(SolutionTreat treat) {
    return order
        .hardening()
        .filter(side -> treat.temperature() < usualSolution(side) - USUALLY_COLDER - HAIR)
        .findFirst()
        .map(
            side ->
                objected(
                    "Solution treatment at "
                        + BothUnits.temperature(treat.temperature())
                        + " is well under the usual "
                        + BothUnits.temperature(usualSolution(side))
                        + " of "
                        + side.alloy().name()
                        + ": not all of what hardens it dissolves."));
  }

  private static double usualSolution(Side side) {
    return side.alloy()
        .schedule()
        .map(Alloy.StandardSchedule::solutionTemperature)
        .orElse(Double.NaN);
  }

  /** Whether a soak is shorter than the governing part asks for. */
  public boolean tooShort(SolutionTreat treat) {
    return shortSoak(treat).isPresent();
  }

  private Optional<Objection> shortSoak(SolutionTreat treat) {
    return limits
        .leastSoak(treat.furnace())
        .filter(least -> treat.soak() < least.value() - HAIR)
        .map(
            least ->
                objected(
                    "A soak of "
                        + FurnaceWords.time(treat.soak())
                        + " is too short: at least "
                        + least.text()
                        + "."));
  }

  private Optional<Objection> tubeInSalt(SolutionTreat treat) {
    return treat.furnace() == Furnace.SALT && order.weldCase().ofTubes()
        ? Optional.of(
            noted(
                "A tube goes into a salt bath only open at both ends, dry, and hung so that the salt"
                    + " runs out of it; else treat it in air, for the longer soak."))
        : Optional.empty();
  }

  private Optional<Objection> longSoak(SolutionTreat treat) {
    OptionalDouble longest = limits.longestSoak();
    return longest.isPresent() && treat.soak() > longest.getAsDouble() + HAIR
        ? Optional.of(
            noted(
                "A soak of "
                    + FurnaceWords.time(treat.soak())
                    + " is longer than the usual "
                    + FurnaceWords.time(longest.getAsDouble())
                    + " of castings (common practice)."))
        : Optional.empty();
  }

  /** Whether a quench wets the part: the tables of delay are for these. */
  public static boolean bath(Quench quench) {
    return quench.medium() != QuenchMedium.STILL_AIR && quench.medium() != QuenchMedium.FORCED_AIR;
  }

  /** Whether the part would come to the bath too late. */
  public boolean isLate(Quench quench) {
    return late(quench).isPresent();
  }

  private Optional<Objection> late(Quench quench) {
    return limits
        .longestDelay()
        .filter(longest -> bath(quench) && quench.delay() > longest.value() + HAIR)
        .map(
            longest ->
                objected(
                    "A quench delay of "
                        + FurnaceWords.time(quench.delay())
                        + " is too long: at most "
                        + longest.text()
                        + ". The predicted strength and hardness do not show all that a late quench"
                        + " costs: claim nothing from them."));
  }

  /** Whether the water is outside the usual for the joint. */
  public boolean wrongWater(Quench quench) {
    return water(quench).isPresent();
  }

  private Optional<Objection> water(Quench quench) {
    boolean water =
        quench.medium() == QuenchMedium.WATER || quench.medium() == QuenchMedium.BOILING_WATER;
    return limits
        .water()
        .filter(
            usual ->
                water
                    && (quench.temperature() < usual.low() - HAIR
                        || quench.temperature() > usual.high() + HAIR))
        .map(
            usual ->
                objected(
                    "Water of "
                        + BothUnits.temperature(quench.temperature())
                        + " is outside the usual: "
                        + usual.text()
                        + (quench.temperature() < usual.low()
                            ? ". Colder water may crack or pull a casting."
                            : ". Warmer water cools too slowly to be counted on.")));
  }

  /** Whether a quench is too slow for a part of the joint. */
  public boolean tooSlow(int index) {
    return order.hardening().anyMatch(side -> slow(index, side).isPresent());
  }

  private Optional<Objection> slow(int index, Side side) {
    TemperatureHistory cooling =
        new FurnaceHistory(side.alloy(), side.temper().name(), side.thickness())
            .of(order.steps())
            .get(index);
    OptionalDouble rate = FurnaceHistory.coolingRate(cooling);
    return FurnaceLimits.slowestQuench(side.alloy())
        .filter(least -> rate.orElse(Double.POSITIVE_INFINITY) < least.value() - HAIR)
        .map(least -> objected(slower(side, rate.getAsDouble(), least)));
  }

  private static String slower(Side side, double rate, FurnaceLimits.Limit least) {
    return "The quench cools "
        + BothUnits.length(side.thickness())
        + " of "
        + side.alloy().name()
        + " at about "
        + FurnaceWords.rate(rate, "s", UnitSystem.METRIC)
        + ", slower than the "
        + FurnaceWords.rate(least.value(), "s", UnitSystem.METRIC)
        + " that it hardens fully from ("
        + least.text()
        + "): quench into water, or prove it on a coupon.";
  }

  /** Of an alloy that the table does not know, such as one of the user's own. */
  private Stream<Objection> unknownRates() {
    return order
        .hardening()
        .filter(side -> FurnaceLimits.slowestQuench(side.alloy()).isEmpty())
        .map(
            side ->
                noted(
                    "How fast "
                        + side.alloy().name()
                        + " must be quenched is not known here: prove the quench on a coupon."));
  }

  private Stream<Objection> aged(int index, Age age) {
    if (order.bakes(index) && order.hardens()) {
      return Stream.of(order.bakes() ? baked(age) : bakedAfterwards(age));
    }
    return aged(age);
  }

  private Stream<Objection> aged(Age age) {
    return order.hardening().flatMap(side -> ageing(age, side));
  }

  private static Objection bakedAfterwards(Age age) {
    return noted(
        FurnaceWords.time(age.time())
            + " at "
            + BothUnits.temperature(age.temperature())
            + " after the ageing is taken as the bake of a coating, not as a second ageing.");
  }

  private static Objection baked(Age age) {
    return noted(
        FurnaceWords.time(age.time())
            + " at "
            + BothUnits.temperature(age.temperature())
            + " on aged metal is taken as the bake of a coating, not as an ageing: the base keeps its"
            + " temper, and little of what the weld took comes back.");
  }

  private Stream<Objection> ageing(Age age, Side side) {
    if (!AgeingTime.agesAt(age.temperature())) {
      return Stream.of(outside(age));
    }
    if (isShort(age, side) && !comesAged(side)) {
      return Stream.of(shortAge(age, side, least(age, side)));
    }
    return AgeingTime.most(side.alloy().casting(), age.temperature() - ZERO_CELSIUS).stream()
        .filter(most -> age.time() > most + HAIR)
        .mapToObj(most -> longAge(age, side, most));
  }

  /** Whether the trade ages such metal longer at that temperature. */
  static boolean isShort(Age age, Side side) {
    return age.time() < least(age, side) - HAIR;
  }

  /** Whether it is for a part that hardens by it. */
  boolean isShort(Age age) {
    return order.hardening().anyMatch(side -> isShort(age, side) && !comesAged(side));
  }

  private static double least(Age age, Side side) {
    double celsius = age.temperature() - ZERO_CELSIUS + UnitSystem.ROUNDED;
    return AgeingTime.least(side.alloy().casting(), celsius);
  }

  /** No time is too short for metal that comes aged: it gains nothing by any. */
  private boolean comesAged(Side side) {
    return side.comesAged() && !order.dissolves();
  }

  /** Whether the ageing is one that the sheet must not pass on. */
  public boolean wrongAge(Age age) {
    return aged(age).anyMatch(one -> one.severity() == Objection.Severity.OBJECTED);
  }

  private Objection outside(Age age) {
    String text =
        "Ageing at "
            + BothUnits.temperature(age.temperature())
            + " is outside the usual "
            + BothUnits.temperature(AgeingTime.COOLEST)
            + " to "
            + BothUnits.temperature(AgeingTime.HOTTEST)
            + " (common practice)";
    return age.overage()
        ? noted(
            text
                + "; the order says that overageing is meant."
                + (order.hasCasting() ? " Overaged castings were not checked against tests." : ""))
        : objected(
            text
                + (age.temperature() > AgeingTime.HOTTEST
                    ? ": it overages."
                    : ": it ages too slowly to be counted on."));
  }

  private Objection shortAge(Age age, Side side, double least) {
    String text = held(age) + " is short of the " + hours(least) + " that " + side.alloy().name();
    boolean bake = CoatingBake.isAsShort(order.weldCase());
    return age.time() < FAR_SHORT * least && !bake
        ? objected(text + " needs at least there: it stays far under its strength.")
        : noted(text + " is usually given at least there.");
  }

  private Objection longAge(Age age, Side side, double most) {
    String text =
        held(age) + " is longer than the " + hours(most) + " that the strength of T6 lasts there";
    if (age.overage()) {
      return noted(text + "; the order says that overageing is meant.");
    }
    return comesAged(side) && !side.temper().name().startsWith("T6")
        ? noted(text + "; of how long " + side.temper().name() + " keeps its own no test is known.")
        : objected(text + ": it overages.");
  }

  private static String held(Age age) {
    return "Ageing of "
        + FurnaceWords.time(age.time())
        + " at "
        + BothUnits.temperature(age.temperature());
  }

  private static String hours(double seconds) {
    return FurnaceWords.time(1800.0 * Math.max(1, Math.round(seconds / 1800)));
  }
}
