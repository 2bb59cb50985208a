package afterweld.metallurgy;

import static afterweld.metallurgy.PrecipitationParameters.DISSOLVING_RADIUS;

/**
 * The fixed radii that needles are sorted into: {@code r_i = 0.5 nm · 120^(i/(n-1))}, with what the
 * transport between neighbours needs. Immutable after construction; its arrays are read only.
 */
final class NeedleClasses {
  private static final double SMALLEST = 0.5e-9;
  private static final double SPAN = 120;

  /** Radius, m. */
  final double[] radius;

  /** Radius cubed, m³. */
  final double[] cube;

  /** {@code r_i / (r_(i+1)³ - r_i³)}, 1/m²; 0 in the last class, which nothing leaves upwards. */
  final double[] upwards;

  /** {@code r_i / (r_i³ - r_(i-1)³)}, 1/m², with {@code r_(-1) = 0}. */
  final double[] downwards;

  /** The first class in which a shrinking needle counts as dissolving. */
  final int dissolving;

  NeedleClasses(int count) {
    radius = new double[count];
    cube = new double[count];
    upwards = new double[count];
    downwards = new double[count];
    for (int i = 0; i < count; i++) {
      radius[i] = SMALLEST * Math.pow(SPAN, i / (count - 1.0));
      cube[i] = radius[i] * radius[i] * radius[i];
    }
    downwards[0] = radius[0] / cube[0];
    for (int i = 1; i < count; i++) {
      double gap = cube[i] - cube[i - 1];
      downwards[i] = radius[i] / gap;
      upwards[i - 1] = radius[i - 1] / gap;
    }
    dissolving = firstAtLeast(DISSOLVING_RADIUS.value());
  }

  int count() {
    return radius.length;
  }

  /** Place of a radius on the scale of class numbers: class {@code i} lies at {@code i}. */
  double place(double ofRadius) {
    return (count() - 1) * Math.log(ofRadius / SMALLEST) / Math.log(SPAN);
  }

  private int firstAtLeast(double least) {
    int i = 0;
    while (radius[i] < least) {
      i++;
    }
    return i;
  }
}
