package afterweld.validation;

import java.util.Locale;

/**
 * One number of a published row against the prediction.
 *
 * @param measure what kind of number it is, for the statistics
 * @param label what is compared
 * @param published the published value; NaN where only limits are published
 * @param predicted the prediction
 * @param low lowest prediction that counts as in
 * @param high highest prediction that counts as in
 */
record Comparison(
    Measure measure, String label, double published, double predicted, double low, double high) {

  /** Kinds of numbers that are averaged together. */
  enum Measure {
    YIELD("yield", "MPa"),
    TENSILE("tensile strength", "MPa"),
    HARDNESS("hardness", "HV or HB"),
    EXTENT("extent of the heat-affected zone", "mm"),
    PEAK("peak temperature", "°C"),
    OTHER("other", "");

    final String title;
    final String unit;

    Measure(String title, String unit) {
      this.title = title;
      this.unit = unit;
    }
  }

  /** Within a share of the published value either way. */
  static Comparison within(
      double share, Measure measure, String label, double published, double predicted) {
    double margin = share * Math.abs(published);
    return new Comparison(
        measure, label, published, predicted, published - margin, published + margin);
  }

  /** Within a factor either way. */
  static Comparison withinFactor(
      double factor, Measure measure, String label, double published, double predicted) {
    return new Comparison(
        measure, label, published, predicted, published / factor, published * factor);
  }

  /** A fact that the program must show: 1 if it does. */
  static Comparison fact(String label, boolean shown) {
    return new Comparison(Measure.OTHER, label, 1, shown ? 1 : 0, 1, 1);
  }

  boolean in() {
    return predicted >= low && predicted <= high;
  }

  boolean isFact() {
    return low == 1 && high == 1 && published == 1;
  }

  /** Error in percent of the published value. */
  double errorPercent() {
    return 100 * (predicted - published) / published;
  }

  /** Three significant figures, so that the last bits of a machine do not show. */
  static String digits(double value) {
    if (Double.isNaN(value)) {
      return "–";
    }
    double magnitude = Math.abs(value);
    int decimals = magnitude >= 100 ? 0 : magnitude >= 10 ? 1 : magnitude >= 1 ? 2 : 3;
    return String.format(Locale.ROOT, "%." + decimals + "f", value);
  }
}
