package afterweld.thermal;

/**
 * The weld as the temperature field of one leg sees it. Lengths in m.
 *
 * @param thickness of this leg
 * @param jointThickness half the sum of the thicknesses of all legs that share the heat: the
 *     plate's own in a butt of equal plates
 * @param lossThickness thickness that the surface losses are related to: the mean of the legs
 * @param sourceDepth depth to which the heat enters evenly, 0 for a source on the surface
 * @param depth of the line that is looked at, below the arc side
 * @param ownWidth from the bead's centre to the end of this leg; infinite if wide
 * @param otherWidth from the bead's centre to the end on the other side; infinite if wide
 */
public record LegGeometry(
    double thickness,
    double jointThickness,
    double lossThickness,
    double sourceDepth,
    double depth,
    double ownWidth,
    double otherWidth) {

  /** Checks that the lengths fit together. */
  public LegGeometry {
    if (!(thickness > 0 && jointThickness > 0 && lossThickness > 0)) {
      throw new IllegalArgumentException("a leg without thickness");
    }
    if (!(sourceDepth >= 0 && sourceDepth <= thickness && depth >= 0 && depth <= thickness)) {
      throw HeatInputException.outside(
          "depth", Math.max(sourceDepth, depth) * 1e3, "mm", "0 to the thickness");
    }
    if (!(ownWidth > 0 && otherWidth > 0)) {
      throw HeatInputException.outside(
          "offset", Math.min(ownWidth, otherWidth) * 1e3, "mm from an edge", "more than 0");
    }
  }

  /** A wide plate of one thickness with the weld across it, all in m. */
  public static LegGeometry plate(double thickness, double sourceDepth, double depth) {
    double wide = Double.POSITIVE_INFINITY;
    return new LegGeometry(thickness, thickness, thickness, sourceDepth, depth, wide, wide);
  }

  /** The same leg looked at in another depth, m. */
  public LegGeometry atDepth(double other) {
    return new LegGeometry(
        thickness, jointThickness, lossThickness, sourceDepth, other, ownWidth, otherWidth);
  }
}
