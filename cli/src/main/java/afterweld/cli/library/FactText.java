package afterweld.cli.library;

import afterweld.material.Fact;
import afterweld.quantity.UnitSystem;
import java.util.Locale;
import java.util.function.DoubleUnaryOperator;
import java.util.regex.Pattern;

/**
 * A fact of the library as it is shown: its temperatures and strengths in the reader's units, also
 * inside a recipe; everything else as stated.
 *
 * @param fact what the library states
 * @param units of the reader
 */
record FactText(Fact fact, UnitSystem units) {
  private static final Pattern TEMPERATURE = Pattern.compile("(-?\\d+(?:\\.\\d+)?) °C");
  private static final Pattern STRESS = Pattern.compile("(\\d+(?:\\.\\d+)?) MPa");
  private static final double PASCAL_PER_MPA = 1e6;

  /** The value with its unit. */
  String value() {
    String stated = (fact.value() + " " + fact.unit()).strip();
    if (units == UnitSystem.METRIC) {
      return stated;
    }
    String warm = replaced(stated, TEMPERATURE, "%.0f °F", celsius -> celsius * 1.8 + 32);
    return replaced(warm, STRESS, "%.1f ksi", value -> units.stress(value * PASCAL_PER_MPA));
  }

  private static String replaced(
      String text, Pattern pattern, String shown, DoubleUnaryOperator conversion) {
    return pattern
        .matcher(text)
        .replaceAll(
            match ->
                String.format(
                    Locale.ROOT,
                    shown,
                    conversion.applyAsDouble(Double.parseDouble(match.group(1)))));
  }
}
