package afterweld.thermal;

/**
 * The edges of a plate as mirrors. An insulated edge acts like a second, equal source behind it, at
 * the same distance; two edges make two endless rows of sources.
 *
 * <p>Far behind the arc, where the rows would need many members, the same sum is taken as waves
 * across the strip (Poisson's summation of the rows), of which few are left there.
 *
 * <p>Source: method of images, Carslaw and Jaeger, Conduction of Heat in Solids, 10.10 and 14.
 */
final class PlateEdges {
  private static final int MOST_PAIRS = 400;
  private static final double NEGLIGIBLE_EXPONENT = 25;
  private static final double WAVES_FROM = 0.16;

  private final double own;
  private final double width;

  /**
   * Edges.
   *
   * @param own from the source to the edge in the direction of positive y, m; may be infinite
   * @param other from the source to the opposite edge, m; may be infinite
   */
  PlateEdges(double own, double other) {
    boolean flip = Double.isInfinite(own) && Double.isFinite(other);
    this.own = flip ? -other : own;
    this.width = own + other;
  }

  boolean none() {
    return Double.isInfinite(own);
  }

  /** How far behind the arc heat sent back by the edges may still make a peak, m. */
  double wake(double k, double s) {
    double farthest = Double.isFinite(width) ? width : Math.abs(own);
    return 20 * s + 40 * k * (farthest + s) * (farthest + s);
  }

  /** What a source at a distance along y adds. */
  interface Source {
    /** Its share. */
    double at(double y);

    /** The exponent by which it has faded, 0 or more. */
    double faded(double y);
  }

  /** Sum over the source and its mirror images, seen from y. */
  double sum(Source source, double y) {
    double sum = source.at(y);
    if (none()) {
      return sum;
    }
    sum += source.at(y - 2 * own);
    if (Double.isInfinite(width)) {
      return sum;
    }
    for (int pair = 1; pair <= MOST_PAIRS; pair++) {
      double shift = 2 * pair * width;
      if (source.faded(shift - Math.abs(y) - 2 * own) > NEGLIGIBLE_EXPONENT) {
        break;
      }
      sum += source.at(y - shift) + source.at(y + shift);
      sum += source.at(y - 2 * own - shift) + source.at(y - 2 * own + shift);
    }
    return sum;
  }

  /** Whether the sum over a row is better taken as waves at this place, m behind the arc. */
  boolean waves(double behind, double k) {
    return Double.isFinite(width) && behind > WAVES_FROM * k * width * width;
  }

  /**
   * The row of plane sources as waves, for the mode that is even through the thickness.
   *
   * @param quantity rise or slope
   * @param k travel speed over twice the diffusivity, 1/m
   * @param decay decay of the even mode, 1/m
   * @param behind distance behind the arc, m
   * @param y distance across, m
   */
  double waveSum(MovingSource.Quantity quantity, double k, double decay, double behind, double y) {
    double sum = 0;
    for (int n = 0; n <= MOST_PAIRS; n++) {
      double across = n * Math.PI / width;
      double nu = Math.hypot(decay, across);
      double exponent = (decay * decay - k * k + across * across) / (nu + k);
      if (exponent * behind > NEGLIGIBLE_EXPONENT) {
        break;
      }
      double shape = (n == 0 ? 1 : 2) * Math.cos(across * own) * Math.cos(across * (own - y));
      sum += shape * quantity.wave(exponent) * Math.exp(-exponent * behind) / nu;
    }
    return sum * Math.PI / width;
  }
}
