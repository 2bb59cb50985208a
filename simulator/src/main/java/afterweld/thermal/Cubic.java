package afterweld.thermal;

/** The cubic through four neighbouring points (fewer if there are fewer). */
public final class Cubic {
  private static final int POINTS = 4;

  private final int first;
  private final double[] weight;

  private Cubic(int first, double[] weight) {
    this.first = first;
    this.weight = weight;
  }

  /**
   * The cubic at a place among points.
   *
   * @param points rising
   * @param place from the first to the last of them
   */
  public static Cubic at(double[] points, double place) {
    int inside = 0;
    while (inside < points.length - 2 && points[inside + 1] <= place) {
      inside++;
    }
    int count = Math.min(POINTS, points.length);
    int first = Math.max(0, Math.min(inside - 1, points.length - count));
    return new Cubic(first, weights(points, first, count, place));
  }

  private static double[] weights(double[] points, int first, int count, double place) {
    double[] weight = new double[count];
    for (int i = 0; i < count; i++) {
      weight[i] = 1;
      for (int j = 0; j < count; j++) {
        if (j != i) {
          weight[i] *= (place - points[first + j]) / (points[first + i] - points[first + j]);
        }
      }
    }
    return weight;
  }

  /** Index of the first point used. */
  public int first() {
    return first;
  }

  /** How many points are used. */
  public int count() {
    return weight.length;
  }

  /** Weight of a point used, counted from the first. */
  public double weight(int i) {
    return weight[i];
  }
}
