package afterweld.material;

import com.fasterxml.jackson.databind.MappingIterator;
import com.fasterxml.jackson.databind.ObjectReader;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;

/** A small table with a head line that stands beside a class on the class path. */
public final class ClassPathTable {
  private static final ObjectReader READER =
      new CsvMapper().readerForMapOf(String.class).with(CsvSchema.emptySchema().withHeader());

  private ClassPathTable() {}

  /**
   * All lines in file order, each by the names of the head line.
   *
   * @throws IllegalStateException if there is no such file
   */
  public static List<Map<String, String>> rows(Class<?> beside, String name) {
    try (InputStream stream = beside.getResourceAsStream(name)) {
      if (stream == null) {
        throw new IllegalStateException("table " + name + " is missing from the class path");
      }
      return rows(stream);
    } catch (IOException unreadable) {
      throw new UncheckedIOException("table " + name, unreadable);
    }
  }

  private static List<Map<String, String>> rows(InputStream stream) throws IOException {
    try (MappingIterator<Map<String, String>> rows = READER.readValues(stream)) {
      return rows.readAll();
    }
  }
}
