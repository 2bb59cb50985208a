package afterweld.joint.bend;

import afterweld.joint.JointSettings;
import afterweld.joint.SliceLine;
import afterweld.weld.Warning;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** What the reader of a bend result must know. */
final class BendWarnings {
  /** Radius in thicknesses under which plane sections fail (beam theory, assumed). */
  private static final double SHARP = 3;

  /** Width over thickness from which on a strip bends as a plate (assumed). */
  private static final double WIDE = 8;

  private BendWarnings() {}

  static List<Warning> of(BendCoupon coupon, CurvaturePeak peak, SliceLine strip) {
    List<Warning> warnings = new ArrayList<>();
    addSharp(warnings, peak);
    addWide(warnings, coupon, strip);
    if (coupon.strip().load() == JointSettings.BendLoad.EDGE) {
      warnings.add(
          new Warning(
              "edge-fold",
              "over an edge even an unwelded strip folds at the edge: compare with the unwelded"
                  + " strip, or bend by end couples"));
    }
    return warnings;
  }

  private static void addSharp(List<Warning> warnings, CurvaturePeak peak) {
    double radius = 1 / (peak.curvature() * peak.thickness());
    if (radius < SHARP) {
      warnings.add(
          new Warning(
              "sharp-bend",
              String.format(
                  Locale.ROOT,
                  "radius %.1f thicknesses: below 3 the neutral axis moves and the strain is only a"
                      + " guide",
                  radius)));
    }
  }

  private static void addWide(List<Warning> warnings, BendCoupon coupon, SliceLine strip) {
    double ratio = coupon.strip().width() / strip.left().thickness();
    if (ratio > WIDE) {
      warnings.add(
          new Warning(
              "wide-strip",
              String.format(
                  Locale.ROOT,
                  "strip %.1f times as wide as thick: beyond 8 it can't shrink along its width and"
                      + " needs 15 to 20 %% more moment",
                  ratio)));
    }
  }
}
