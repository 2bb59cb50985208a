package afterweld.material;

import java.util.Locale;
import java.util.regex.Pattern;

/** How names are compared: alloys as the trade writes them, constants as the data files do. */
final class Names {
  private static final Pattern ALLOY_PREFIX = Pattern.compile("^(AA|EN\\s*AW|ER)[\\s-]*");
  private static final Pattern CASTING_SUFFIX = Pattern.compile("\\.0$");

  private Names() {}

  /** The library's name of an alloy: {@code EN AW-6082} is 6082, {@code a356.0} is A356. */
  static String alloy(String written) {
    String upper = written.strip().toUpperCase(Locale.ROOT);
    String bare = ALLOY_PREFIX.matcher(upper).replaceFirst("");
    return CASTING_SUFFIX.matcher(bare).replaceFirst("");
  }

  /**
   * The constant that a data file names: {@code with dilution} is WITH_DILUTION.
   *
   * @throws IllegalArgumentException if there is none of that name
   */
  static <E extends Enum<E>> E constant(Class<E> constants, String written) {
    String name = written.toUpperCase(Locale.ROOT).replace(' ', '_').replace('-', '_');
    return Enum.valueOf(constants, name);
  }
}
