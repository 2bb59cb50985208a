package afterweld.thermal;

import java.util.function.DoubleUnaryOperator;

/**
 * A heat source of one watt that moves steadily along a plate of finite thickness: rise of the heat
 * potential, W/m per W, in the frame that travels with it.
 *
 * <pre>
 * F = 1/(2π D) Σ c_n cos(nπz/d) K0(μ_n r) exp(−kξ),   n = 0, 1, 2, …
 * k = v/2a,   μ_n² = k² + m² + (nπ/d)²,   r² = ξ² + y²
 * c_0 = 1,    c_n = 2 sin(nπp/d)/(nπp/d)  for heat spread evenly from the surface to depth p
 * </pre>
 *
 * with ξ ahead of the arc, y across, z below the arc side, v travel speed, a diffusivity, d
 * thickness, D thickness of the joint (half the sum of the legs) and m² the loss of both faces. p =
 * 0 is a source on the surface, p = d the line source, whose field is even through the thickness.
 *
 * <p>Valid for a weld that is long and steady: from 7 a/v + 2.5 y behind its start to about 10 mm
 * before its end. Within 0.1 mm of the source the value at 0.1 mm is given. Terms are taken until
 * the rest is below 1e-5 K for usual powers. Agrees with images through the thickness and with the
 * time integral of the moving point source to 5e-6 K (plates of 1 to 25 mm, 1 to 15 mm/s).
 *
 * <p>Source: D. Rosenthal, Trans. ASME 68 (1946) 849; cosine series for the faces and losses as in
 * Carslaw and Jaeger, Conduction of Heat in Solids, 10.7 and 14.
 */
public final class MovingSource {
  private static final double NEAREST = 1e-4;
  private static final double LAST_EXPONENT = 16;
  private static final int MOST_TERMS = 4000;
  private static final double STEP = 1.6;
  private static final int SCAN = 60;

  private final double k;
  private final double loss;
  private final double thickness;
  private final double depth;
  private final double prefactor;
  private final double evenDecay;
  private final double[] weight;
  private final double[] decay;
  private final PlateEdges edges;

  /**
   * A source.
   *
   * @param leg the plate
   * @param k travel speed over twice the diffusivity, 1/m
   * @param loss loss term of both faces, 1/m²
   */
  public MovingSource(LegGeometry leg, double k, double loss) {
    this.k = k;
    this.loss = loss;
    this.thickness = leg.thickness();
    this.depth = leg.depth();
    this.prefactor = 1 / (2 * Math.PI * leg.jointThickness());
    this.evenDecay = decay(0);
    this.edges = new PlateEdges(leg.ownWidth(), leg.otherWidth());
    int terms = leg.sourceDepth() < thickness ? terms(NEAREST) : 0;
    this.weight = new double[terms];
    this.decay = new double[terms];
    for (int n = 1; n <= terms; n++) {
      weight[n - 1] = weight(n, leg.sourceDepth());
      decay[n - 1] = decay(n);
    }
  }

  private double decay(int n) {
    double through = n * Math.PI / thickness;
    return Math.sqrt(k * k + loss + through * through);
  }

  private double weight(int n, double sourceDepth) {
    double spread = n * Math.PI * sourceDepth / thickness;
    double share = spread == 0 ? 1 : Math.sin(spread) / spread;
    return 2 * share * Math.cos(n * Math.PI * depth / thickness);
  }

  private int terms(double r) {
    double reach = k + LAST_EXPONENT / r;
    double needed = thickness / Math.PI * Math.sqrt(reach * reach - k * k);
    return (int) Math.min(MOST_TERMS, 1 + Math.ceil(needed));
  }

  /** What is summed: the rise itself or its slope along ξ. */
  enum Quantity {
    RISE {
      @Override
      double mode(double k, double mu, double xi, double r) {
        return ScaledBessel.k0(mu * r) * Math.exp(-(k * xi + mu * r));
      }

      @Override
      double wave(double exponent) {
        return 1;
      }
    },
    SLOPE {
      @Override
      double mode(double k, double mu, double xi, double r) {
        double bracket = -k * ScaledBessel.k0(mu * r) - mu * xi / r * ScaledBessel.k1(mu * r);
        return bracket * Math.exp(-(k * xi + mu * r));
      }

      @Override
      double wave(double exponent) {
        return exponent;
      }
    };

