package afterweld.validation;

import afterweld.section.ErrorBand;
import afterweld.strength.ModelError.Residuals;
import afterweld.validation.Comparison.Measure;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** Writes the deviations of test rows from the published values, for the study of spread. */
final class ModelErrorFile {
  private static final String HEAD =
      "quantity,values,published_values,left_out,mean,standard_deviation,root_mean_square,root_mean_square_over_assumed_band,source\n";
  private static final String SOURCE =
      "\"predicted over published less 1, test rows of the validation; left out: annealed"
          + " metal, whose strength is an input\"";

  /** A deviation and the row it belongs to. */
  private record Deviation(PublishedRow row, double share) {
    /** In bands assumed for such metal: as welded, or in T6 and fully treated. */
    double overBand() {
      boolean asWelded = row.condition().startsWith("as welded");
      return share / (asWelded ? ErrorBand.AFFECTED : ErrorBand.TREATED).assumed();
    }
  }

  private ModelErrorFile() {}

  static String text() {
    return HEAD
        + line("hardness", Measure.HARDNESS)
        + line("yield", Measure.YIELD)
        + line("tensile", Measure.TENSILE);
  }

  private static List<Deviation> deviations(Measure measure, boolean leftOut) {
    return PublishedRow.all().stream()
        .filter(row -> leftOut ? row.putIn() : row.kind().equals("test"))
        .flatMap(
            row ->
                Predictions.of(row).stream()
                    .filter(one -> one.measure() == measure)
                    .map(one -> new Deviation(row, one.errorPercent() / 100)))
        .filter(one -> Double.isFinite(one.share()))
        .toList();
  }

  private static String line(String name, Measure measure) {
    List<Deviation> kept = deviations(measure, false);
    double[] all = kept.stream().mapToDouble(Deviation::share).toArray();
    double mean = Arrays.stream(all).average().orElseThrow();
    double variance =
        Arrays.stream(all).map(one -> (one - mean) * (one - mean)).sum()
            / Math.max(1, all.length - 1);
    Residuals rounded = residuals(measure);
    return String.format(
        Locale.ROOT,
        "%s,%d,%d,%d,%.3f,%.3f,%.3f,%.3f,%s%n",
        name,
        all.length,
        rounded.published(),
        rounded.leftOut(),
        mean,
        Math.sqrt(variance),
        rounded.rootMeanSquare(),
        rounded.overBand(),
        SOURCE);
  }

  /** What the file says of a quantity, rounded as there. */
  static Residuals residuals(Measure measure) {
    List<Deviation> kept = deviations(measure, false);
    double[] all = kept.stream().mapToDouble(Deviation::share).toArray();
    return new Residuals(
        all.length,
        (int) kept.stream().map(Deviation::row).distinct().count(),
        deviations(measure, true).size(),
        rounded(Arrays.stream(all).average().orElseThrow()),
        rounded(rootMeanSquare(all)),
        rounded(rootMeanSquare(kept.stream().mapToDouble(Deviation::overBand).toArray())));
  }

  private static double rounded(double value) {
    return Math.round(value * 1000) / 1000.0;
  }

  private static double rootMeanSquare(double[] all) {
    return Math.sqrt(Arrays.stream(all).map(one -> one * one).average().orElseThrow());
  }
}
