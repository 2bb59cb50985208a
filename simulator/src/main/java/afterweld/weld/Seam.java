package afterweld.weld;

import afterweld.quantity.Check;
import afterweld.thermal.WeldCourse;
import afterweld.thermal.WeldCourse.Place;

/**
 * A straight weld whose start and end count.
 *
 * @param length from start to stop, m
 * @param beyond how far the parts go on past both ends, m; 0 where they are welded from edge to
 *     edge
 * @param position where on it the section is taken
 * @param endCurrent current at its end over that at its start, falling evenly between
 */
public record Seam(double length, double beyond, Place position, double endCurrent) {
  /** Refuses what it cannot be. */
  public Seam {
    Check.positive("length", length, "m");
    Check.notNegative("part beyond the weld", beyond, "m");
    Check.positive("current at the end over that at the start", endCurrent, "");
  }

  /** The name of a place on a seam, as in case files. */
  public static String label(Place place) {
    return switch (place) {
      case WORST -> "worst";
      case START -> "start";
      case MIDDLE -> "middle";
      case END -> "end";
    };
  }

  /** The way of the arc. */
  WeldCourse course() {
    return WeldCourse.seam(length, beyond, position).withEndPower(endCurrent);
  }
}
