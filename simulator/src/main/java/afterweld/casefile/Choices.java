package afterweld.casefile;

import afterweld.casefile.text.Names;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.UnaryOperator;

/**
 * The names a key may hold and what they stand for. Case does not count, nor whether words are
 * joined by a blank, a hyphen or an underscore.
 *
 * @param <E> what a name stands for
 */
public final class Choices<E> {
  private final Map<String, E> byPlainName = new LinkedHashMap<>();
  private final List<String> names = new ArrayList<>();
  private final UnaryOperator<String> plain;

  private Choices(UnaryOperator<String> plain) {
    this.plain = plain;
  }

  /** Choices by their label. */
  public static <E> Choices<E> of(List<E> values, Function<E, String> label) {
    return of(values, label, Choices::plain);
  }

  /** Choices by their label, with a rule for which spellings are the same. */
  static <E> Choices<E> of(
      List<E> values, Function<E, String> label, UnaryOperator<String> sameSpelling) {
    Choices<E> choices = new Choices<>(sameSpelling);
    for (E value : values) {
      choices.names.add(label.apply(value));
      choices.byPlainName.put(sameSpelling.apply(label.apply(value)), value);
    }
    return choices;
  }

  private static String plain(String name) {
    return name.strip().toLowerCase(Locale.ROOT).replaceAll("[\\s_-]+", "-");
  }

  /** What the name stands for. */
  public Optional<E> find(String name) {
    return Optional.ofNullable(byPlainName.get(plain.apply(name)));
  }

  /** All names, in order. */
  List<String> names() {
    return List.copyOf(names);
  }

  /** All names in one line. */
  String listed() {
    return String.join(", ", names);
  }

  /** What is expected. */
  String expected() {
    return names.size() == 1 ? names.get(0) : "one of " + listed();
  }

  /** The end of a message: {@code ; did you mean 'x'?}, or nothing if no name is near. */
  public String hint(String found) {
    return Names.hint(found, names);
  }

  /** What is expected, and the name that may have been meant. */
  String expectedInsteadOf(String found) {
    return expected() + hint(found);
  }
}
