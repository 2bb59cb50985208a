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
 */
final class MissingHeat {
  static final MissingHeat NONE = new MissingHeat(0, Double.POSITIVE_INFINITY, 0);
  private static final double DECAY = 0.55;
  private static final double BASE = 0.02;
  private static final double PER_PECLET = 0.4;
  private static final double MOST = 0.3;

  private final double amount;
  private final double fusionHalfWidth;
  private final double depth;

  private MissingHeat(double amount, double fusionHalfWidth, double depth) {
    this.amount = amount;
    this.fusionHalfWidth = fusionHalfWidth;
    this.depth = depth;
  }

  /** Missing heat beside a fusion line in the same depth, m from the bead's centre. */
  static MissingHeat beside(double fusionHalfWidth, ConductionMaterial material, double speed) {
    return below(fusionHalfWidth, 0, material, speed);
  }

  /**
   * Missing heat below a pool that does not reach the depth looked at [assumed]: by the distance
   * from the pool's centre on the surface.
   */
  static MissingHeat below(
      double surfaceHalfWidth, double depth, ConductionMaterial material, double speed) {
    return new MissingHeat(
        atFusionLine(surfaceHalfWidth, material, speed), surfaceHalfWidth, depth);
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
    double outside = Math.hypot(y, depth) - fusionHalfWidth;
    return outside <= 0 || amount == 0
        ? amount
        : amount * Math.exp(-outside / (DECAY * fusionHalfWidth));
  }
}
