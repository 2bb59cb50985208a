package afterweld.choice.practice;

import afterweld.material.ClassPathTable;
import afterweld.quantity.Check;
import java.util.List;
import java.util.Map;

/** Limits of practice by thickness, each with its source. */
public final class FurnacePractice {
  private static final List<Map<String, String>> ROWS =
      ClassPathTable.rows(FurnacePractice.class, "furnace_practice.csv");

  /** The tables are in inches, their limits here in rounded mm: 0.063 in is the row to 1.60 mm. */
  private static final double ROUNDED = 0.003;

  private FurnacePractice() {}

  /**
   * A limit for a thickness.
   *
   * @param value in {@code unit}
   * @param source where it comes from, with its status
   */
  public record Limit(double value, String unit, String source) {
    /** Refuses what it cannot be. */
    public Limit {
      Check.notNegative("limit", value, unit);
      Check.said("source", source);
    }

    /** The figure with its source. */
    public String text() {
      return words() + " (" + source + ")";
    }

    /** The figure as the trade words it. */
    public String words() {
      return Math.round(value) + " " + unit;
    }
  }

  /**
   * The limit of a rule.
   *
   * @param thickness m
   */
  public static Limit of(String rule, double thickness) {
    double millimetres = thickness * 1e3 - ROUNDED;
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
}
