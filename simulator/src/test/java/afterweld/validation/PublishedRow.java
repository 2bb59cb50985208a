package afterweld.validation;

import com.fasterxml.jackson.databind.MappingIterator;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;

/** One published value (or a few that belong together) as it stands in {@code published.csv}. */
record PublishedRow(
    String id,
    String topic,
    String alloy,
    String condition,
    String quantity,
    String value,
    String unit,
    String tolerance,
    String source,
    String status,
    String use) {

  static List<PublishedRow> all() {
    try (InputStream in = PublishedRow.class.getResourceAsStream("published.csv");
        MappingIterator<Map<String, String>> rows =
            new CsvMapper()
                .readerForMapOf(String.class)
                .with(CsvSchema.emptySchema().withHeader())
                .readValues(in)) {
      return rows.readAll().stream().map(PublishedRow::of).toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static PublishedRow of(Map<String, String> row) {
    return new PublishedRow(
        row.get("id"),
        row.get("topic"),
        row.get("alloy"),
        row.get("condition"),
        row.get("quantity"),
        row.get("value"),
        row.get("unit"),
        row.get("tolerance"),
        row.get("source"),
        row.get("status"),
        row.get("use"));
  }

  /** The word before any remark: calibration, test, partly, input or definition. */
  String kind() {
    return use.split("[ (]", 2)[0];
  }

  /** Whether a prediction of it gives back what was put in: it proves nothing either way. */
  boolean putIn() {
    return kind().equals("input") || kind().equals("definition");
  }
}
