package afterweld.material;

import com.fasterxml.jackson.databind.MappingIterator;
import com.fasterxml.jackson.databind.ObjectReader;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvParser;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;

/** Reads a data file that stands beside this class on the class path. */
final class DataFile {
  private static final ObjectReader READER =
      CsvMapper.builder()
          .enable(CsvParser.Feature.FAIL_ON_MISSING_COLUMNS)
          .build()
          .readerFor(DataRow.class)
          .with(CsvSchema.emptySchema().withHeader());

  private DataFile() {}

  /** All lines of the file, in order. */
  static List<DataRow> read(String name) {
    try (InputStream stream = DataFile.class.getResourceAsStream(name)) {
      if (stream == null) {
        throw new IllegalStateException("data file " + name + " is missing from the class path");
      }
      return rows(stream);
    } catch (IOException unreadable) {
      throw new UncheckedIOException("data file " + name, unreadable);
    }
  }

  private static List<DataRow> rows(InputStream stream) throws IOException {
    try (MappingIterator<DataRow> rows = READER.readValues(stream)) {
      return rows.readAll();
    }
  }
}
