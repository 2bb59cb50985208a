package afterweld.joint;

import afterweld.quantity.Check;

/**
 * A thin piece of the line across the weld, of one metal and one thickness.
 *
 * @param from left face, m from the weld centre
 * @param to right face, m
 * @param thickness m
 * @param zone what the zone is called in results
 * @param metal its strengths
 * @param lostArea share of the section lost to pores or lack of fusion, 0 up to but not 1
 */
public record Slice(
    double from, double to, double thickness, String zone, SliceMetal metal, double lostArea) {

  /** Refuses an empty slice, a thickness that isn't positive and a lost area outside 0 to 1. */
  public Slice {
    Check.positive("slice length", to - from, "m");
    Check.positive("thickness", thickness, "m");
    if (!(lostArea >= 0 && lostArea < 1)) {
      throw new IllegalArgumentException("lost area " + lostArea + ": must be 0 up to, not 1");
    }
  }

  /** A slice of sound metal. */
  public static Slice sound(
      double from, double to, double thickness, String zone, SliceMetal metal) {
    return new Slice(from, to, thickness, zone, metal, 0);
  }

  /** Extent along the line, m. */
  public double length() {
    return to - from;
  }

  /** Middle of the slice, m from the weld centre. */
  public double centre() {
    return 0.5 * (from + to);
  }

  /** Section that carries, per metre of width, m. */
  public double section() {
    return thickness * (1 - lostArea);
  }

  /** Length of the part between two places, m; 0 if it lies outside. */
  public double overlap(double low, double high) {
    return Math.max(0, Math.min(to, high) - Math.max(from, low));
  }

  Slice between(double low, double high) {
    return new Slice(low, high, thickness, zone, metal, lostArea);
  }

  Slice of(SliceMetal other) {
    return new Slice(from, to, thickness, zone, other, lostArea);
  }

  Slice inZone(String name) {
    return new Slice(from, to, thickness, name, metal, lostArea);
  }

  Slice cutTo(double most) {
    return new Slice(from, to, Math.min(thickness, most), zone, metal, lostArea);
  }

  Slice thicker(double height) {
    return new Slice(from, to, thickness + height, zone, metal, lostArea);
  }
}
