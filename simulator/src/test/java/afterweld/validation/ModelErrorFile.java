package afterweld.validation;

import afterweld.validation.Comparison.Measure;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** Writes the deviations of test rows from the published values, for the study of spread. */
final class ModelErrorFile {
  private static final String HEAD =
      "quantity,values,left_out,mean,standard_deviation,root_mean_square,source\n";
  private static final String SOURCE =
      "\"predicted over published less 1, test rows of the validation; left out: weld metal without"
          + " magnesium and silicon, for which no model is made\"";

  /** 3003 welded with 1100. */
  private static final String NO_MODEL = "W07";

  private ModelErrorFile() {}

  static String text() {
    return HEAD
        + line("hardness", Measure.HARDNESS)
        + line("yield", Measure.YIELD)
        + line("tensile", Measure.TENSILE);
  }

  /** Rows on hardness scales convert a number and say nothing of the model. */
  private static List<Double> deviations(Measure measure, boolean leftOut) {
    return PublishedRow.all().stream()
        .filter(row -> row.kind().equals("test"))
        .filter(row -> row.id().equals(NO_MODEL) == leftOut)
        .filter(row -> measure != Measure.HARDNESS || !row.topic().equals("hardness"))
        .flatMap(row -> Predictions.of(row).stream())
        .filter(one -> one.measure() == measure)
        .map(one -> one.errorPercent() / 100)
        .filter(Double::isFinite)
        .toList();
  }

  private static String line(String name, Measure measure) {
    double[] all = deviations(measure, false).stream().mapToDouble(Double::doubleValue).toArray();
    double mean = Arrays.stream(all).average().orElseThrow();
    double variance =
        Arrays.stream(all).map(one -> (one - mean) * (one - mean)).sum()
            / Math.max(1, all.length - 1);
    double square = Arrays.stream(all).map(one -> one * one).average().orElseThrow();
    return String.format(
        Locale.ROOT,
        "%s,%d,%d,%.3f,%.3f,%.3f,%s%n",
        name,
        all.length,
        deviations(measure, true).size(),
        mean,
        Math.sqrt(variance),
        Math.sqrt(square),
        SOURCE);
  }
}
