package afterweld.thermal.shell;

import afterweld.thermal.PeakMap;
import afterweld.thermal.WeldCourse;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/** The peaks of a run, sorted by legs. */
final class ShellPeaks {
  private ShellPeaks() {}

  /**
   * The peaks of the parts.
   *
   * @param legs how many
   * @param section where the section was taken, m along the grid
   */
  static PeakMap of(ShellGrid grid, ShellRun run, WeldCourse course, int legs, double section) {
    double[] along = new double[grid.places()];
    Arrays.setAll(along, place -> grid.along(place) - course.beyond());
    double[][] peaks = Arrays.stream(run.peaks()).map(double[]::clone).toArray(double[][]::new);
    List<double[][]> byLeg =
        IntStream.range(0, legs)
            .mapToObj(leg -> lines(peaks, run.lines().ofChain(grid.chainOf(leg))))
            .toList();
    List<double[]> across =
        IntStream.range(0, legs)
            .mapToObj(leg -> grid.chains().get(grid.chainOf(leg)).distance().clone())
            .toList();
    return new PeakMap(course, section - course.beyond(), along, across, byLeg);
  }

  private static double[][] lines(double[][] peaks, int[] lines) {
    return Arrays.stream(lines).mapToObj(line -> peaks[line]).toArray(double[][]::new);
  }
}
