package afterweld.joint;

import afterweld.joint.JointSettings.BendLoad;
import afterweld.joint.JointSettings.BendSettings;
import afterweld.joint.bend.BendCoupon;
import afterweld.joint.bend.StripBend;
import java.util.ArrayList;
import java.util.List;

/** Joints that several tests share; lengths in mm and strengths in MPa in the arguments. */
public final class Profiles {
  public static final double MM = 1e-3;
  static final double MPA = 1e6;
  public static final SliceMetal H14 = metal(145, 152);
  public static final SliceMetal ANNEALED = metal(42, 110);
  private static final double STEP = 1e-6;

  private Profiles() {}

  public static SliceMetal metal(double proof, double tensile) {
    return new SliceMetal(proof * MPA, tensile * MPA);
  }

  /** Weld 125/190 to 5 mm, softened 115/180 to 12 mm, straight to the base 276/310 at 22 mm. */
  public static List<StrengthStation> workedStations() {
    List<StrengthStation> right = new ArrayList<>();
    right.add(station(5 - STEP, metal(125, 190), "weld"));
    right.add(station(5 + STEP, metal(115, 180), "softened"));
    right.add(station(12, metal(115, 180), "softened"));
    right.add(station(22 - STEP, metal(276, 310), "softened"));
    right.add(station(22 + STEP, metal(276, 310), "base"));
    right.add(station(75, metal(276, 310), "base"));
    return mirrored(right);
  }

  static SliceLine worked() {
    return SliceLine.through(workedStations());
  }

  static StrengthStation station(double distance, SliceMetal metal, String zone) {
    return new StrengthStation(distance * MM, metal, 6 * MM, zone);
  }

  static List<StrengthStation> mirrored(List<StrengthStation> right) {
    List<StrengthStation> all = new ArrayList<>();
    for (int i = right.size() - 1; i >= 0; i--) {
      StrengthStation s = right.get(i);
      if (s.distance() > 0) {
        all.add(new StrengthStation(-s.distance(), s.metal(), s.thickness(), s.zone()));
      }
    }
    all.addAll(right);
    return all;
  }

  /** Soft metal over a full width in the middle of a base, 160 mm long, 6 mm thick. */
  static SliceLine twoZones(double softWidth, SliceMetal soft, SliceMetal base) {
    double half = softWidth / 2 * MM;
    return new SliceLine(
        List.of(
            Slice.sound(-0.08, -half, 6 * MM, "base", base),
            Slice.sound(-half, half, 6 * MM, "soft", soft),
            Slice.sound(half, 0.08, 6 * MM, "base", base)));
  }

  /** A plateau, then a straight ramp to the base, in a sheet; slices of 0.25 mm. */
  public static SliceLine plateauAndRamp(
      double plateau, double rampEnd, double thickness, SliceMetal soft, SliceMetal base) {
    return plateauAndRamp(plateau, rampEnd, thickness, soft, base, 0.25);
  }

  public static SliceLine plateauAndRamp(
      double plateau,
      double rampEnd,
      double thickness,
      SliceMetal soft,
      SliceMetal base,
      double longest) {
    double t = thickness * MM;
    List<StrengthStation> right = new ArrayList<>();
    right.add(new StrengthStation(0, soft, t, "softened"));
    if (plateau > 0) {
      right.add(new StrengthStation(plateau * MM, soft, t, "softened"));
    }
    right.add(new StrengthStation((rampEnd - STEP) * MM, base, t, "softened"));
    right.add(new StrengthStation((rampEnd + STEP) * MM, base, t, "base"));
    right.add(new StrengthStation(75 * MM, base, t, "base"));
    return SliceLine.through(mirrored(right), longest * MM);
  }

  /** Strip of the bend examples: 150 x 25 mm. */
  public static BendCoupon strip(double degrees, BendLoad load) {
    return BendCoupon.of(new BendSettings(Math.toRadians(degrees), 0.150, 0.025, load));
  }

  public static StripBend bend(SliceLine line, double degrees) {
    return StripBend.bend(line, strip(degrees, BendLoad.COUPLES));
  }

  /** An unwelded strip 3 mm thick. */
  public static SliceLine unwelded(SliceMetal metal) {
    return SliceLine.uniform(0.150, 3 * MM, "base", metal);
  }

  /** Plateau to 6 mm, base from 12 mm. */
  public static SliceLine caseA() {
    return plateauAndRamp(6, 12, 3, ANNEALED, H14);
  }

  /** No plateau, base from 12 mm; slices of 0.1 mm, for the pointed minimum. */
  public static SliceLine caseB() {
    return plateauAndRamp(0, 12, 3, ANNEALED, H14, 0.1);
  }

  /** Plateau to 12 mm, base from 18 mm. */
  public static SliceLine caseC() {
    return plateauAndRamp(12, 18, 3, ANNEALED, H14);
  }
}
