package afterweld.thermal;

import com.fasterxml.jackson.databind.MappingIterator;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;

/** Rows of a table of checks in the test resources of this package. */
final class Table {
  private Table() {}

  static List<Row> read(String name) {
    try (InputStream file = Table.class.getResourceAsStream(name);
        MappingIterator<Map<String, String>> rows =
            new CsvMapper()
                .readerForMapOf(String.class)
                .with(CsvSchema.emptySchema().withHeader())
                .readValues(file)) {
      return rows.readAll().stream().map(Row::new).toList();
    } catch (IOException fault) {
      throw new UncheckedIOException(fault);
    }
  }

  /** One row, its values by the name of the column. */
  record Row(Map<String, String> values) {
    String text(String column) {
      return values.get(column);
    }

    boolean has(String column) {
      return !text(column).isEmpty();
    }

    double number(String column) {
      return Double.parseDouble(text(column));
    }

    double millimetres(String column) {
      return number(column) * 1e-3;
    }

    double kelvin(String column) {
      return number(column) + HeatPotential.ZERO_CELSIUS;
    }

    @Override
    public String toString() {
      return values.values().stream().limit(10).toList().toString();
    }
  }
}
