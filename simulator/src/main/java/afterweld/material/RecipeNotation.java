package afterweld.material;

import afterweld.material.TemperRecipe.Leg;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads a temper recipe as the data files write it: where it starts, then its straight legs,
 * separated by semicolons.
 *
 * <pre>
 * dissolved at 530 °C; hold 1 h; 300 K/s to 25 °C; hold 1 d; 0.5 K/s to 175 °C; hold 8 h; 2 K/s to 25 °C
 * as cast at 25 °C; 600 s to 540 °C; hold 8 h; 100 K/s to 25 °C
 * </pre>
 */
final class RecipeNotation {
  private static final Pattern START = Pattern.compile("(dissolved|as cast) at (\\S+) °C");
  private static final Pattern HOLD = Pattern.compile("hold (\\S+) (s|h|d)");
  private static final Pattern AT_RATE = Pattern.compile("(\\S+) K/(s|h) to (\\S+) °C");
  private static final Pattern IN_TIME = Pattern.compile("(\\S+) (s|h|d) to (\\S+) °C");
  private static final Map<String, Integer> SECONDS = Map.of("s", 1, "h", 3600, "d", 86400);

  private final List<Leg> legs = new ArrayList<>();
  private double celsius;

  private RecipeNotation(double startCelsius) {
    celsius = startCelsius;
  }

  /**
   * The recipe a text describes.
   *
   * @throws IllegalArgumentException if a part of it is not in the notation
   */
  static TemperRecipe read(String text) {
    String[] parts = text.split("; ", -1);
    Matcher start = START.matcher(parts[0]);
    if (!start.matches()) {
      throw new IllegalArgumentException("recipe starts with '" + parts[0] + "'");
    }
    double startCelsius = Double.parseDouble(start.group(2));
    RecipeNotation notation = new RecipeNotation(startCelsius);
    for (int i = 1; i < parts.length; i++) {
      notation.add(parts[i]);
    }
    boolean asCast = start.group(1).equals("as cast");
    return new TemperRecipe(asCast, DataUnit.CELSIUS.toSi(startCelsius), notation.legs);
  }

  private void add(String part) {
    Matcher hold = HOLD.matcher(part);
    Matcher atRate = AT_RATE.matcher(part);
    Matcher inTime = IN_TIME.matcher(part);
    if (hold.matches()) {
      addLeg(seconds(hold), celsius);
    } else if (atRate.matches()) {
      double end = Double.parseDouble(atRate.group(3));
      double rise = Math.abs(end - celsius);
      addLeg(rise * SECONDS.get(atRate.group(2)) / Double.parseDouble(atRate.group(1)), end);
    } else if (inTime.matches()) {
      addLeg(seconds(inTime), Double.parseDouble(inTime.group(3)));
    } else {
      throw new IllegalArgumentException("recipe with '" + part + "'");
    }
  }

  private static double seconds(Matcher timed) {
    return Double.parseDouble(timed.group(1)) * SECONDS.get(timed.group(2));
  }

  private void addLeg(double duration, double endCelsius) {
    legs.add(new Leg(duration, DataUnit.CELSIUS.toSi(endCelsius)));
    celsius = endCelsius;
  }
}
