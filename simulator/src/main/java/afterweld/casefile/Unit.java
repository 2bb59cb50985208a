package afterweld.casefile;

import java.util.List;
import java.util.Locale;
import java.util.function.DoubleUnaryOperator;

/**
 * A unit of a case file and its way to the unit used inside.
 *
 * @param name as messages write it
 * @param toInside from a number in this unit
 * @param fromInside back again
 * @param alsoWritten other ways to write it
 * @param reach from where to where it can be turned into the unit inside; empty if everywhere
 */
record Unit(
    String name,
    DoubleUnaryOperator toInside,
    DoubleUnaryOperator fromInside,
    List<String> alsoWritten,
    String reach) {
  /** A unit that is a multiple of the one inside. */
  static Unit of(String name, double factor, String... alsoWritten) {
    return shifted(name, factor, 0, alsoWritten);
  }

  /** A unit of which {@code parts} make one inside; 9 mm come out as exactly 0.009. */
  static Unit part(String name, double parts, String... alsoWritten) {
    return new Unit(
        name, number -> number / parts, inside -> inside * parts, List.of(alsoWritten), "");
  }

  /** A unit whose zero is elsewhere: inside = (number + zero) times factor. */
  static Unit shifted(String name, double factor, double zero, String... alsoWritten) {
    return new Unit(
        name,
        number -> (number + zero) * factor,
        inside -> inside / factor - zero,
        List.of(alsoWritten),
        "");
  }

  /** Whether the text is one of its names; case, blanks and the form of the degree do not count. */
  boolean isWritten(String text) {
    String plain = plain(text);
    return plain.equals(plain(name))
        || alsoWritten.stream().anyMatch(other -> plain.equals(plain(other)));
  }

  private static String plain(String text) {
    return text.toLowerCase(Locale.ROOT)
        .replaceAll("\\s+|\\^", "")
        .replace("\u2103", "°c")
        .replace("\u2109", "°f")
        .replace('\u00BA', '°')
        .replace("degree", "°")
        .replace("deg", "°")
        .replace('²', '2')
        .replaceAll("[\u2033\u201D]|''", "\"");
  }
}
