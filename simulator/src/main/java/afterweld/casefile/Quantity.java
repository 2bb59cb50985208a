package afterweld.casefile;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A number and the unit behind it, as people write them: {@code 325 °F}, {@code 2.5mm/s}, {@code
 * 1/4 in}, {@code 1 1/2 in}, {@code 1-1/2"}.
 *
 * @param number may be NaN or infinite, which the caller reports
 * @param unit as written, without blanks around it; empty if there is none
 */
record Quantity(double number, String unit) {
  private static final int LONGEST = 80;
  private static final Pattern WRITTEN =
      Pattern.compile(
          "(?<sign>[+-]?)\\s*"
              + "(?:(?:(?<whole>\\d+)(?:\\s+|-))?(?<over>\\d+)\\s*/\\s*(?<under>\\d+)"
              + "|(?<decimal>(?:\\d+(?:\\.\\d*)?|\\.\\d+)(?:e[+-]?\\d+)?)"
              + "|(?<none>\\.?nan)|(?<endless>\\.?inf(?:inity)?))"
              + "(?<unit>.*)",
          Pattern.CASE_INSENSITIVE);

  /** The quantity, or empty if the text does not begin with a number. */
  static Optional<Quantity> parse(String text) {
    String plain = plain(text);
    Matcher written = WRITTEN.matcher(plain);
    if (plain.length() > LONGEST || !written.matches()) {
      return Optional.empty();
    }
    double sign = written.group("sign").equals("-") ? -1 : 1;
    return Optional.of(new Quantity(sign * size(written), written.group("unit").strip()));
  }

  private static String plain(String text) {
    return text.strip().replace('\u2212', '-');
  }

  /** The number as it is written, without its unit; empty if the text does not begin with one. */
  static String numberText(String text) {
    String plain = plain(text);
    Matcher written = WRITTEN.matcher(plain);
    return written.matches() ? plain.substring(0, written.start("unit")).strip() : "";
  }

  private static double size(Matcher written) {
    if (written.group("decimal") != null) {
      return Double.parseDouble(written.group("decimal").toLowerCase(Locale.ROOT));
    }
    if (written.group("none") != null) {
      return Double.NaN;
    }
    return written.group("endless") != null ? Double.POSITIVE_INFINITY : fraction(written);
  }

  private static double fraction(Matcher written) {
    double whole = written.group("whole") == null ? 0 : Double.parseDouble(written.group("whole"));
    double under = Double.parseDouble(written.group("under"));
    return (whole * under + Double.parseDouble(written.group("over"))) / under;
  }
}
