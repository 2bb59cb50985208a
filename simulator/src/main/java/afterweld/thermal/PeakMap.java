package afterweld.thermal;

import java.util.Arrays;
import java.util.List;

/**
 * The highest temperature that every place of thin-walled parts comes to in a weld: for drawing the
 * parts unrolled, x along the weld, y from the weld into each leg. Mean through the thickness. SI
 * units and kelvin; immutable.
 */
public final class PeakMap {
  private final WeldCourse course;
  private final double section;
  private final double[] along;
  private final List<double[]> across;
  private final List<double[][]> peaks;

  /**
   * Of a weld that was computed.
   *
   * @param course of the weld
   * @param section where the section was taken, m from the start of the weld
   * @param along places along the weld, m from its start, evenly spaced
   * @param across for each leg the distances from the weld centre, m, beginning with 0
   * @param peaks for each leg the peak temperatures, K, at {@code [distance][place]}
   */
  public PeakMap(
      WeldCourse course,
      double section,
      double[] along,
      List<double[]> across,
      List<double[][]> peaks) {
    this.course = course;
    this.section = section;
    this.along = along;
    this.across = across;
    this.peaks = peaks;
  }

  /** Whether the weld goes round and meets its start. */
  public boolean ring() {
    return course.ring();
  }

  /** Length of the weld that was computed, m: the circumference of a ring. */
  public double length() {
    return course.length();
  }

  /** Where the section was taken, m from the start of the weld. */
  public double section() {
    return section;
  }

  /** Where a named place lies, m from the start of the weld; the worst is the section. */
  public double fromStart(WeldCourse.Place place) {
    return place == WeldCourse.Place.WORST ? section : course.fromStart(place);
  }

  /** Places along the weld, m from its start; negative where the parts begin before it. */
  public double[] along() {
    return along.clone();
  }

  /** How many legs there are, in the order of the weld's legs. */
  public int legs() {
    return across.size();
  }

  /** Distances from the weld centre in a leg, m; the first is 0. */
  public double[] across(int leg) {
    return across.get(leg).clone();
  }

  /** Peak temperature, K, at a place along and a distance across by their index. */
  public double peak(int leg, int place, int distance) {
    return peaks.get(leg)[distance][place];
  }

  /** Peak temperatures across one leg at a place along the weld (m), K; linear between places. */
  public double[] profile(int leg, double place) {
    double spacing = along[1] - along[0];
    double index = (place - along[0]) / spacing;
    int below = (int) Math.floor(index);
    double part = index - below;
    return Arrays.stream(peaks.get(leg))
        .mapToDouble(line -> (1 - part) * line[at(below)] + part * line[at(below + 1)])
        .toArray();
  }

  /** How much hotter the end gets than the middle, K: mean over the legs, at a distance. */
  public double hotterAtEnd(double distance) {
    double sum = 0;
    for (int leg = 0; leg < legs(); leg++) {
      sum +=
          peak(leg, fromStart(WeldCourse.Place.END), distance)
              - peak(leg, fromStart(WeldCourse.Place.MIDDLE), distance);
    }
    return sum / legs();
  }

  /**
   * Peak temperature, K; linear between what was computed, beyond the end of a leg that of its end.
   *
   * @param place m from the start of the weld
   * @param distance m from the weld centre, without sign
   */
  public double peak(int leg, double place, double distance) {
    double[] distances = across.get(leg);
    double[] values = profile(leg, place);
    int outer = 1;
    while (outer < distances.length - 1 && distances[outer] < distance) {
      outer++;
    }
    double part = (distance - distances[outer - 1]) / (distances[outer] - distances[outer - 1]);
    return values[outer - 1] + Math.min(1, part) * (values[outer] - values[outer - 1]);
  }

  private int at(int place) {
    return course.ring()
        ? Math.floorMod(place, along.length)
        : Math.max(0, Math.min(place, along.length - 1));
  }

  /** Peak temperatures across one leg at a named place, K; the worst is the section. */
  public double[] profile(int leg, WeldCourse.Place place) {
    return profile(leg, fromStart(place));
  }

  /**
   * Where the legs get hottest, m along the weld: by the mean of the peaks up to a distance; not
   * nearer to the ends of a seam than its named places, as coupons are not taken there either.
   *
   * @param reach m from the weld centre
   */
  public double hottest(double reach) {
    int best = -1;
    for (int place = 0; place < along.length; place++) {
      boolean taken = course.ring() || within(along[place]);
      if (taken && (best < 0 || warmth(place, reach) > warmth(best, reach))) {
        best = place;
      }
    }
    return along[best];
  }

  private boolean within(double place) {
    return place >= course.fromStart(WeldCourse.Place.START)
        && place <= course.fromStart(WeldCourse.Place.END);
  }

  private double warmth(int place, double reach) {
    double sum = 0;
    for (int leg = 0; leg < legs(); leg++) {
      double[] distance = across.get(leg);
      for (int line = 1; line < distance.length && distance[line] <= reach; line++) {
        double[][] values = peaks.get(leg);
        double mean = (values[line][place] + values[line - 1][place]) / 2;
        sum += mean * (distance[line] - distance[line - 1]);
      }
    }
    return sum;
  }
}
