package afterweld.thermal;

/**
 * Heat that the plate gives to the air through its two faces. SI units and kelvin.
 *
 * <p>In thin sheet welded slowly it matters (1 mm at 1 mm/s: 76 K off the peak); from thickness
 * times speed of 10 mm²/s on it hardly does. Backing bars and clamps are not part of it.
 *
 * @param filmCoefficient to the air, per face, W/(m² K)
 * @param radiation whether a bright surface (emissivity 0.1) radiates too, linear between 200 and
 *     20 °C: 1.3 W/(m² K) per face
 * @param ambient K
 */
public record SurfaceLoss(double filmCoefficient, boolean radiation, double ambient) {
  /** Film coefficient of still air, W/(m² K) (handbook, from memory). */
  private static final double STILL_AIR = 10;

  /**
   * Radiation of oxidized aluminium near 400 K as a film coefficient, W/(m² K) (Stefan-Boltzmann at
   * emissivity 0.1, standard).
   */
  private static final double RADIATION = 1.3;

  /** Checks the numbers. */
  public SurfaceLoss {
    if (!(filmCoefficient >= 0) || !(ambient > 0) || Double.isInfinite(filmCoefficient + ambient)) {
      throw new IllegalArgumentException(filmCoefficient + " W/(m² K) to " + ambient + " K");
    }
  }

  /** Still air at a temperature in K: 10 W/(m² K) and radiation [common practice]. */
  public static SurfaceLoss stillAir(double ambient) {
    return new SurfaceLoss(STILL_AIR, true, ambient);
  }

  /** No loss: an upper bound of the heat-affected zone. */
  public static SurfaceLoss none(double ambient) {
    return new SurfaceLoss(0, false, ambient);
  }

  /** Heat loss of both faces together, W/(m² K). */
  public double bothFaces() {
    return 2 * (filmCoefficient + (radiation ? RADIATION : 0));
  }

  /**
   * The loss term of a plate, 1/m²: its square root is one over the distance to which heat creeps
   * before the air takes it.
   *
   * @param conductivity W/(m K)
   * @param thickness m
   */
  double term(double conductivity, double thickness) {
    return bothFaces() / (conductivity * thickness);
  }
}
