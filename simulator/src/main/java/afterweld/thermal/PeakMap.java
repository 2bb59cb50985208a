package afterweld.thermal;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The highest temperature that every place of thin-walled parts comes to in a weld: for drawing the
 * parts unrolled, x along the weld, y from the weld into each leg. Mean through the thickness. SI
 * units and kelvin; immutable.
 */
public final class PeakMap {
  private final boolean ring;
  private final double length;
  private final double section;
  private final double[] along;
  private final List<double[]> across;
  private final List<double[][]> peaks;

  private PeakMap(
      boolean ring,
      double length,
      double section,
      double[] along,
      List<double[]> across,
      List<double[][]> peaks) {
    this.ring = ring;
    this.length = length;
    this.section = section;
    this.along = along;
    this.across = across;
    this.peaks = peaks;
  }

  static PeakMap of(ShellGrid grid, ShellRun run, int legs, double section) {
    double[] along = new double[grid.places()];
    Arrays.setAll(along, grid::along);
    double[][] peaks = Arrays.stream(run.peaks()).map(double[]::clone).toArray(double[][]::new);
    List<double[][]> byLeg =
        IntStream.range(0, legs)
            .mapToObj(leg -> lines(peaks, run.lines().ofChain(grid.chainOf(leg))))
            .toList();
    List<double[]> across =
        IntStream.range(0, legs)
            .mapToObj(leg -> grid.chains().get(grid.chainOf(leg)).distance().clone())
            .toList();
    return new PeakMap(grid.ring(), grid.length(), section, along, across, byLeg);
  }

  private static double[][] lines(double[][] peaks, int[] lines) {
    return Arrays.stream(lines).mapToObj(line -> peaks[line]).toArray(double[][]::new);
  }

  /** Whether the weld goes round and meets its start. */
  public boolean ring() {
    return ring;
  }

  /** Length of the weld that was computed, m: the circumference of a ring. */
  public double length() {
    return length;
  }

  /** Where the section was taken, m from the start of the weld. */
  public double section() {
    return section;
  }

  /** Places along the weld, m from its start. */
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

  private int at(int place) {
    return ring
        ? Math.floorMod(place, along.length)
        : Math.max(0, Math.min(place, along.length - 1));
  }

  /** Peak temperatures across one leg where a named place of a ring lies, K. */
  public double[] profile(int leg, WeldCourse.Place place) {
    return profile(leg, place == WeldCourse.Place.WORST ? section : place.share() * length);
  }

  /**
   * Where the legs get hottest, m along the weld: by the mean of the peaks up to a distance.
   *
   * @param reach m from the weld centre
   */
  double hottest(double reach) {
    int best = 0;
    for (int place = 1; place < along.length; place++) {
      best = warmth(place, reach) > warmth(best, reach) ? place : best;
    }
    return along[best];
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
