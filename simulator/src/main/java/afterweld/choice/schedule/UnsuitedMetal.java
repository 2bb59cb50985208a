package afterweld.choice.schedule;

import static afterweld.choice.answer.Objection.noted;
import static afterweld.choice.answer.Objection.objected;

import afterweld.choice.answer.Objection;
import afterweld.choice.filler.FillerCheck;
import afterweld.choice.filler.MagnesiumRule;
import afterweld.material.Alloy;
import afterweld.material.Element;
import afterweld.material.Temper;
import afterweld.quantity.BothUnits;
import afterweld.weld.Side;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Bases that an order of solution treatment or ageing does nothing for, or harm to: those that
 * harden by cold work only, those with more than 3 % Mg ({@link MagnesiumRule}), and lots whose
 * certificate lacks what the alloy hardens by; the filler is {@link FillerCheck}'s. Strengths are
 * those of the handbook.
 */
final class UnsuitedMetal {
  private static final String ANNEALED = "O";
  private static final List<Element> HARDENERS = List.of(Element.MG, Element.SI);

  /** Silicon over the alloy's highest that tells another metal, wt%; assumed. */
  private static final double BEYOND_A_LOT = 1;

  private UnsuitedMetal() {}

  static List<Objection> of(FurnaceOrder order) {
    List<Objection> found = new ArrayList<>();
    order
        .sides()
        .filter(side -> !side.alloy().heatTreatable())
        .flatMap(side -> side(order, side).stream())
        .distinct()
        .forEach(found::add);
    order.hardening().flatMap(side -> lean(order, side).stream()).distinct().forEach(found::add);
    return found;
  }

  private static Optional<Objection> lean(FurnaceOrder order, Side side) {
    if (order.bakes() || !(order.dissolves() || order.ages())) {
      return Optional.empty();
    }
    return HARDENERS.stream()
        .filter(side.certified()::contains)
        .filter(element -> side.composition().of(element) < least(side, element))
        .findFirst()
        .map(element -> oldWeldMetal(side) ? noted(old(side)) : objected(lean(side, element)));
  }

  private static String lean(Side side, Element element) {
    return String.format(
        Locale.ROOT,
        "The certificate gives %s %s %%, under the %s %% that %s has at least: by this treatment the"
            + " lot hardens less than %s or not at all. Find out which alloy it is before it goes to"
            + " the furnace.",
        element.symbol(),
        side.composition().of(element),
        least(side, element),
        side.alloy().name(),
        side.alloy().name());
  }

  /** No lot of a wrought alloy has so much silicon; what a 4xxx filler was melted into has. */
  private static boolean oldWeldMetal(Side side) {
    Alloy.Limit silicon = side.alloy().limits().get(Element.SI);
    return !side.alloy().casting()
        && silicon != null
        && side.certified().contains(Element.SI)
        && side.composition().of(Element.SI) > silicon.max() + BEYOND_A_LOT;
  }

  private static String old(Side side) {
    return String.format(
        Locale.ROOT,
        "With Si %s %% the metal stated is no %s but what an old weld leaves: it is computed as stated,"
            + " and hardens as far as its magnesium goes.",
        side.composition().of(Element.SI),
        side.alloy().name());
  }

  private static double least(Side side, Element element) {
    Alloy.Limit limit = side.alloy().limits().get(element);
    return limit == null ? 0 : limit.min();
  }

  private static Optional<Objection> side(FurnaceOrder order, Side side) {
    if (order.dissolves()) {
      return Optional.of(annealed(side));
    }
    boolean annealed = side.temper().name().equals(ANNEALED);
    if (!order.ages() || (annealed && !MagnesiumRule.rich(side.composition()))) {
      return Optional.empty();
    }
    if (order.bakes()) {
      String costs = ", and the hotter it is the more of its cold work it costs";
      return Optional.of(
          noted(
              side.alloy().name()
                  + ": the bake hardens nothing in it"
                  + (annealed ? "" : costs)
                  + "."
                  + begun(side)));
    }
    return MagnesiumRule.rich(side.composition())
        ? Optional.of(objected(side.alloy().name() + sensitised() + " Leave the joint as welded."))
        : Optional.of(
            noted(
                side.alloy().name()
                    + " does not harden by ageing: on its side the ageing only costs strength of"
                    + " the cold work."));
  }

  private static String sensitised() {
    return " has more than 3 % Mg: a hold between 65 and 200 °C (150 and 390 °F) that is more than a"
        + " coating's bake lines its grain boundaries with what corrodes.";
  }

  private static String begun(Side side) {
    return MagnesiumRule.rich(side.composition())
        ? " With more than 3 % Mg each bake also begins to line its grain boundaries with what corrodes:"
            + " bake short, and once."
        : "";
  }

  private static Objection annealed(Side side) {
    String name = side.alloy().name();
    String temper = side.temper().name();
    if (temper.equals(ANNEALED)) {
      return noted(name + " does not harden by heat treatment: its side stays annealed.");
    }
    return objected(
        name
            + " does not harden by heat treatment: the solution furnace anneals its "
            + temper
            + " for good"
            + proof(side)
            + ". Choose another route: leave the joint as welded.");
  }

  private static String proof(Side side) {
    Optional<Temper.Handbook> before = side.temper().handbook();
    Optional<Temper.Handbook> after = side.alloy().temper("O").flatMap(Temper::handbook);
    return before.isPresent() && after.isPresent()
        ? ", from "
            + BothUnits.stress(before.get().yield())
            + " to "
            + BothUnits.stress(after.get().yield())
            + " proof (handbook)"
        : "";
  }
}
