package afterweld.joint;

import afterweld.quantity.BothUnits;
import afterweld.quantity.Check;
import afterweld.section.Cautions;
import afterweld.weld.Warning;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * A thin tube under internal pressure with a weld in it, for information only. All values carry
 * three significant figures and never go without {@link Cautions#PRESSURE}.
 *
 * <p>With R the mean radius: hoop stress {@code pR/t}, axial {@code pR/2t}, von Mises {@code
 * sqrt(3)/2 pR/t}. The axial pull crosses a weld around the tube, so its band breaks at {@code p =
 * 2 t tensile / R}; the hoop stress runs along it, so its metal first yields at {@code p =
 * 2/sqrt(3) proof t/R}, usually long before. Such a band, if shorter than {@code 0.78 sqrt(R t)},
 * is partly propped by its neighbours, which is ignored (lower estimate). A weld along the tube
 * crosses the full hoop stress, which every place of its band carries: nothing props it, it yields
 * first at that same pressure, and for its breaking use the cross-weld tension with {@code pR/t}.
 *
 * <p>Validity: R/t at least 10, closed ends, far from heads and fittings. Source: membrane theory.
 *
 * @param pressure as stated, Pa
 * @param hoop hoop stress at the pressure, Pa
 * @param axial axial stress at the pressure, Pa
 * @param equivalent von Mises stress at the pressure, Pa
 * @param bandYieldPressure at which the weakest metal first yields, Pa
 * @param baseYieldPressure at which the base as it was before welding first yields, Pa
 * @param axialRupturePressure at which the axial pull reaches the lowest tensile strength, Pa; of a
 *     weld around the tube
 * @param decayLength 0.78 sqrt(R t), m
 * @param warnings the pressure text first
 */
public record ThinCylinder(
    double pressure,
    double hoop,
    double axial,
    double equivalent,
    double bandYieldPressure,
    double baseYieldPressure,
    double axialRupturePressure,
    double decayLength,
    List<Warning> warnings) {

  private static final double THINNEST_RATIO = 10;
  private static final MathContext THREE_FIGURES = new MathContext(3);

  /** Rounds every computed value to three significant figures and copies the list. */
  public ThinCylinder {
    Check.notNegative("pressure", pressure, "Pa");
    Check.notNegative("stress", hoop, "Pa");
    Check.notNegative("stress", axial, "Pa");
    Check.notNegative("stress", equivalent, "Pa");
    Check.positive("yield pressure", bandYieldPressure, "Pa");
    Check.positive("yield pressure", baseYieldPressure, "Pa");
    Check.positive("rupture pressure", axialRupturePressure, "Pa");
    Check.positive("decay length", decayLength, "m");
    hoop = threeFigures(hoop);
    axial = threeFigures(axial);
    equivalent = threeFigures(equivalent);
    bandYieldPressure = threeFigures(bandYieldPressure);
    baseYieldPressure = threeFigures(baseYieldPressure);
    axialRupturePressure = threeFigures(axialRupturePressure);
    decayLength = threeFigures(decayLength);
    warnings = List.copyOf(warnings);
  }

  /**
   * The information values of a tube.
   *
   * @param tube outside diameter and pressure
   * @param line profile across the weld; its thinner end is the wall
   * @param before the same before welding
   * @param around whether the weld is known to go round the tube; else it may run along it
   * @throws IllegalArgumentException if the wall is thicker than a tenth of the mean radius
   */
  public static ThinCylinder of(
      JointSettings.Tube tube, SliceLine line, SliceLine before, boolean around) {
    double wall = line.referenceSection();
    double radius = (Check.positive("tube diameter", tube.diameter(), "m") - wall) / 2;
    checkThin(radius, wall);
    Check.within("pressure", tube.pressure(), 0, Double.MAX_VALUE, "Pa");
    return new ThinCylinder(
        tube.pressure(),
        tube.pressure() * radius / wall,
        tube.pressure() * radius / (2 * wall),
        equivalentStress(tube.pressure(), radius, wall),
        yieldPressure(lowest(line, true), radius),
        yieldPressure(lowest(before, true), radius),
        2 * lowest(line, false) / radius,
        decayLength(radius, wall),
        warnings(line.softBand().width(), decayLength(radius, wall), around));
  }

  /** Von Mises stress, Pa: pressure in Pa, mean radius and wall in m. */
  static double equivalentStress(double pressure, double radius, double wall) {
    return Math.sqrt(3) / 2 * pressure * radius / wall;
  }

  /** Pressure of first yield, Pa, for a proof stress times a wall (N/m) and a mean radius (m). */
  static double yieldPressure(double proofTimesWall, double radius) {
    return 2 / Math.sqrt(3) * proofTimesWall / radius;
  }

  private static double decayLength(double radius, double wall) {
    return 0.78 * Math.sqrt(radius * wall);
  }

  private static void checkThin(double radius, double wall) {
    if (!(radius >= THINNEST_RATIO * wall)) {
      throw new IllegalArgumentException(
          String.format(
              Locale.ROOT,
              "mean radius %.2f mm over wall %.2f mm: must be at least 10, thick tubes aren't covered",
              radius * 1e3,
              wall * 1e3));
    }
  }

  /** Lowest strength times section along the line, N/m. */
  private static double lowest(SliceLine line, boolean proof) {
    return line.slices().stream()
        .mapToDouble(s -> s.section() * (proof ? s.metal().proof() : s.metal().tensile()))
        .min()
        .orElseThrow();
  }

  private static List<Warning> warnings(double soft, double decay, boolean around) {
    List<Warning> warnings = new ArrayList<>();
    warnings.add(new Warning("pressure-code", Cautions.PRESSURE));
    if (soft > 0 && !around) {
      warnings.add(unpropped(soft));
    } else if (soft > 0 && soft < decay) {
      warnings.add(propped(soft, decay));
    }
    return warnings;
  }

  private static Warning unpropped(double soft) {
    return new Warning(
        "unpropped-band",
        "in a weld along the tube nothing props the softened band of "
            + BothUnits.length(soft)
            + ": every place of it carries the whole hoop stress, and it begins to yield at the"
            + " pressure shown for it; a weld round the tube is stated by 'ring'");
  }

  private static Warning propped(double soft, double decay) {
    return new Warning(
        "propped-band",
        "the softened band of "
            + BothUnits.length(soft)
            + " is shorter than "
            + BothUnits.length(decay)
            + ": its neighbours prop it, the yield pressure is a lower estimate");
  }

  private static double threeFigures(double value) {
    return new BigDecimal(value).round(THREE_FIGURES).doubleValue();
  }
}
