package afterweld.strength;

import afterweld.material.Composition;
import afterweld.material.Element;

/**
 * Strength of metal that holds nothing to harden it, such as weld metal of 1100 in 3003: as soft as
 * the annealed sheet, between 1100-O and 3003-O by its manganese.
 *
 * <pre>
 * yield   = 34 + (41 - 34) Mn/1.2      tensile = 90 + (110 - 90) Mn/1.2             (MPa, wt%)
 * hardness HV = 0.26 tensile + 0.025 yield
 * </pre>
 *
 * Validity: at most 0.1 wt% Mg, 0.6 Si, 0.3 Cu and 1.5 Mn; heat does not change it. Source: typical
 * values of the Aluminum Association for 1100-O and 3003-O; that weld metal of these alloys is as
 * soft as the annealed sheet is common practice.
 */
public final class PlainStrength {
  private static final double MEGA = 1e6;
  private static final double MOST_MAGNESIUM = 0.1;
  private static final double MOST_SILICON = 0.6;
  private static final double MOST_COPPER = 0.3;
  private static final double MOST_MANGANESE = 1.5;
  private static final double MANGANESE_OF_3003 = 1.2;
  private static final double HARDNESS_OVER_TENSILE = 0.26;
  private static final double HARDNESS_OVER_YIELD = 0.025;

  private PlainStrength() {}

  /** Whether a metal holds so little of what hardens that this holds. */
  public static boolean holdsFor(Composition metal) {
    return metal.of(Element.MG) <= MOST_MAGNESIUM
        && metal.of(Element.SI) <= MOST_SILICON
        && metal.of(Element.CU) <= MOST_COPPER
        && metal.of(Element.MN) <= MOST_MANGANESE;
  }

  /** Strength of a metal for which this holds. */
  public static Strength of(Composition metal) {
    double share = metal.of(Element.MN) / MANGANESE_OF_3003;
    double yield = 34 + 7 * share;
    double tensile = 90 + 20 * share;
    double hardness = HARDNESS_OVER_TENSILE * tensile + HARDNESS_OVER_YIELD * yield;
    return new Strength(yield * MEGA, tensile * MEGA, hardness);
  }
}
