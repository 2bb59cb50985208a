package afterweld.joint;

import afterweld.joint.JointSettings.Fillet;
import afterweld.joint.JointSettings.FilletLoad;
import afterweld.joint.JointSettings.FilletSides;
import afterweld.quantity.BothUnits;
import afterweld.quantity.Check;
import afterweld.weld.Warning;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What one fillet weld carries, characteristic and for design (over 1.25).
 *
 * <pre>
 * throat           a = z1 z2 / sqrt(z1^2 + z2^2), no credit for a convex face or for penetration
 * throat stress    sqrt( normal^2 + 3 (shear^2 + shear along^2) ) at most fw
 * along the weld   F = fw a L / sqrt 3
 * across the weld  F = fw a L / sqrt 2          plate pulled, throat at 45 degrees
 * simple rule      F = 0.6 fw a L
 * leg planes       shear F = haz tensile z L / sqrt 3,  normal F = haz tensile z L
 * </pre>
 *
 * The lower of throat and leg planes counts; of the planes, shear on the shorter leg is the lowest.
 * The ratio of across to along, 1.22, agrees with the 1.2 that Marsh, Welding J. 67 (1988) 171s,
 * cites from tee joints. Validity: legs of at least 2 mm, sound root; length at least 8 throats, as
 * a shorter one is not counted (EN 1999-1-1 8.6.3.3, from memory), and 30 mm (common practice).
 * Source: throat, Dwight, Aluminium Design and Construction (1999) 11.7; stress, EN 1999-1-1 8.6.3
 * (from memory).
 *
 * <p>Loaded along, the shear is taken as even over the length. In a lap that is loaded at its ends
 * the ends take more: from 100 throats on the code counts {@code (1.2 - 0.2 L / (100 a)) L} (EN
 * 1999-1-1 8.6.3.3, from memory, meant to about 300 throats). How the load comes in is not known
 * here, so that is said and not counted.
 *
 * @param throat a, m
 * @param length length that counts, m
 * @param throatForce at which the throat fails, N
 * @param simpleForce by the simple rule, N
 * @param legForce at which the weaker leg plane fails, N
 * @param onBothSides whether the joint has a second one like it on the other side
 * @param warnings what the formula doesn't see
 */
