package afterweld.choice.schedule;

import static afterweld.choice.answer.Objection.noted;
import static afterweld.choice.answer.Objection.objected;
import static afterweld.quantity.UnitSystem.ZERO_CELSIUS;

import afterweld.choice.answer.Objection;
import afterweld.quantity.BothUnits;
import afterweld.quantity.UnitSystem;
import afterweld.thermal.furnace.FurnaceStep.Anneal;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What practice says of an anneal: how hot (a data sheet of 6082, read; AMS 2771 for castings and
 * common practice for work-hardened metal, from memory), how long and how slowly cooled (AMS 2770,
 * from memory).
 */
public final class AnnealRule {
  private static final double COOL_ANNEAL = 380 + ZERO_CELSIUS;
  private static final double COOL_ANNEAL_OF_WORKED = 330 + ZERO_CELSIUS;
  private static final double COOL_ANNEAL_OF_CASTINGS = 315 + ZERO_CELSIUS;
  private static final double BRIEF_ANNEAL = 3600;
  private static final double USUAL_ANNEAL = 413 + ZERO_CELSIUS;
  private static final double USUAL_ANNEAL_OF_WORKED = 345 + ZERO_CELSIUS;
  private static final String HARDENING_ANNEALS =
      "6xxx metal is annealed at 380 °C (715 °F) to 420 °C (790 °F) (read, a data sheet of 6082),"
          + " 413 °C (775 °F) is usual.";
  private static final String CASTING_ANNEALS =
      "castings are annealed at 315 °C (600 °F) to 345 °C (650 °F) for 2 to 4 h (AMS 2771 practice,"
          + " from memory).";
  private static final String WORKED_ANNEALS =
      "work-hardened metal is annealed at about 345 °C (650 °F) (common practice).";

  /** The trade says 50 °F/h, which is 27.8 °C/h, and 30 as well. */
  private static final double ABOUT = 1.1;

  private final FurnaceOrder order;
  private final boolean hardensWrought;

  /** For the metals of an order. */
  public AnnealRule(FurnaceOrder order) {
    this.order = order;
    this.hardensWrought = order.weldCase().hardensWrought();
  }

  /** All that stands against an anneal or is to be noted of it. */
  Stream<Objection> objections(Anneal anneal) {
    return Stream.of(tooCold(anneal), brief(anneal), cooledFast(anneal)).flatMap(Optional::stream);
  }

  /** At what the bases of the joint are annealed, K. */
  public double usual() {
    return hardensWrought ? USUAL_ANNEAL : USUAL_ANNEAL_OF_WORKED;
  }

  /** What stands against an anneal that is too cold; empty if it is not. */
  public Optional<Objection> tooCold(Anneal anneal) {
    double least =
        hardensWrought
            ? COOL_ANNEAL
            : order.hardens() ? COOL_ANNEAL_OF_CASTINGS : COOL_ANNEAL_OF_WORKED;
    String usual =
        hardensWrought ? HARDENING_ANNEALS : order.hardens() ? CASTING_ANNEALS : WORKED_ANNEALS;
    return anneal.temperature() < least - UnitSystem.ROUNDED
        ? Optional.of(
            objected(
                "An anneal at "
                    + BothUnits.temperature(anneal.temperature())
                    + (order.hardens()
                        ? " is too cold: "
                        : " is cold: it takes of the cold work's strength, how much is not sure; ")
                    + usual))
        : Optional.empty();
  }

  private Optional<Objection> brief(Anneal anneal) {
    return order.hardens() && anneal.time() < BRIEF_ANNEAL - FurnaceObjections.HAIR
        ? Optional.of(
            noted(
                "An anneal of "
                    + FurnaceWords.time(anneal.time())
                    + " is short: metal that hardens by heat treatment is usually held for 2 to 3 h"
                    + " (AMS 2770 practice, from memory), work-hardened metal only until it is at"
                    + " temperature."))
        : Optional.empty();
  }

  private Optional<Objection> cooledFast(Anneal anneal) {
    double rate = anneal.coolingRate().orElse(0);
    return hardensWrought && rate > ABOUT * Anneal.USUAL_COOLING
        ? Optional.of(
            noted(
                "Cooled faster than the usual 28 °C/h (50 °F/h) after the anneal: some of what hardens"
                    + " the metal stays dissolved, and it gets harder again with time (AMS 2770"
                    + " practice, from memory). The prediction does not show all of that."))
        : Optional.empty();
  }
}
