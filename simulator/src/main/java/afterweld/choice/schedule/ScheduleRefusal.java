package afterweld.choice.schedule;

import afterweld.choice.answer.Objection;
import afterweld.choice.answer.Requirement;
import afterweld.choice.filler.MagnesiumRule;
import afterweld.quantity.BothUnits;
import afterweld.thermal.furnace.FurnaceStep.SolutionTreat;
import afterweld.weldmetal.FurnaceMargin;
import java.util.List;
import java.util.Optional;

/**
 * Why an order must not be run at all: something may melt in the solution furnace. Sources: {@link
 * FurnaceMargin}, {@link MagnesiumRule} and the solidus of as-deposited weld metal.
 */
final class ScheduleRefusal {
  private static final String NOTHING_HARDENS =
      " Nor does a base of this joint harden in a furnace: the treatment would only soften them.";

  private final FurnaceOrder order;
  private final Requirement requirement;

  ScheduleRefusal(FurnaceOrder order, Requirement requirement) {
    this.order = order;
    this.requirement = requirement;
  }

  List<Objection> all() {
    return order.steps().stream()
        .filter(SolutionTreat.class::isInstance)
        .flatMap(step -> of((SolutionTreat) step).stream())
        .distinct()
        .toList();
  }

  private Optional<Objection> of(SolutionTreat treat) {
    String at = "Solution treatment at " + BothUnits.temperature(treat.temperature());
    if (order.hardens() && MagnesiumRule.rich(order.weldCase().filler())) {
      String text = at + ": " + MagnesiumRule.refusal(order.weldCase(), requirement);
      return Optional.of(new Objection(Objection.Severity.REFUSED, Objection.Subject.FILLER, text));
    }
    double lowest = Math.min(order.weldMetalSolidus(), order.baseSolidus());
    if (FurnaceMargin.allows(treat.temperature(), lowest)) {
      return Optional.empty();
    }
    return Optional.of(
        Objection.refused(
            order.weldMetalOnlyMayMelt()
                ? at
                    + ": weld metal with 2.5 % Mg or more may begin to melt from 450 °C (840 °F)"
                    + " on. It is not one to put into a solution furnace."
                    + (order.hardens() ? "" : NOTHING_HARDENS)
                : at + tooNear(lowest)));
  }

  private static String tooNear(double lowest) {
    return ", with its tolerance of "
        + BothUnits.difference(FurnaceMargin.TOLERANCE)
        + ", comes within "
        + BothUnits.difference(FurnaceMargin.MARGIN)
        + " of the lowest solidus, "
        + BothUnits.temperature(lowest)
        + ": metal may melt.";
  }
}
