package afterweld.thermal;

/**
 * Where a weld runs and where its section is taken: once round a ring, or along a straight joint
 * that is long enough to be steady. Lengths in m.
 *
 * @param ring whether it goes round and meets its start
 * @param length circumference of the ring; 0 for a straight joint
 * @param place of the section on a ring; of no meaning on a straight joint
 * @param endPower power at the end of the lap over that at its start: 1 for a constant current,
 *     less where the welder takes it back; linear between
 */
public record WeldCourse(boolean ring, double length, Place place, double endPower) {
  private static final double SHORTEST_RING = 0.03;

  /** Where on a ring a section may be taken. */
  public enum Place {
    /** Where the legs get hottest. */
    WORST(Double.NaN),
    /** A thirtieth of the lap after the arc starts. */
    START(1 / 30.0),
    /** Opposite the start. */
    HALF_LAP(0.5),
    /** A twentieth of the lap before the arc stops. */
    LAP_END(0.95);

    private final double share;

    Place(double share) {
      this.share = share;
    }

    /** Share of the lap that is welded when the arc is there; NaN if it has to be searched. */
    public double share() {
      return share;
    }
  }

  /** Checks the numbers. */
  public WeldCourse {
    if (ring && !(length >= SHORTEST_RING)) {
      throw HeatInputException.outside(
          "diameter", length / Math.PI * 1e3, "mm", "9.6 mm or more (30 mm round)");
    }
    if (!(endPower > 0.2 && endPower <= 1.5)) {
      throw new IllegalArgumentException("end power " + endPower + " (expected 0.2 to 1.5)");
    }
  }

  /** Once round a tube at constant current. */
  public static WeldCourse ring(double circumference, Place place) {
    return new WeldCourse(true, circumference, place, 1);
  }

  /** Along a straight joint. */
  public static WeldCourse straight() {
    return new WeldCourse(false, 0, Place.HALF_LAP, 1);
  }

  /** The same course with the current taken back to a share of its first by the end of the lap. */
  public WeldCourse withEndPower(double share) {
    return new WeldCourse(ring, length, place, share);
  }

  /** Power over that at the start when a share of the course is welded. */
  double power(double share) {
    return 1 + (endPower - 1) * share;
  }
}