public record FilletWeld(
    double throat,
    double length,
    double throatForce,
    double simpleForce,
    double legForce,
    boolean onBothSides,
    List<Warning> warnings) {
  /** Partial factor on the strength. */
  public static final double DESIGN_FACTOR = 1.25;

  /** Share of a predicted tensile strength that may stand for a characteristic one (assumed). */
  public static final double PREDICTED_SHARE = 0.8;

  private static final double SHEAR_RULE = 0.6;
  private static final double SMALLEST_LEG = 2e-3;
  private static final double SHORTEST = 30e-3;
  private static final double SHORTEST_IN_THROATS = 8;
  private static final double LONG_IN_THROATS = 100;
  private static final double LONGEST_COUNTED_IN_THROATS = 300;
  private static final Warning NOT_SEEN =
      new Warning(
          "fillet-not-seen",
          "a root gap, lack of fusion at the root, and a 4xxx filler on a base with more than 2 %"
              + " magnesium weaken a fillet and are not seen by the formula");
  private static final Warning ONE_SIDED =
      new Warning(
          "fillet-one-sided",
          "a fillet on one side only, pulled across, also bends about its root: not covered");

  /** Copies the list. */
  public FilletWeld {
    Check.positive("throat", throat, "m");
    Check.positive("length", length, "m");
    Check.positive("force", throatForce, "N");
    Check.positive("force", simpleForce, "N");
    Check.positive("force", legForce, "N");
    warnings = List.copyOf(warnings);
  }

  /**
   * One fillet weld.
   *
   * @param fillet legs, length and direction of the load
   * @param weldMetal fw, strength of the weld metal as the code gives it as welded, Pa
   * @param hazTensile characteristic tensile strength of the heat-affected zone along the legs, Pa
   * @param soundEnds whether the ends are returned or otherwise full; else one throat is lost at
   *     each
   * @throws IllegalArgumentException for legs under 2 mm or a length under 8 throats or 30 mm
   */
  public static FilletWeld of(
      Fillet fillet, double weldMetal, double hazTensile, boolean soundEnds) {
    Check.positive("weld-metal strength", weldMetal, "Pa");
    Check.positive("tensile strength of the heat-affected zone", hazTensile, "Pa");
    double throat = throat(fillet.leg(), fillet.secondLeg());
    checkLength(fillet.length(), throat);
    double length = soundEnds ? fillet.length() : fillet.length() - 2 * throat;
    double area = throat * length;
    double shorterLeg = Math.min(fillet.leg(), fillet.secondLeg());
    boolean both = fillet.sides().equals(Optional.of(FilletSides.BOTH));
    return new FilletWeld(
        throat,
        length,
        weldMetal * area / Math.sqrt(fillet.load() == FilletLoad.ALONG ? 3 : 2),
        SHEAR_RULE * weldMetal * area,
        hazTensile / Math.sqrt(3) * shorterLeg * length,
        both,
        warnings(fillet.load(), both, length, throat));
  }

  private static List<Warning> warnings(
      FilletLoad load, boolean both, double length, double throat) {
    List<Warning> warnings = new ArrayList<>(List.of(NOT_SEEN));
    if (!both) {
      warnings.add(ONE_SIDED);
    }
    if (load == FilletLoad.ALONG && length > LONG_IN_THROATS * throat) {
      warnings.add(unevenShear(length, throat));
    }
    return warnings;
  }

  private static Warning unevenShear(double length, double throat) {
    String counted =
        length > LONGEST_COUNTED_IN_THROATS * throat
            ? "its rule is not meant for more than about 300 throats, "
                + BothUnits.length(LONGEST_COUNTED_IN_THROATS * throat)
            : String.format(
                Locale.ROOT, "%.0f %%", 100 * (1.2 - 0.2 * length / (LONG_IN_THROATS * throat)));
    return new Warning(
        "long-fillet",
        "a fillet loaded along, longer than 100 throats, "
            + BothUnits.length(LONG_IN_THROATS * throat)
            + ": even shear over its length is assumed; in a lap that is loaded at its ends the code"
            + " counts less of it ("
            + counted
            + "; EN 1999-1-1 8.6.3.3, from memory)");
  }

  /** Throat of a fillet with two legs of at least 2 mm, m. */
  public static double throat(double leg, double secondLeg) {
    Check.within("leg", leg, SMALLEST_LEG, Double.MAX_VALUE, "m");
    Check.within("second leg", secondLeg, SMALLEST_LEG, Double.MAX_VALUE, "m");
    return leg * secondLeg / Math.hypot(leg, secondLeg);
  }

  /** Shortest fillet that counts, m, for its throat in m. */
  public static double shortest(double throat) {
    return Math.max(SHORTEST_IN_THROATS * throat, SHORTEST);
  }

  private static void checkLength(double length, double throat) {
    double shortest = shortest(throat);
    if (!(length >= shortest)) {
      throw new IllegalArgumentException(
          "fillet length "
              + BothUnits.length(length)
              + ": must be at least eight throats and 30 mm, "
              + BothUnits.length(shortest));
    }
  }

  /** Force that the fillet carries, characteristic, N: the lower of throat and leg plane. */
  public double force() {
    return Math.min(throatForce, legForce);
  }

  /** Force for design, N. */
  public double designForce() {
    return force() / DESIGN_FACTOR;
  }

  /** Whether the leg plane rather than the throat decides. */
  public boolean legDecides() {
    return legForce < throatForce;
  }

  /**
   * fw of weld metal after heat treatment, Pa: only if the whole joint was solution treated and the
   * weld metal responds; always to be shown beside the value as welded.
   *
   * @param tensile predicted tensile strength of the weld metal, Pa
   * @param solutionTreated whether the whole joint was solution treated and the weld metal responds
   */
  public static OptionalDouble heatTreatedStrength(double tensile, boolean solutionTreated) {
    Check.positive("weld-metal strength", tensile, "Pa");
    return solutionTreated ? OptionalDouble.of(PREDICTED_SHARE * tensile) : OptionalDouble.empty();
  }
}
