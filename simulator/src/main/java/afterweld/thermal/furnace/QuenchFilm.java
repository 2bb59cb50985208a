package afterweld.thermal.furnace;

import static afterweld.quantity.UnitSystem.ZERO_CELSIUS;

import afterweld.thermal.StillAir;
import org.apache.commons.math3.analysis.interpolation.LinearInterpolator;
import org.apache.commons.math3.analysis.polynomials.PolynomialSplineFunction;

/**
 * How fast a quench medium takes heat: mean film coefficients between 450 and 150 °C, W/(m² K).
 *
 * <p>They are orders of magnitude (common practice; real baths differ by a factor of two with
 * agitation and surface). A measured cooling rate is better and may be given instead.
 */
final class QuenchFilm {
  private static final PolynomialSplineFunction STILL_WATER =
      new LinearInterpolator()
          .interpolate(
              new double[] {30, 40, 60, 80, 100}, new double[] {6000, 4500, 3000, 1000, 500});
  private static final double BOILING_WATER = 500;
  private static final double POLYMER_20_TO_25_PERCENT = 1700;
  private static final double WATER_SPRAY = 5000;
  private static final double FORCED_AIR = 80;

  private QuenchFilm() {}

  /**
   * Film coefficient of a medium, W/(m² K); still air also radiates and is treated by {@link
   * StillAir}.
   *
   * @param temperature of the medium, K
   */
  static double coefficient(QuenchMedium medium, double temperature) {
    return switch (medium) {
      case WATER -> stillWater(temperature - ZERO_CELSIUS);
      case BOILING_WATER -> BOILING_WATER;
      case POLYMER -> POLYMER_20_TO_25_PERCENT;
      case SPRAY -> WATER_SPRAY;
      case FORCED_AIR -> FORCED_AIR;
      case STILL_AIR -> StillAir.CONVECTION;
    };
  }

  private static double stillWater(double celsius) {
    return STILL_WATER.value(Math.min(100, Math.max(30, celsius)));
  }
}
