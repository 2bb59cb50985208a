package afterweld.strength;

import afterweld.material.Source;
import afterweld.material.Status;
import com.fasterxml.jackson.databind.MappingIterator;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * One hardness in three scales.
 *
 * @param brinell HB, 500 kgf, 10 mm
 * @param vickers HV
 * @param rockwellB HRB, where the scale reaches
 * @param source where the pair comes from
 */
record HardnessPair(double brinell, double vickers, OptionalDouble rockwellB, Source source) {

  /** The table of the class path, rising. */
  static List<HardnessPair> table() {
    try (InputStream table = HardnessPair.class.getResourceAsStream("hardness_conversion.csv")) {
      List<HardnessPair> pairs = new ArrayList<>();
      rows(table).forEachRemaining(row -> pairs.add(of(row)));
      return List.copyOf(pairs);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static MappingIterator<Map<String, String>> rows(InputStream table) throws IOException {
    return new CsvMapper()
        .readerForMapOf(String.class)
        .with(CsvSchema.emptySchema().withHeader())
        .readValues(table);
  }

  private static HardnessPair of(Map<String, String> row) {
    String rockwell = row.get("HRB");
    return new HardnessPair(
        Double.parseDouble(row.get("HB")),
        Double.parseDouble(row.get("HV")),
        rockwell.isEmpty()
            ? OptionalDouble.empty()
            : OptionalDouble.of(Double.parseDouble(rockwell)),
        new Source(row.get("source"), Status.of(row.get("status"))));
  }
}
