package afterweld.thermal.shell;

import afterweld.thermal.Leg;
import afterweld.thermal.LegCorrection;
import afterweld.thermal.LegGeometry;
import afterweld.thermal.MovingSource;
import afterweld.thermal.WeldCourse;
import afterweld.thermal.WeldLegs;

/**
 * What a net that is even through the thickness leaves out near the arc, as a rise of the heat
 * potential: the uneven part of the moving source's field, and what unequal legs change when they
 * are heated at the top. Both are taken from the steady field of a wide plate, at the distance from
 * the arc as it is at that moment; they are gone a thickness away. SI units.
 *
 * <p>Nearer than the net's own source is wide the value at that distance is kept. After the arc has
 * stopped it fades as heat levels out through the thickest leg, exp(−π² a t/d²) [assumed].
 */
final class ShellLocalRise {
  private static final int FAR = 4;

  private final MovingSource source;
  private final LegCorrection correction;
  private final boolean uneven;
  private final boolean corrected;
  private final double k;
  private final double fading;
  private final double reach;
  private final double nearest;
  private final double centre;
  private final ShellRecord.Arc arc;
  private final WeldCourse course;
  private final double along;

  /**
   * The part of one pass in one leg.
   *
   * @param index of the leg
   * @param sourceDepth depth to which the heat enters, m
   * @param depth looked at, m
   * @param record whose section it is for
   * @param pass which of the record's arcs
   * @param nearest half-width of the net's source, m
   */
  ShellLocalRise(
      WeldLegs legs,
      int index,
      double sourceDepth,
      double depth,
      WeldCourse course,
      ShellRecord record,
      int pass,
      double offset,
      double nearest) {
    Leg leg = legs.legs().get(index);
    double wide = Double.POSITIVE_INFINITY;
    LegGeometry seen = legs.seenFrom(index, sourceDepth, depth, 0);
    LegGeometry endless =
        new LegGeometry(
            seen.thickness(),
            seen.jointThickness(),
            seen.lossThickness(),
            seen.sourceDepth(),
            seen.depth(),
            wide,
            wide);
    this.arc = record.arcs().get(pass);
    this.course = course;
    this.along = record.along();
    this.k = arc.speed() / (2 * leg.material().diffusivity());
    this.source = new MovingSource(endless, k, 0);
    this.correction = legs.correction(index);
    this.uneven = seen.sourceDepth() < seen.thickness();
    this.corrected = correction != LegCorrection.NONE;
    double rate = Math.PI / legs.thickest();
    this.fading = rate * rate * leg.material().diffusivity();
    this.reach = FAR * leg.thickness();
    this.nearest = nearest;
    this.centre = leg.left() ? -offset : offset;
  }

  /** Rise at a time and a distance from the weld centre (without sign), W/m. */
  double at(double time, double y) {
    double sinceStop = Math.max(0, time - arc.end());
    double faded = Math.exp(-fading * sinceStop);
    if (!(uneven || corrected) || time < arc.start() || faded < 1e-6) {
      return 0;
    }
    double welded = Math.min(arc.to(), arc.from() + (time - arc.start()) * arc.speed());
    double power = arc.power() * course.power(welded) * faded;
    double across = Math.max(Math.abs(y - centre), nearest);
    double sum = perWatt(along - welded, across);
    if (course.ring()) {
      sum += perWatt(along + arc.to() - welded, across);
    }
    return power * sum;
  }

  private double perWatt(double xi, double across) {
    double sum = 0;
    if (uneven && Math.hypot(xi, across) < reach) {
      sum += source.unevenRise(xi, across);
    }
    if (corrected) {
      sum += (correction.factor(k, across) - 1) * source.rise(xi, across);
    }
    return sum;
  }
}
