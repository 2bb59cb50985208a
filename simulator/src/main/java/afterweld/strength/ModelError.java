package afterweld.strength;

import afterweld.material.ClassPathTable;
import afterweld.quantity.Check;
import java.util.Map;
import java.util.stream.Collectors;
import org.apache.commons.math3.distribution.TDistribution;

/**
 * How far predictions were from published values the model never saw, as a share of the published
 * value. Written by the same run that writes the validation page; the error bands of every result
 * and the model error of a study of spread are taken from it.
 *
 * @param hardness of hardness
 * @param yield of yield
 * @param tensile of tensile strength
 */
public record ModelError(Residuals hardness, Residuals yield, Residuals tensile) {
  /** Fewer values than this tell no spread. */
  private static final int ENOUGH = 8;

  /** A band holds nine values of ten: one of twenty lies below it. */
  private static final double BELOW_THE_HIGH_END = 0.95;

  private static final ModelError STANDARD = read();

  /**
   * Deviations of one quantity.
   *
   * @param values predictions held against a published value
   * @param published how many published values they share: one value for both kinds of arc counts
   *     once
   * @param leftOut predictions left out: metal that no model is made for, or whose strength is an
   *     input
   * @param mean of the deviations, share
   * @param rootMeanSquare of the deviations, share
   * @param overBand root mean square of every deviation over the band assumed for its metal
   */
  public record Residuals(
      int values, int published, int leftOut, double mean, double rootMeanSquare, double overBand) {
    /** Refuses what it cannot be. */
    public Residuals {
      Check.notNegative("number of values", values, "");
      Check.notNegative("number of values", published, "");
      Check.notNegative("number of values", leftOut, "");
      Check.finite("mean", mean, "");
      Check.notNegative("root mean square", rootMeanSquare, "");
      Check.notNegative("root mean square over the band", overBand, "");
    }

    /** Whether there are too few values, so that the spread is assumed. */
    public boolean assumed() {
      return values < ENOUGH;
    }

    /**
     * How many times wider the assumed bands must be so that they hold nine values of ten:
     * Student's factor for as few published values, times the scatter; 1 where there are too few to
     * tell.
     */
    public double bandFactor() {
      return assumed()
          ? 1
          : new TDistribution(null, published).inverseCumulativeProbability(BELOW_THE_HIGH_END)
              * overBand;
    }
  }

  /** The residuals of this version of the model. */
  public static ModelError standard() {
    return STANDARD;
  }

  private static ModelError read() {
    Map<String, Residuals> rows =
        ClassPathTable.rows(ModelError.class, "model_error.csv").stream()
            .collect(Collectors.toMap(row -> row.get("quantity"), ModelError::residuals));
    return new ModelError(rows.get("hardness"), rows.get("yield"), rows.get("tensile"));
  }

  private static Residuals residuals(Map<String, String> row) {
    return new Residuals(
        Integer.parseInt(row.get("values")),
        Integer.parseInt(row.get("published_values")),
        Integer.parseInt(row.get("left_out")),
        Double.parseDouble(row.get("mean")),
        Double.parseDouble(row.get("root_mean_square")),
        Double.parseDouble(row.get("root_mean_square_over_assumed_band")));
  }
}
