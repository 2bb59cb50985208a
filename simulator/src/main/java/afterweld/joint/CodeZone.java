package afterweld.joint;

import afterweld.quantity.Check;
import afterweld.quantity.UnitSystem;
import java.util.OptionalDouble;

/**
 * How far a design code lets the heat-affected zone reach, and how much more a tungsten arc softens
 * it. Source: EN 1999-1-1:2007, 6.1.6.3 and notes to table 3.2, from memory: check against the code
 * before use. Tabulated strengths of the zone are for metal arc (MIG).
 */
public final class CodeZone {
  private static final double MM = 1e-3;
  private static final double COOL = UnitSystem.ZERO_CELSIUS + 60;
  private static final double WARMEST = UnitSystem.ZERO_CELSIUS + 120;
  private static final double KELVIN_PER_DOUBLING = 120;

  private CodeZone() {}

  /** Alloy groups that the code tells apart. */
  public enum Series {
    /** 3xxx and 5xxx. */
    WORK_HARDENED,
    /** 6xxx. */
    MAGNESIUM_SILICON,
    /** 7xxx. */
    ZINC
  }

  /**
   * Reach each side of the weld's centre line for metal arc, m, with interpass temperatures up to
   * 60 °C.
   *
   * @param thickness m
   */
  public static double metalArcReach(double thickness) {
    Check.positive("thickness", thickness, "m");
    if (thickness <= 6 * MM) {
      return 20 * MM;
    }
    if (thickness <= 12 * MM) {
      return 30 * MM;
    }
    return thickness <= 25 * MM ? 35 * MM : 40 * MM;
  }

  /** Reach for a tungsten arc, m; the code gives none above 6 mm. */
  public static OptionalDouble tungstenArcReach(double thickness) {
    Check.positive("thickness", thickness, "m");
    return thickness <= 6 * MM ? OptionalDouble.of(30 * MM) : OptionalDouble.empty();
  }

  /**
   * What a warm interpass temperature multiplies the reach by.
   *
   * @param series alloy group
   * @param interpass K, at most 120 °C
   */
  public static double interpassFactor(Series series, double interpass) {
    Check.within("interpass temperature", interpass, 0, WARMEST, "K");
    double slope = series == Series.ZINC ? 1.5 : 1;
    return 1 + slope * Math.max(0, interpass - COOL) / KELVIN_PER_DOUBLING;
  }

  /**
   * What a tungsten arc multiplies the zone's strengths by. Metal in the O temper stays as it is.
   *
   * @param series alloy group
   * @param thickness m
   */
  public static double tungstenArcFactor(Series series, double thickness) {
    boolean thin = Check.positive("thickness", thickness, "m") <= 6 * MM;
    if (series == Series.WORK_HARDENED) {
      return thin ? 1 : 0.9;
    }
    return thin ? 0.8 : 0.64;
  }
}
