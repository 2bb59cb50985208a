package afterweld.joint.bend;

import afterweld.quantity.Check;

/**
 * Bending round a former: what a bend test asks of the metal, and how sharp a bend it can take.
 *
 * <p>Outer strain {@code t/(D + t)} for thickness t and former diameter D, neutral axis at
 * mid-thickness. A wrap-around bend forces the same radius on every place; a plunger lets the soft
 * band take the bend, so the local strain is nearer the kink factor times this mean. Source:
 * geometry.
 */
public final class GuidedBend {
  /** What must stand beside a guided-bend strain. */
  public static final String PLUNGER_NOTE =
      "A wrap-around bend forces one radius on the whole bend; under a plunger the soft band takes"
          + " more than its share, about the kink factor times the mean strain.";

  private GuidedBend() {}

  /** Outer strain of a strip (m thick) round a former (m diameter). */
  public static double outerStrain(double thickness, double formerDiameter) {
    Check.positive("thickness", thickness, "m");
    return thickness / (Check.positive("former diameter", formerDiameter, "m") + thickness);
  }

  /** Smallest former diameter (m) for a metal that stands an outer strain between 0 and 1. */
  public static double smallestFormer(double thickness, double strain) {
    return Check.positive("thickness", thickness, "m")
        * (1 / Check.within("strain", strain, 1e-6, 1, "") - 1);
  }
}
