package afterweld.joint.bend;

import afterweld.joint.Slice;
import afterweld.joint.SliceLine;
import afterweld.quantity.Check;
import afterweld.weld.Warning;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/**
 * A strip across the weld bent by end couples or over an edge: soft metal takes the bend, hard
 * metal stays straight, and the strip kinks. The moment must be the same everywhere (couples), so
 * hard metal hardly curves until its surface yields, while soft metal curves until it has hardened
 * up to that moment.
 *
 * <p>Teaching caution: over an edge even an unwelded strip of metal that hardly hardens folds at
 * the edge. Only couples show what the weld does; otherwise show the unwelded strip beside it.
 *
 * <p>Validity: neutral axis at mid-thickness (radius over about 3 thicknesses), no cracks, release
 * purely elastic (no Bauschinger effect). Slices follow the power law even where a uniform strain
 * is known. {@link BendSection} and {@link BendSolver} hold the formulae. Source: model definition.
 *
 * @param moment greatest moment along the strip, N m
 * @param meanCurvature angle under load over length, 1/m
 * @param peakCurvature sharpest curvature under load, 1/m; at a pointed minimum or under an edge it
 *     depends on the slices of 0.25 mm, use the average there
 * @param averagedPeakCurvature the same averaged over one thickness, for a soft minimum that is a
 *     point rather than a plateau, 1/m
 * @param endCurvature curvature under load at the flatter end of the strip: the base, 1/m
 * @param angle under load, rad
 * @param springback rad
 * @param outerStrain surface strain at the sharpest place
 * @param averagedOuterStrain the same averaged over one thickness
 * @param line curvature along the strip, from left to right
 * @param warnings limits of what the numbers mean
 */
public record StripBend(
    double moment,
    double meanCurvature,
    double peakCurvature,
    double averagedPeakCurvature,
    double endCurvature,
    double angle,
    double springback,
    double outerStrain,
    double averagedOuterStrain,
    List<Bent> line,
    List<Warning> warnings) {
  private static final double LONGEST_SLICE = 0.25e-3;
  private static final double SHORTEST_STRIP = 4;

  /** Copies the lists. */
  public StripBend {
    Check.positive("moment", moment, "N m");
    Check.positive("curvature", meanCurvature, "1/m");
    Check.positive("curvature", peakCurvature, "1/m");
    Check.positive("curvature", averagedPeakCurvature, "1/m");
    Check.finite("curvature", endCurvature, "1/m");
    Check.positive("angle", angle, "rad");
    Check.finite("springback", springback, "rad");
    Check.positive("strain", outerStrain, "");
    Check.positive("strain", averagedOuterStrain, "");
    line = List.copyOf(line);
    warnings = List.copyOf(warnings);
  }

  /**
   * One slice of the bent strip.
   *
   * @param position middle of the slice along the strip, m from the weld centre
   * @param length of the slice, m
   * @param curvature under load, 1/m
   * @param set curvature left after release, 1/m
   */
  public record Bent(double position, double length, double curvature, double set) {
    /** Refuses what it cannot be. */
    public Bent {
      Check.finite("position", position, "m");
      Check.positive("length", length, "m");
      Check.finite("curvature", curvature, "1/m");
      Check.finite("curvature left", set, "1/m");
    }
  }

  /**
   * A place on the strip's mid-thickness line, seen from the side.
   *
   * @param distance along the bent strip, m from the weld centre
   * @param along m, in the direction of the strip at the weld centre
   * @param height m, towards the inside of the bend
   */
  public record Place(double distance, double along, double height) {
    /** Refuses what it cannot be. */
    public Place {
      Check.finite("distance", distance, "m");
      Check.finite("way along", along, "m");
      Check.finite("height", height, "m");
    }
  }

  /**
   * Bends a strip cut from the line; where the line is shorter than the strip, the base goes on.
   *
   * @throws IllegalArgumentException if the strip is shorter than 4 thicknesses or than the
   *     softened band
   */
  public static StripBend bend(SliceLine line, BendCoupon coupon) {
    checkFits(line, coupon);
    return whole(line, coupon);
  }

  /** The same of a strip that may be softened from end to end. */
  static StripBend whole(SliceLine line, BendCoupon coupon) {
    SliceLine strip = line.over(coupon.strip().length()).refined(LONGEST_SLICE);
    BendSolver solver = new BendSolver(strip, coupon);
    double moment = solver.moment();
    List<Bent> bent = new ArrayList<>();
    for (int i = 0; i < strip.slices().size(); i++) {
      Slice slice = strip.slices().get(i);
      bent.add(
          new Bent(
              slice.centre(), slice.length(), solver.curvature(i, moment), solver.set(i, moment)));
    }
    return result(strip, coupon, moment, bent);
  }

  private static void checkFits(SliceLine line, BendCoupon coupon) {
    double length = coupon.strip().length();
    Check.within(
        "strip length",
        length,
        SHORTEST_STRIP * Math.max(line.left().thickness(), line.right().thickness()),
        Double.MAX_VALUE,
        "m");
    // A side that is softened to its end has no edge that a longer strip could take in.
    SliceLine.Band soft = line.softBand();
    boolean beyond =
        (soft.low() > line.from() && soft.low() < -length / 2)
            || (soft.high() < line.to() && soft.high() > length / 2);
    if (beyond) {
      throw new IllegalArgumentException(
          String.format(
              Locale.ROOT,
              "the softened band reaches %.0f mm to the left and %.0f mm to the right of the weld"
                  + " centre: the strip must be longer than twice that, and is %.0f mm",
              -1e3 * soft.low(),
              1e3 * soft.high(),
              1e3 * length));
    }
  }

  private static StripBend result(
      SliceLine strip, BendCoupon coupon, double moment, List<Bent> bent) {
    double angle = bent.stream().mapToDouble(b -> b.curvature() * b.length()).sum();
    double left = bent.stream().mapToDouble(b -> b.set() * b.length()).sum();
    CurvaturePeak peak = CurvaturePeak.of(strip, bent);
    return new StripBend(
        moment,
        angle / coupon.strip().length(),
        peak.curvature(),
        peak.averaged(),
        Math.min(bent.get(0).curvature(), bent.get(bent.size() - 1).curvature()),
        angle,
        angle - left,
        peak.curvature() * peak.thickness() / 2,
        peak.averaged() * peak.thickness() / 2,
        bent,
        BendWarnings.of(coupon, peak, strip));
  }

  /** How much sharper the sharpest place is than the mean: 1 for an even bend. */
  public double kinkFactor() {
    return peakCurvature / meanCurvature;
  }

  /** The kink factor with the peak averaged over one thickness. */
  public double averagedKinkFactor() {
    return averagedPeakCurvature / meanCurvature;
  }

  /** Distance from the weld centre within which half of the angle under load lies, m. */
  public double halfAngleWithin() {
    List<Bent> outwards =
        line.stream().sorted(Comparator.comparingDouble(b -> Math.abs(b.position()))).toList();
    double inside = 0;
    for (Bent bent : outwards) {
      inside += bent.curvature() * bent.length();
      if (inside >= angle / 2) {
        return Math.abs(bent.position());
      }
    }
    return Math.abs(outwards.get(outwards.size() - 1).position());
  }

  /** Mid-thickness line under load, from left to right, the weld centre at 0, 0 and level there. */
  public List<Place> shapeUnderLoad() {
    return BentShape.of(line, Bent::curvature);
  }

  /** Mid-thickness line after release. */
  public List<Place> shapeReleased() {
    return BentShape.of(line, Bent::set);
  }
}
