package afterweld.thermal;

/**
 * Heat lost to still air by convection and radiation: h = 10 W/(m² K) and emissivity 0.1 (order of
 * magnitude, common practice; a bright surface loses less, an oxidised one more).
 */
public final class StillAir {
  /** Convection, W/(m² K). */
  public static final double CONVECTION = 10;

  private static final double EMISSIVITY = 0.1;
  private static final double STEFAN_BOLTZMANN = 5.670374419e-8;

  private StillAir() {}

  /**
   * Film coefficient with radiation made linear between the two temperatures, W/(m² K).
   *
   * @param surface K
   * @param air K
   */
  public static double coefficient(double surface, double air) {
    return CONVECTION
        + EMISSIVITY * STEFAN_BOLTZMANN * (surface * surface + air * air) * (surface + air);
  }
}
