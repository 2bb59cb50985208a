package afterweld.weld;

import afterweld.quantity.Check;
import afterweld.thermal.WeldCourse;
import afterweld.thermal.WeldCourse.Place;

/**
 * A weld around a tube.
 *
 * @param diameter m
 * @param position where on the circumference the section is taken
 * @param endCurrent current at the end of the lap over that at its start, falling evenly between
 */
public record Ring(double diameter, Place position, double endCurrent) {
  /** Refuses what it cannot be. */
  public Ring {
    Check.positive("diameter", diameter, "m");
    Check.positive("current at the end over that at the start", endCurrent, "");
  }

  /** At constant current. */
  public Ring(double diameter, Place position) {
    this(diameter, position, 1);
  }

  /** The name of a place on a ring, as in case files. */
  public static String label(Place place) {
    return switch (place) {
      case WORST -> "worst";
      case START -> "start";
      case MIDDLE -> "half lap";
      case END -> "lap end";
    };
  }

  /** The way of the arc. */
  WeldCourse course() {
    return WeldCourse.ring(Math.PI * diameter, position).withEndPower(endCurrent);
  }
}
