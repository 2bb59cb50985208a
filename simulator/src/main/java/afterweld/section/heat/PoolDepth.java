package afterweld.section.heat;

import afterweld.thermal.PassHeat;

/**
 * How deep a pass melts below the surface it is laid on, at the line where the parts meet. SI
 * units.
 *
 * <p>The penetration a case states, else half the width of the bead: a half circle, the pool of
 * heat that enters at the surface of thick metal. The back of a thinner plate throws that heat
 * back, so that a pool of half-width y reaches it from y = 2/3 of the thickness on (surface source
 * in the field of plates; from y = d/2 on the depth goes evenly from d/2 to d). Off the line it
 * falls like an ellipse.
 */
final class PoolDepth {
  private static final double BACK_IS_FELT = 1 / 2.0;
  private static final double BACK_IS_REACHED = 2 / 3.0;

  private PoolDepth() {}

  /**
   * Depth at the joint line, m, at most the thickness; 0 where the pool misses the line.
   *
   * @param thickness of the plate, m
   */
  static double of(PassHeat heat, double thickness) {
    double half = heat.fusionHalfWidth();
    double off = half > 0 ? heat.pass().offset() / half : 1;
    if (Math.abs(off) >= 1) {
      return 0;
    }
    double deepest =
        heat.pass().penetration().isPresent()
            ? Math.min(thickness, heat.pass().penetration().getAsDouble())
            : unstated(half, thickness);
    return deepest * Math.sqrt(1 - off * off);
  }

  /** Depth of a bead of which nothing but its half-width is known, m. */
  static double unstated(double halfWidth, double thickness) {
    return thickness * share(halfWidth / thickness);
  }

  private static double share(double halfWidth) {
    if (halfWidth <= BACK_IS_FELT) {
      return halfWidth;
    }
    double part = (halfWidth - BACK_IS_FELT) / (BACK_IS_REACHED - BACK_IS_FELT);
    return Math.min(1, BACK_IS_FELT + (1 - BACK_IS_FELT) * part);
  }
}
