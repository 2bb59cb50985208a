package afterweld.thermal;

import afterweld.quantity.UnitSystem;
import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;

/**
 * The integral of the thermal conductivity over temperature, W/m, counted from 0 °C. Conduction is
 * linear in it even where the conductivity is not constant, so that fields may be added and scaled
 * in it; the temperature follows from the inverse.
 *
 * <p>Tabulated at every kelvin from −100 to 4000 °C and linear between; above the table the
 * temperature stays at its end, which only happens inside the arc.
 *
 * <p>Source: Kirchhoff's transformation (Carslaw and Jaeger, Conduction of Heat in Solids, 1.6).
 */
public final class HeatPotential {
  private static final int LOWEST_CELSIUS = -100;
  private static final int HIGHEST_CELSIUS = 4000;
  private static final double LOWEST = LOWEST_CELSIUS + UnitSystem.ZERO_CELSIUS;

  private final double[] integral;

  private HeatPotential(double[] integral) {
    this.integral = integral;
  }

  /**
   * The potential of a metal.
   *
   * @param conductivity W/(m K) as a function of kelvin, above 0
   */
  public static HeatPotential of(DoubleUnaryOperator conductivity) {
    double[] integral = new double[HIGHEST_CELSIUS - LOWEST_CELSIUS + 1];
    double before = conductivity.applyAsDouble(LOWEST);
    for (int i = 1; i < integral.length; i++) {
      double here = conductivity.applyAsDouble(LOWEST + i);
      integral[i] = integral[i - 1] + (before + here) / 2;
      before = here;
    }
    double atZero = integral[-LOWEST_CELSIUS];
    return new HeatPotential(Arrays.stream(integral).map(value -> value - atZero).toArray());
  }

  /** The potential of a metal whose conductivity, W/(m K), does not change. */
  public static HeatPotential constant(double conductivity) {
    return of(temperature -> conductivity);
  }

  /** Potential at a temperature in K, W/m. */
  public double at(double temperature) {
    double place = Math.min(Math.max(temperature - LOWEST, 0), integral.length - 1.0);
    int below = Math.min((int) place, integral.length - 2);
    return integral[below] + (place - below) * (integral[below + 1] - integral[below]);
  }

  /** Temperature at a potential in W/m, K; kept within the table. */
  public double temperature(double potential) {
    int found = Arrays.binarySearch(integral, potential);
    int below = Math.min(Math.max(found >= 0 ? found : -found - 2, 0), integral.length - 2);
    double part = (potential - integral[below]) / (integral[below + 1] - integral[below]);
    return LOWEST + below + Math.min(Math.max(part, 0), 1);
  }

  /** Mean conductivity over the kelvin around a temperature in K, W/(m K). */
  public double conductivity(double temperature) {
    return at(temperature + 0.5) - at(temperature - 0.5);
  }

  /** Whether a potential lies above the table: a place inside the arc. */
  public boolean insideArc(double potential) {
    return potential > integral[integral.length - 1];
  }
}
