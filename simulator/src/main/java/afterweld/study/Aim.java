package afterweld.study;

import afterweld.choice.answer.Requirement;
import afterweld.quantity.Asked;
import afterweld.quantity.OutputQuantity;
import afterweld.quantity.UnitSystem;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * What the places of a map, and the schedules of a furnace, are ranked by: the strength that the
 * case requires; where it requires several, the least of them as a share of what is asked; where it
 * requires none, the tensile strength of the joint.
 *
 * @param goals one for each strength asked; never empty
 */
public record Aim(List<Goal> goals) {
  /** One strength of the finished joint. */
  public enum Strength {
    PROOF("joint proof stress", OutputQuantity.YIELD),
    TENSILE("joint tensile strength", OutputQuantity.TENSILE),
    HARDNESS("lowest hardness", OutputQuantity.HARDNESS);

    private final String label;
    private final OutputQuantity quantity;

    Strength(String label, OutputQuantity quantity) {
      this.label = label;
      this.quantity = quantity;
    }
  }

  /**
   * A strength and what is asked of it.
   *
   * @param asked as it is written in the case; empty if nothing is
   */
  public record Goal(Strength strength, Optional<Asked> asked) {}

  /** Copies the list and checks that there is something to rank by. */
  public Aim {
    goals = List.copyOf(goals);
    if (goals.isEmpty()) {
      throw new IllegalArgumentException("nothing to rank by");
    }
  }

  /** The aim of a requirement. */
  public static Aim of(Requirement requirement) {
    List<Goal> goals =
        Arrays.stream(Strength.values())
            .map(strength -> new Goal(strength, requirement.asked(strength.quantity)))
            .filter(goal -> goal.asked().isPresent())
            .toList();
    return new Aim(goals.isEmpty() ? List.of(new Goal(Strength.TENSILE, Optional.empty())) : goals);
  }

  /** What is asked of the one strength it ranks by; empty if nothing or more than one is. */
  public Optional<Asked> asked() {
    return single() ? goals.get(0).asked() : Optional.empty();
  }

  /** Whether the case requires any strength at all. */
  public boolean required() {
    return goals.get(0).asked().isPresent();
  }

  private boolean single() {
    return goals.size() == 1;
  }

  /** What a joint is ranked by: Pa, HV, or a share of what is asked. */
  double of(JointFigures figures) {
    if (single()) {
      return figures.of(goals.get(0).strength());
    }
    return goals.stream()
        .mapToDouble(goal -> figures.of(goal.strength()) / goal.asked().orElseThrow().value())
        .reduce(Math::min)
        .orElseThrow();
  }

  /** Its name, for sentences and axes. */
  public String name() {
    return single() ? goals.get(0).strength().label : "lowest strength over what is asked";
  }

  /** What it is shown in. */
  public double in(UnitSystem units, double value) {
    return single() ? goals.get(0).strength().quantity.in(units, value) : 100 * value;
  }

  /** The unit it is shown in. */
  public String unit(UnitSystem units) {
    return single() ? goals.get(0).strength().quantity.unit(units) : "%";
  }

  /** A value with its unit. */
  public String text(UnitSystem units, double value) {
    String figure =
        single()
            ? goals.get(0).strength().quantity.text(units, value)
            : String.format(Locale.ROOT, "%.0f", 100 * value);
    return figure + " " + unit(units);
  }
}
