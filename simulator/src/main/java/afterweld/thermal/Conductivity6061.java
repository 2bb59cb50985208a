package afterweld.thermal;

import static afterweld.quantity.UnitSystem.ZERO_CELSIUS;

import afterweld.material.ClassPathTable;
import java.util.List;
import java.util.Map;
import org.apache.commons.math3.analysis.interpolation.LinearInterpolator;
import org.apache.commons.math3.analysis.polynomials.PolynomialSplineFunction;

/** Conductivity of 6061 against temperature, from the table in the resources. */
final class Conductivity6061 {
  static final HeatPotential POTENTIAL = read();

  private Conductivity6061() {}

  private static HeatPotential read() {
    List<Map<String, String>> rows =
        ClassPathTable.rows(Conductivity6061.class, "conductivity_6061.csv");
    double[] kelvin = column(rows, "temperature_C");
    for (int i = 0; i < kelvin.length; i++) {
      kelvin[i] += ZERO_CELSIUS;
    }
    PolynomialSplineFunction table =
        new LinearInterpolator().interpolate(kelvin, column(rows, "conductivity_W_mK"));
    double first = kelvin[0];
    double last = kelvin[kelvin.length - 1];
    return HeatPotential.of(
        temperature -> table.value(Math.min(Math.max(temperature, first), last)));
  }

  private static double[] column(List<Map<String, String>> rows, String name) {
    return rows.stream().mapToDouble(row -> Double.parseDouble(row.get(name))).toArray();
  }
}
