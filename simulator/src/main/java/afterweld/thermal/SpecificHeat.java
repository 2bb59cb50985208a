package afterweld.thermal;

import static afterweld.quantity.UnitSystem.ZERO_CELSIUS;

import afterweld.material.Alloy;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.analysis.interpolation.LinearInterpolator;
import org.apache.commons.math3.analysis.polynomials.PolynomialSplineFunction;

/**
 * Specific heat of the solid, J/(kg K), as a function of temperature in K.
 *
 * <p>6061 has a table (after Zhu and Chao, papers on welding of 6061-T6, about 2000; from memory;
 * its ends at 20 °C and above 427 °C are extrapolated). Any other alloy: 903 + 0.41 T, T in °C (EN
 * 1999-1-2, from memory), 4 % lower than the table at 530 °C.
 */
public final class SpecificHeat {
  private static final double[] CELSIUS = {
    20, 93.3, 148.9, 204.4, 260, 315.6, 371.1, 426.7, 500, 582
  };
  private static final double[] TABLE_6061 = {
    930, 978, 1004, 1028, 1052, 1078, 1104, 1133, 1160, 1180
  };
  private static final PolynomialSplineFunction SPLINE_6061 =
      new LinearInterpolator().interpolate(CELSIUS, TABLE_6061);

  private SpecificHeat() {}

  /** The specific heat of an alloy. */
  public static DoubleUnaryOperator of(Alloy alloy) {
    return alloy.name().equals("6061") ? SpecificHeat::of6061 : SpecificHeat::byRule;
  }

  private static double of6061(double temperature) {
    double celsius = temperature - ZERO_CELSIUS;
    return SPLINE_6061.value(Math.min(582, Math.max(20, celsius)));
  }

  private static double byRule(double temperature) {
    return 903 + 0.41 * (temperature - ZERO_CELSIUS);
  }
}