    /** One term of the series. */
    abstract double mode(double k, double mu, double xi, double r);

    /** The factor on a wave across a strip, behind the source. */
    abstract double wave(double exponent);
  }

  /** Rise of the heat potential at (ξ, y), W/m per W. */
  public double rise(double xi, double y) {
    return field(Quantity.RISE, xi, y);
  }

  /** The part of the rise that is uneven through the thickness, as in a wide plate, W/m per W. */
  public double unevenRise(double xi, double y) {
    return prefactor * uneven(Quantity.RISE, xi, distance(xi, y));
  }

  /** Slope of the rise along ξ, W/m² per W. */
  double slope(double xi, double y) {
    return field(Quantity.SLOPE, xi, y);
  }

  private double field(Quantity quantity, double xi, double y) {
    if (edges.none()) {
      double r = distance(xi, y);
      return prefactor * (quantity.mode(k, evenDecay, xi, r) + uneven(quantity, xi, r));
    }
    return prefactor * (even(quantity, xi, y) + unevenWithEdges(quantity, xi, y));
  }

  private double even(Quantity quantity, double xi, double y) {
    return xi < 0 && edges.waves(-xi, k)
        ? edges.waveSum(quantity, k, evenDecay, -xi, y)
        : edges.sum(source(xi, evenDecay, r -> quantity.mode(k, evenDecay, xi, r)), y);
  }

  private double unevenWithEdges(Quantity quantity, double xi, double y) {
    return weight.length == 0
        ? 0
        : edges.sum(source(xi, decay[0], r -> uneven(quantity, xi, r)), y);
  }

  private double uneven(Quantity quantity, double xi, double r) {
    int terms = weight.length == 0 ? 0 : Math.min(weight.length, terms(r));
    double sum = 0;
    for (int n = 0; n < terms; n++) {
      sum += weight[n] * quantity.mode(k, decay[n], xi, r);
    }
    return sum;
  }

  private PlateEdges.Source source(double xi, double mu, DoubleUnaryOperator atDistance) {
    return new PlateEdges.Source() {
      @Override
      public double at(double y) {
        return atDistance.applyAsDouble(distance(xi, y));
      }

      @Override
      public double faded(double y) {
        return y <= 0 ? 0 : k * xi + mu * Math.hypot(xi, y);
      }
    };
  }

  private static double distance(double xi, double y) {
    double across = Math.max(Math.abs(y), NEAREST);
    return Math.sqrt(xi * xi + across * across);
  }

  /** Where along ξ the temperature at distance y is highest, m (negative: behind the arc). */
  double peakPlace(double y) {
    double s = Math.max(Math.hypot(y, depth), NEAREST);
    double guess = -(0.2 * s + k * s * s / (1 + Math.sqrt(loss) * s));
    return edges.none() ? nearestPeak(guess, y) : highestPeak(s, y);
  }

  private double nearestPeak(double guess, double y) {
    double behind = guess;
    while (slope(behind, y) <= 0) {
      behind *= STEP;
    }
    double ahead = behind / STEP;
    while (slope(ahead, y) > 0) {
      behind = ahead;
      ahead /= STEP;
    }
    return root(behind, ahead, y);
  }

  private double root(double behind, double ahead, double y) {
    return Root.between(xi -> slope(xi, y), behind, ahead, 1e-8 * -behind);
  }

  /** With edges the heat they send back can make a second peak: looks along the whole wake. */
  private double highestPeak(double s, double y) {
    double first = 0.02 * s;
    double growth = Math.pow(edges.wake(k, s) / first, 1.0 / SCAN);
    int best = 0;
    double highest = 0;
    for (int i = 0; i <= SCAN; i++) {
      double rise = rise(-first * Math.pow(growth, i), y);
      if (rise > highest) {
        highest = rise;
        best = i;
      }
    }
    double behind = -first * Math.pow(growth, Math.min(best + 1, SCAN));
    double ahead = best == 0 ? 0 : -first * Math.pow(growth, best - 1);
    return slope(behind, y) > 0 ? root(behind, ahead, y) : behind;
  }
}
