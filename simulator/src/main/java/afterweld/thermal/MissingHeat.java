package afterweld.thermal;

/**
 * The heat of fusion that is missing beside the pool: the edge of the pool takes it up while the
 * peak passes and gives it back only later. In the heat potential, W/m:
 *
 * <pre>
 * S = β a ρ L exp(−(y − y_f)/(0.55 y_f)) outside the fusion line y_f,   S = β a ρ L inside
 * β = min(0.3, 0.02 + 0.4 Pe),   Pe = v y_f/2a
 * </pre>
 *
 * <p>Fitted to ten fields with variable properties and enthalpy (plates of 1.5 to 6 mm, 2.5 to 10
 * mm/s, 20 to 150 °C, Pe 0.05 to 0.3): peaks from 200 to 585 °C within 3 K rms, 8 K at most. Above
 * Pe 0.4 untested.
 *
 * <p>Below the depth to which the heat enters, y and y_f are taken from the lower end of the source
 * [assumed]: near the bottom of a pool its half-width goes to zero and is no measure of it.
 */
final class MissingHeat {
  static final MissingHeat NONE = new MissingHeat(0, 1, 0);
  private static final double DECAY = 0.55;
  private static final double BASE = 0.02;
  private static final double PER_PECLET = 0.4;
  private static final double MOST = 0.3;

  private final double amount;
  private final double radius;
  private final double depth;

  private MissingHeat(double amount, double radius, double depth) {
    this.amount = amount;
    this.radius = radius;
    this.depth = depth;
  }

  /**
   * Missing heat beside a fusion line in the depth looked at.
   *
   * @param fusionHalfWidth distance of the fusion line from the bead's centre, m
   * @param below how far the depth lies below the lower end of the source, m
   */
  static MissingHeat beside(
      double fusionHalfWidth, double below, ConductionMaterial material, double speed) {
    double radius = Math.hypot(fusionHalfWidth, below);
    return new MissingHeat(atFusionLine(radius, material, speed), radius, below);
  }

  /**
   * Missing heat under a pool that does not reach the depth looked at [assumed]: by the distance
   * from the pool's centre on the surface.
   */
  static MissingHeat under(
      double surfaceHalfWidth, double depth, ConductionMaterial material, double speed) {
    double amount = atFusionLine(surfaceHalfWidth, material, speed);
    return new MissingHeat(amount, surfaceHalfWidth, depth);
  }

  /** What is missing at the fusion line itself, W/m. */
  static double atFusionLine(double fusionHalfWidth, ConductionMaterial material, double speed) {
    double peclet = peclet(fusionHalfWidth, material, speed);
    return Math.min(MOST, BASE + PER_PECLET * peclet) * material.latentTerm();
  }

  static double peclet(double fusionHalfWidth, ConductionMaterial material, double speed) {
    return speed * fusionHalfWidth / (2 * material.diffusivity());
  }

  /** What is missing at distance y from the bead's centre, W/m. */
  double at(double y) {
    double outside = Math.max(0, Math.hypot(y, depth) - radius);
    return amount * Math.exp(-outside / (DECAY * radius));
  }
}
