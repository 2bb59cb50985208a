package afterweld.thermal;

import afterweld.quantity.Check;

/**
 * Where a weld runs and where its section is taken: once round a ring, along a straight seam that
 * starts and stops, or along one so long that it is steady. Lengths in m.
 *
 * @param ring whether it goes round and meets its start
 * @param length of the weld: circumference of a ring; 0 where it is as long as it has to be
 * @param beyond how far the parts go on past both ends of a seam; 0 for a ring
 * @param place of the section; of no meaning where the weld is steady
 * @param endPower power at the end of the weld over that at its start: 1 for a constant current,
 *     less where the welder takes it back; linear between
 */
public record WeldCourse(boolean ring, double length, double beyond, Place place, double endPower) {
  /** A shorter way round is no thin wall, m (assumed). */
  private static final double SHORTEST_RING = 0.03;

  /** A shorter weld is a tack, m (assumed). */
  private static final double SHORTEST_SEAM = 0.01;

  /** Where a section may be taken. */
  public enum Place {
    /** Where the legs get hottest. */
    WORST(Double.NaN, Double.NaN),
    /** A thirtieth of the lap after the arc starts; a tenth of a seam. */
    START(1 / 30.0, 0.1),
    /** Half way. */
    MIDDLE(0.5, 0.5),
    /** A twentieth of the lap before the arc stops; a tenth of a seam. */
    END(0.95, 0.9);

    private final double ofLap;
    private final double ofSeam;

    Place(double ofLap, double ofSeam) {
      this.ofLap = ofLap;
      this.ofSeam = ofSeam;
    }
  }

  /** Checks the numbers. */
  public WeldCourse {
    Check.notNegative("way beyond the weld", beyond, "m");
    if (ring && !(length >= SHORTEST_RING)) {
      throw HeatInputException.outside(
          "diameter", length / Math.PI * 1e3, "mm", "9.6 mm or more (30 mm round)");
    }
    if (!ring && length != 0 && !(length >= SHORTEST_SEAM)) {
      throw HeatInputException.outside("length", length * 1e3, "mm", "10 mm or more");
    }
    if (!(endPower > 0.2 && endPower <= 1.5)) {
      throw new IllegalArgumentException("end power " + endPower + " (expected 0.2 to 1.5)");
    }
  }

  /** Once round a tube at constant current. */
  public static WeldCourse ring(double circumference, Place place) {
    return new WeldCourse(true, circumference, 0, place, 1);
  }

  /**
   * Along a seam at constant current.
   *
   * @param length from start to stop, m
   * @param beyond how far the parts go on past both ends, m
   */
  public static WeldCourse seam(double length, double beyond, Place place) {
    return new WeldCourse(false, length, beyond, place, 1);
  }

  /** Along a straight joint that is long enough to be steady. */
  public static WeldCourse steady() {
    return new WeldCourse(false, 0, 0, Place.MIDDLE, 1);
  }

  /** The same course with the current taken back to a share of its first by its end. */
  public WeldCourse withEndPower(double share) {
    return new WeldCourse(ring, length, beyond, place, share);
  }

  /** The same course with its section elsewhere. */
  public WeldCourse at(Place other) {
    return new WeldCourse(ring, length, beyond, other, endPower);
  }

  /** Whether the weld has a start and an end that are seen. */
  public boolean ends() {
    return length > 0;
  }

  /** Length of the parts along the weld, m. */
  public double whole() {
    return length + 2 * beyond;
  }

  /** Where the arc stops, m from the end of the parts. */
  public double stop() {
    return beyond + length;
  }

  /**
   * Where a place lies, m from the end of the parts; NaN if it has to be searched.
   *
   * @param named not of a steady weld
   */
  public double along(Place named) {
    return beyond + fromStart(named);
  }

  /** Where a place lies, m from the start of the weld; NaN if it has to be searched. */
  public double fromStart(Place named) {
    return (ring ? named.ofLap : named.ofSeam) * length;
  }

  /**
   * Power over that at the start.
   *
   * @param along where the arc is, m from the end of the parts
   */
  public double power(double along) {
    double share = length == 0 ? 0 : Math.min(1, Math.max(0, (along - beyond) / length));
    return 1 + (endPower - 1) * share;
  }
}
