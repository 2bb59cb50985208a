package afterweld.thermal;

import static afterweld.thermal.HeatPotential.ZERO_CELSIUS;

import com.fasterxml.jackson.databind.MappingIterator;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.apache.commons.math3.analysis.interpolation.LinearInterpolator;
import org.apache.commons.math3.analysis.polynomials.PolynomialSplineFunction;

/** Conductivity of 6061 against temperature, from the table in the resources. */
final class Conductivity6061 {
  static final HeatPotential POTENTIAL = read();

  private Conductivity6061() {}

  private static HeatPotential read() {
    List<Map<String, String>> rows = rows();
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

  private static List<Map<String, String>> rows() {
    try (InputStream file =
            Objects.requireNonNull(
                Conductivity6061.class.getResourceAsStream("conductivity_6061.csv"));
        MappingIterator<Map<String, String>> rows =
            new CsvMapper()
                .readerForMapOf(String.class)
                .with(CsvSchema.emptySchema().withHeader())
                .readValues(file)) {
      return rows.readAll();
    } catch (IOException fault) {
      throw new UncheckedIOException(fault);
    }
  }

  private static double[] column(List<Map<String, String>> rows, String name) {
    return rows.stream().mapToDouble(row -> Double.parseDouble(row.get(name))).toArray();
  }
}
