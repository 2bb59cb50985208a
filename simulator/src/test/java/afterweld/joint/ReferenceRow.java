package afterweld.joint;

import com.fasterxml.jackson.databind.MappingIterator;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;

/**
 * One reference value, found in two ways when the model was defined and printed with six figures.
 *
 * @param id its name
 * @param topic what it is about
 * @param first value of the first way
 * @param second value of the second way
 * @param tolerance relative tolerance
 */
public record ReferenceRow(String id, String topic, double first, double second, double tolerance) {
  private static final double SIX_FIGURES = 1e-5;

  /** All rows. */
  public static List<ReferenceRow> all() {
    try (InputStream in = ReferenceRow.class.getResourceAsStream("reference-values.csv");
        MappingIterator<Map<String, String>> rows =
            new CsvMapper()
                .readerForMapOf(String.class)
                .with(CsvSchema.emptySchema().withHeader())
                .readValues(in)) {
      return rows.readAll().stream().map(ReferenceRow::of).toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static ReferenceRow of(Map<String, String> row) {
    return new ReferenceRow(
        row.get("id"),
        row.get("topic"),
        Double.parseDouble(row.get("value_1")),
        Double.parseDouble(row.get("value_2")),
        Double.parseDouble(row.get("tolerance")));
  }

  /** Whether the printed figures are too few to judge at the row's tolerance. */
  public boolean tighterThanPrinted() {
    return tolerance < SIX_FIGURES / 2;
  }

  /** Half of the last printed figure plus what the tolerance allows. */
  public double allowance(double printed) {
    double lastFigure = Math.pow(10, Math.floor(Math.log10(Math.abs(printed)))) * SIX_FIGURES;
    return Math.max(tolerance * Math.abs(printed), 0.5 * lastFigure);
  }
}
