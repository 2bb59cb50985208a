package afterweld.choice;

import afterweld.choice.answer.Verdict;
import afterweld.quantity.Check;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What the shop can do, for the choice of a route. SI units.
 *
 * @param furnace inside of the furnace, if the user gives it
 * @param part outside of the part
 * @param tank inside of the quench tank
 * @param distortionAllowance movement that machining can still take off, m
 * @param expectedMovement movement the user expects from a quench, m
 * @param tempersAvailable tempers that can be bought; empty list means not said
 * @param target chance of meeting the requirement that a route must have, 0.5 to 0.999; empty where
 *     the words of {@link Verdict} decide
 * @param order what matters most, first first; empty list means the defaults
 */
public record RouteSettings(
    Optional<Box> furnace,
    Optional<Box> part,
    Optional<Box> tank,
    OptionalDouble distortionAllowance,
    OptionalDouble expectedMovement,
    List<String> tempersAvailable,
    OptionalDouble target,
    List<String> order) {
  /** Refuses what it cannot be. */
  public RouteSettings {
    Check.notNegative("distortion allowance", distortionAllowance, "m");
    Check.notNegative("expected movement", expectedMovement, "m");
    target.ifPresent(chance -> Check.share("target", chance));
    tempersAvailable = List.copyOf(tempersAvailable);
    order = List.copyOf(order);
  }

  /** Nothing said. */
  public static final RouteSettings DEFAULT =
      new RouteSettings(
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          List.of(),
          OptionalDouble.empty(),
          List.of());

  /**
   * Length, width, height in m.
   *
   * @param length m
   * @param width m
   * @param height m
   */
  public record Box(double length, double width, double height) {
    /** Refuses what it cannot be. */
    public Box {
      Check.positive("length", length, "m");
      Check.positive("width", width, "m");
      Check.positive("height", height, "m");
    }

    /**
     * Whether a box of that size fits inside when each is laid with its sides in order of length.
     */
    public boolean holds(Box other) {
      double[] mine = {length, width, height};
      double[] theirs = {other.length, other.width, other.height};
      java.util.Arrays.sort(mine);
      java.util.Arrays.sort(theirs);
      return mine[0] >= theirs[0] && mine[1] >= theirs[1] && mine[2] >= theirs[2];
    }
  }
}
