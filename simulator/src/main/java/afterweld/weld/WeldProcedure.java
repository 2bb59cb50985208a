package afterweld.weld;

import afterweld.quantity.Check;
import afterweld.thermal.HeatFlow;
import afterweld.thermal.Pass;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How it is welded, and the depth that the section is looked at.
 *
 * @param passes in the order they are welded, at least one
 * @param reinforcement height of the bead above flush, m; empty where it follows the bead width
 *     that the thermal model finds
 * @param ambient K
 * @param depth of the traverse below the arc side, m
 * @param heatFlow temperature field to use; empty where the rule decides
 */
public record WeldProcedure(
    List<Pass> passes,
    OptionalDouble reinforcement,
    double ambient,
    double depth,
    Optional<HeatFlow> heatFlow) {
  /** Ambient temperature that nobody stated, K: 20 °C (convention). */
  public static final double USUAL_AMBIENT = 293.15;

  /**
   * The depth that nobody stated: half way through the thinner part.
   *
   * @param thinnest its thickness, m
   * @return m
   */
  public static double usualDepth(double thinnest) {
    return thinnest / 2;
  }

  /** Refuses what it cannot be. */
  public WeldProcedure {
    Check.some("passes of a weld", passes);
    Check.notNegative("reinforcement", reinforcement, "m");
    Check.positive("ambient temperature", ambient, "K");
    Check.notNegative("depth", depth, "m");
    passes = List.copyOf(passes);
  }
}
