package afterweld.choice;

import com.fasterxml.jackson.databind.MappingIterator;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;

/** Limits of practice by thickness, each with its source. */
final class FurnacePractice {
  private static final List<Map<String, String>> ROWS = read();

  private FurnacePractice() {}

  /**
   * A limit for a thickness.
   *
   * @param value in {@code unit}
   * @param source where it comes from, with its status
   */
  record Limit(double value, String unit, String source) {
    String text() {
      return Math.round(value) + " " + unit + " (" + source + ")";
    }
  }

  /**
   * The limit of a rule.
   *
   * @param thickness m
   */
  static Limit of(String rule, double thickness) {
    double millimetres = thickness * 1e3;
    return ROWS.stream()
        .filter(row -> row.get("rule").equals(rule))
        .filter(
            row -> millimetres > number(row, "over_mm") && millimetres <= number(row, "up_to_mm"))
        .findFirst()
        .map(
            row ->
                new Limit(
                    number(row, "value"),
                    row.get("unit"),
                    row.get("source") + ", " + row.get("status")))
        .orElseThrow();
  }

  private static double number(Map<String, String> row, String column) {
    return Double.parseDouble(row.get(column));
  }

  private static List<Map<String, String>> read() {
    try (InputStream in = FurnacePractice.class.getResourceAsStream("furnace_practice.csv");
        MappingIterator<Map<String, String>> rows =
            new CsvMapper()
                .readerForMapOf(String.class)
                .with(CsvSchema.emptySchema().withHeader())
                .readValues(in)) {
      return rows.readAll();
    } catch (IOException e) {
      throw new UncheckedIOException("the limits of furnace practice cannot be read", e);
    }
  }
}
