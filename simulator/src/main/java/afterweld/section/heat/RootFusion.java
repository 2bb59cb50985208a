package afterweld.section.heat;

import afterweld.quantity.Check;
import afterweld.thermal.PassHeat;
import java.util.List;

/**
 * Whether a butt or a corner is fused through: the pool counts from the bottom of the preparation,
 * which is the surface of square edges and the root face of a V; a double V is welded from both
 * sides in turn. Up to a tenth of the thickness may be missing, since no depth is known better.
 *
 * @param needed what has to melt, m
 * @param reached of it, m
 * @param thickness of the thinner part, m
 */
public record RootFusion(double needed, double reached, double thickness) {
  /** Share of the thickness that may be missing (assumed). */
  private static final double MISSING = 0.1;

  private static final double ROUNDING = 1e-9;

  /** Refuses what it cannot be. */
  public RootFusion {
    Check.notNegative("depth needed", needed, "m");
    Check.notNegative("depth reached", reached, "m");
    Check.positive("thickness", thickness, "m");
  }

  /** How deep the passes fuse a preparation. */
  public static RootFusion of(Groove groove, List<PassHeat> heats) {
    double thickness = groove.thickness();
    double first = PoolDepth.of(heats.get(0), thickness);
    double reached =
        switch (groove.preparation()) {
          case SINGLE_V -> first;
          case DOUBLE_V -> heats.size() > 1 ? first + PoolDepth.of(heats.get(1), thickness) : first;
          case SQUARE, FILLET ->
              heats.stream().mapToDouble(heat -> PoolDepth.of(heat, thickness)).max().orElseThrow();
        };
    return new RootFusion(groove.rootFace(), Math.min(reached, groove.rootFace()), thickness);
  }

  /**
   * At a place where the one bead of a weld has another width.
   *
   * @param halfWidth there, m
   */
  static RootFusion of(Groove groove, double halfWidth) {
    double reached = PoolDepth.unstated(halfWidth, groove.thickness());
    return new RootFusion(
        groove.rootFace(), Math.min(reached, groove.rootFace()), groove.thickness());
  }

  /** What is left unfused, m. */
  double missing() {
    return needed - reached;
  }

  /** Whether it is fused through, as far as that can be told. */
  public boolean through() {
    return reached > 0 && missing() <= MISSING * thickness + ROUNDING;
  }

  /** Whether all of it is. */
  public boolean certain() {
    return missing() <= ROUNDING;
  }

  /** Share of the thickness that is fused, 0 to 1. */
  public double fusedShare() {
    return 1 - missing() / thickness;
  }
}
