package afterweld.metallurgy;

import com.fasterxml.jackson.databind.MappingIterator;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;

/** A CSV table of expected values from the class path; lines that begin with # name its source. */
public final class ReferenceTable {
  private ReferenceTable() {}

  /** Its rows by column name. */
  public static List<Map<String, String>> rows(String resource) {
    CsvSchema schema = CsvSchema.emptySchema().withHeader().withComments();
    try (InputStream table = ReferenceTable.class.getResourceAsStream(resource);
        MappingIterator<Map<String, String>> rows =
            new CsvMapper().readerForMapOf(String.class).with(schema).readValues(table)) {
      return rows.readAll();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** A number of a row. */
  public static double number(Map<String, String> row, String column) {
    return Double.parseDouble(row.get(column));
  }
}
