package afterweld.choice.practice;

import afterweld.material.ClassPathTable;
import afterweld.quantity.UnitSystem;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * Where and how long the trade ages: from 150 to 205 °C (common practice, rounded from the usual
 * schedules), for a time that goes with the temperature. Between the stated pairs of temperature
 * and time, and beyond them, the logarithm of the time runs straight in temperature; one pair holds
 * everywhere.
 */
public final class AgeingTime {
  /** Coolest ageing, K. */
  public static final double COOLEST = 150 + UnitSystem.ZERO_CELSIUS;

  /** Hottest ageing, K. */
  public static final double HOTTEST = 205 + UnitSystem.ZERO_CELSIUS;

  private static final double HOUR = 3600;
  private static final List<Map<String, String>> ROWS =
      ClassPathTable.rows(AgeingTime.class, "ageing_times.csv");

  private AgeingTime() {}

  private record Pair(double celsius, double hours) {}

  /** Whether the trade ages at a temperature, K. */
  public static boolean agesAt(double temperature) {
    return temperature >= COOLEST - 2 * UnitSystem.ROUNDED
        && temperature <= HOTTEST + UnitSystem.ROUNDED;
  }

  /** Shortest time that is stated anywhere for a metal, s. */
  public static double least(boolean casting, double celsius) {
    return at("least", casting, celsius).orElseThrow();
  }

  /** Longest time that leaves the strength of T6, s; empty where nobody states one. */
  public static OptionalDouble most(boolean casting, double celsius) {
    return at("most", casting, celsius);
  }

  private static OptionalDouble at(String bound, boolean casting, double celsius) {
    String family = casting ? "casting" : "wrought";
    List<Pair> pairs =
        ROWS.stream()
            .filter(row -> row.get("family").equals(family) && row.get("bound").equals(bound))
            .map(row -> new Pair(number(row, "temperature"), number(row, "value")))
            .sorted(Comparator.comparingDouble(Pair::celsius))
            .toList();
    if (pairs.size() < 2) {
      return pairs.stream().mapToDouble(pair -> HOUR * pair.hours()).findFirst();
    }
    int upper = 1;
    while (upper < pairs.size() - 1 && pairs.get(upper).celsius() < celsius) {
      upper++;
    }
    return OptionalDouble.of(HOUR * between(pairs.get(upper - 1), pairs.get(upper), celsius));
  }

  private static double between(Pair low, Pair high, double celsius) {
    double part = (celsius - low.celsius()) / (high.celsius() - low.celsius());
    return low.hours() * Math.pow(high.hours() / low.hours(), part);
  }

  private static double number(Map<String, String> row, String column) {
    return Double.parseDouble(row.get(column));
  }
}
