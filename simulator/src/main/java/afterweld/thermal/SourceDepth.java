package afterweld.thermal;

/**
 * Depth to which a pass brings its heat [assumed where no penetration is given]: through the whole
 * thickness up to 3 mm, above that half the width of the bead. Away from the bead it matters little
 * (6 mm plate: 3 % in the heat and in the width of the heat-affected zone).
 */
public final class SourceDepth {
  private static final double THROUGH = 3e-3;

  private SourceDepth() {}

  /**
   * Depth of the source in a leg, m.
   *
   * @param thickness of the leg, m
   * @param fusionHalfWidth distance of the fusion line from the bead's centre, m
   */
  public static double of(Pass pass, double thickness, double fusionHalfWidth) {
    double byRule = thickness <= THROUGH ? thickness : fusionHalfWidth;
    return Math.min(pass.penetration().orElse(byRule), thickness);
  }
}
