package afterweld.choice.schedule;

import static afterweld.choice.answer.Objection.noted;
import static afterweld.choice.answer.Objection.objected;

import afterweld.choice.answer.Objection;
import afterweld.choice.practice.HardeningAge;
import afterweld.thermal.furnace.FurnaceStep;
import afterweld.thermal.furnace.FurnaceStep.Age;
import afterweld.thermal.furnace.FurnaceStep.Anneal;
import afterweld.thermal.furnace.FurnaceStep.NaturalAge;
import afterweld.thermal.furnace.FurnaceStep.SolutionTreat;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What stands against the order of the steps: what a later step undoes, and what has nothing to
 * work on. Facts of the trade: a solution treatment and an anneal undo all that was done before
 * them, and only metal in solution ages.
 */
public final class StepOrder {
  private final FurnaceOrder order;
  private final List<FurnaceStep> steps;

  /** For the steps of an order. */
  public StepOrder(FurnaceOrder order) {
    this.order = order;
    this.steps = order.steps();
  }

  List<Objection> objections() {
    List<Objection> found = new ArrayList<>();
    agedTooSoon().ifPresent(found::add);
    dissolvedTwice().ifPresent(found::add);
    agedTwice().ifPresent(found::add);
    annealedLast().ifPresent(found::add);
    annealedFirst().ifPresent(found::add);
    order
        .sides()
        .filter(side -> side.alloy().heatTreatable())
        .map(side -> side.alloy().name())
        .distinct()
        .filter(this::nothingInSolution)
        .forEach(name -> found.add(nothingToAge(name)));
    return found;
  }

  /** Steps that do nothing where they stand and that a furnace shop leaves out. */
  public boolean idle(int index) {
    FurnaceStep step = steps.get(index);
    if (!order.hardens()) {
      return order.dissolves() && !(step instanceof Anneal || step instanceof NaturalAge);
    }
    if (step instanceof Age) {
      return has(index + 1, steps.size(), SolutionTreat.class)
          || (besideTheAgeing(index) && !order.bakes(index))
          || order
              .sides()
              .filter(side -> side.alloy().heatTreatable())
              .allMatch(side -> nothingInSolution(side.alloy().name()));
    }
    boolean dissolving = step instanceof SolutionTreat || FurnaceOrder.isQuench(step);
    return dissolving && has(index + 1, steps.size(), SolutionTreat.class) && !quenchOfLast(index);
  }

  private boolean besideTheAgeing(int index) {
    return index != HardeningAge.place(steps).orElseThrow();
  }

  private boolean quenchOfLast(int index) {
    return FurnaceOrder.isQuench(steps.get(index))
        && !has(index + 1, steps.size(), SolutionTreat.class);
  }

  private boolean agedBefore(int index) {
    for (int i = index - 1; i >= 0; i--) {
      if (steps.get(i) instanceof Age) {
        return true;
      }
      if (steps.get(i) instanceof SolutionTreat || steps.get(i) instanceof Anneal) {
        return false;
      }
    }
    return false;
  }

  private boolean has(int from, int to, Class<? extends FurnaceStep> kind) {
    return first(from, to, kind) >= 0;
  }

  private int first(int from, int to, Class<? extends FurnaceStep> kind) {
    for (int i = from; i < to; i++) {
      if (kind.isInstance(steps.get(i))) {
        return i;
      }
    }
    return -1;
  }

  private Optional<Objection> agedTooSoon() {
    int solution = first(0, steps.size(), SolutionTreat.class);
    if (solution < 0 || !has(0, solution, Age.class)) {
      return Optional.empty();
    }
    return Optional.of(
        objected(
            "The ageing before the solution treatment is wiped out by it"
                + (has(solution, steps.size(), Age.class)
                    ? ": leave it out."
                    : ", and no ageing follows the quench: the part only comes to T4. Age after the"
                        + " quench.")));
  }

  private Optional<Objection> dissolvedTwice() {
    long times = steps.stream().filter(SolutionTreat.class::isInstance).count();
    return times > 1
        ? Optional.of(
            noted(
                "Solution treated "
                    + times
                    + " times: the last treatment wipes out what was before it, and the instruction"
                    + " orders the last alone. Once is enough unless the first one failed."))
        : Optional.empty();
  }

  private Optional<Objection> agedTwice() {
    for (int i = 0; i < steps.size(); i++) {
      if (steps.get(i) instanceof Age && agedBefore(i) && !order.bakes(i)) {
        return Optional.of(
            objected(
                "Aged twice in a row: these metals are aged in one hold, and a second one adds to"
                    + " the first. State one ageing."));
      }
    }
    return Optional.empty();
  }

  private Optional<Objection> annealedLast() {
    int anneal = order.last(Anneal.class);
    boolean undone =
        anneal > 0 && (has(0, anneal, Age.class) || has(0, anneal, SolutionTreat.class));
    return undone
        ? Optional.of(
            objected("The annealing undoes the hardening before it: the part leaves annealed."))
        : Optional.empty();
  }

  private Optional<Objection> annealedFirst() {
    int solution = order.last(SolutionTreat.class);
    return solution > 0 && has(0, solution, Anneal.class)
        ? Optional.of(
            noted(
                "The annealing before the solution treatment is undone by it: it helps only where"
                    + " the part is formed or straightened between them."))
        : Optional.empty();
  }

  /** Whether metal of that name comes annealed to an ageing. */
  private boolean nothingInSolution(String name) {
    int age = first(0, steps.size(), Age.class);
    if (age < 0 || has(0, age, SolutionTreat.class)) {
      return false;
    }
    return has(0, age, Anneal.class)
        || order
            .sides()
            .anyMatch(side -> side.alloy().name().equals(name) && side.temper().name().equals("O"));
  }

  private static Objection nothingToAge(String name) {
    return objected(
        "Ageing does nothing for annealed "
            + name
            + ", temper O: nothing in it is in solution. Solution treat and quench it first.");
  }
}
