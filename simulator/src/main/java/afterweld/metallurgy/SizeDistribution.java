package afterweld.metallurgy;

import java.util.function.DoubleBinaryOperator;

/** Spherical particles by size: a number per volume at each of a few radii. Immutable. */
public final class SizeDistribution {
  private final double[] radius;
  private final double[] number;

  SizeDistribution(double[] radius, double[] number) {
    this.radius = radius;
    this.number = number;
  }

  /** How many radii there are. */
  public int size() {
    return radius.length;
  }

  /** Radius {@code i}, m. */
  public double radius(int i) {
    return radius[i];
  }

  /** Particles of radius {@code i}, 1/m³. */
  public double number(int i) {
    return number[i];
  }

  /** All particles, 1/m³. */
  public double numberDensity() {
    return sum((r, n) -> n);
  }

  /** Mean radius by number, m; 0 without particles. */
  public double meanRadius() {
    double all = numberDensity();
    return all > 0 ? sum((r, n) -> n * r) / all : 0;
  }

  /**
   * Sum over the radii.
   *
   * @param term its value from radius (m) and number (1/m³)
   */
  public double sum(DoubleBinaryOperator term) {
    double sum = 0;
    for (int i = 0; i < radius.length; i++) {
      sum += term.applyAsDouble(radius[i], number[i]);
    }
    return sum;
  }
}
