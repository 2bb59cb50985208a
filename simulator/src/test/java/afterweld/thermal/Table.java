package afterweld.thermal;

import afterweld.quantity.UnitSystem;
import com.fasterxml.jackson.databind.MappingIterator;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;

/** Rows of a table of checks in the test resources of this package. */
public final class Table {
  private Table() {}

  public static List<Row> read(String name) {
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
  public record Row(Map<String, String> values) {
    public String text(String column) {
      return values.get(column);
    }

    public boolean has(String column) {
      return !text(column).isEmpty();
    }

    public double number(String column) {
      return Double.parseDouble(text(column));
    }

    public double millimetres(String column) {
      return number(column) * 1e-3;
    }

    public double kelvin(String column) {
      return number(column) + UnitSystem.ZERO_CELSIUS;
    }

    @Override
    public String toString() {
      return values.values().stream().limit(10).toList().toString();
    }
  }
}
