package afterweld.study;

import com.fasterxml.jackson.databind.MappingIterator;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * How far predictions were from published values the model never saw, as a share of the published
 * value. Written by the same run that writes the validation page.
 *
 * @param hardness of hardness
 * @param yield of yield
 * @param tensile of tensile strength
 */
public record ModelError(Residuals hardness, Residuals yield, Residuals tensile) {
  /** Fewer values than this tell no spread. */
  private static final int ENOUGH = 10;

  /** Where too few values are known: 8 HV, as a share of the 90 HV of a treated plate [assumed]. */
  private static final double ASSUMED = 8.0 / 90;

  /**
   * Deviations of one quantity.
   *
   * @param values how many published values
   * @param leftOut values of metal that no model is made for
   * @param mean of the deviations, share
   * @param rootMeanSquare of the deviations, share
   */
  public record Residuals(int values, int leftOut, double mean, double rootMeanSquare) {

    /** Whether there are too few values, so that the spread is assumed. */
    public boolean assumed() {
      return values < ENOUGH;
    }

    /** Standard deviation that stands for the model's error, share; the mean counts as error. */
    public double spread() {
      return assumed() ? ASSUMED : rootMeanSquare;
    }
  }

  /** The residuals of this version of the model. */
  public static ModelError standard() {
    Map<String, Residuals> rows = read();
    return new ModelError(rows.get("hardness"), rows.get("yield"), rows.get("tensile"));
  }

  private static Map<String, Residuals> read() {
    try (InputStream in = ModelError.class.getResourceAsStream("model_error.csv");
        MappingIterator<Map<String, String>> rows =
            new CsvMapper()
                .readerForMapOf(String.class)
                .with(CsvSchema.emptySchema().withHeader())
                .readValues(in)) {
      List<Map<String, String>> all = rows.readAll();
      return all.stream()
          .collect(Collectors.toMap(row -> row.get("quantity"), ModelError::residuals));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Residuals residuals(Map<String, String> row) {
    return new Residuals(
        Integer.parseInt(row.get("values")),
        Integer.parseInt(row.get("left_out")),
        Double.parseDouble(row.get("mean")),
        Double.parseDouble(row.get("root_mean_square")));
  }
}
