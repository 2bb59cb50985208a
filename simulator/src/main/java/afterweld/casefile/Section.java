package afterweld.casefile;

import afterweld.casefile.text.FaultCollector;
import afterweld.casefile.text.Names;
import afterweld.casefile.text.Node;
import afterweld.casefile.text.Place;
import afterweld.casefile.text.Quoted;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.Set;
import java.util.function.Supplier;

/**
 * A group of keys of the case file while it is read: gives typed values and gathers every fault.
 *
 * <p>A key is known once it has been asked for; {@link #finish} reports the others, and the
 * required ones that are missing. A value that is missing or faulty comes back empty (as NaN where
 * a number is returned), so that reading goes on and comparisons with it are never true. Nothing
 * may be built from a section that is not {@link #sound}.
 */
final class Section {
  private final String name;
  private final Place place;
  private final Map<String, Node.Entry> entries;
  private final FaultCollector faults;
  private final int faultsBefore;
  private final Set<String> known = new LinkedHashSet<>();
  private final List<Missing> missing = new ArrayList<>();

  private record Missing(String key, String expected) {}

  /**
   * A section.
   *
   * @param name as messages name it, such as {@code left}
   * @param place where a missing key is reported
   * @param mapping what it holds
   * @param faults where faults go
   */
  Section(String name, Place place, Node.Mapping mapping, FaultCollector faults) {
    this.name = name;
    this.place = place;
    this.entries = mapping.entries();
    this.faults = faults;
    this.faultsBefore = faults.count();
  }

  /** Whether the file has the key. */
  boolean has(String key) {
    return entries.containsKey(key);
  }

  /** Whether nothing in it was faulty so far. */
  boolean sound() {
    return faults.count() == faultsBefore && missing.isEmpty();
  }

  /** What is built from it; empty where it is not {@link #sound}. */
  <T> Optional<T> built(Supplier<T> value) {
    return sound() ? Optional.of(value.get()) : Optional.empty();
  }

  /** Where faults go. */
  FaultCollector faults() {
    return faults;
  }

  /** A fault about a key: at its value, or where the section begins if it is not there. */
  void fault(String key, String message) {
    Node.Entry entry = entries.get(key);
    faults.add(entry == null ? place : entry.value().place(), key + ": " + message);
  }

  /** A fault about a key that should not be here. */
  void unwanted(String key, String message) {
    faults.add(entries.get(key).key(), key + ": " + message);
  }

  /** Where a key stands. */
  Place placeOf(String key) {
    Node.Entry entry = entries.get(key);
    return entry == null ? place : entry.key();
  }

  /** What the key holds, as it stands in the file. */
  Optional<Node> node(String key) {
    known.add(key);
    return Optional.ofNullable(entries.get(key)).map(Node.Entry::value);
  }

  /** Notes that a key is missing; reported by {@link #finish}. */
  void missing(String key, String expected) {
    missing.add(new Missing(key, expected));
  }

  /** A quantity, if the file gives it. */
  OptionalDouble quantity(Measure measure) {
    double value = quantityOr(measure, Double.NaN);
    return Double.isNaN(value) ? OptionalDouble.empty() : OptionalDouble.of(value);
  }

  /** A quantity, or what is used without it; NaN if it is faulty. */
  double quantityOr(Measure measure, double otherwise) {
    Optional<Node> node = node(measure.key());
    return node.isEmpty() ? otherwise : read(measure, node.get());
  }

  /** A quantity as it is written, if the file gives it and it is good. */
  Optional<String> written(Measure measure) {
    return node(measure.key())
        .flatMap(
            node -> node instanceof Node.Scalar scalar ? Optional.of(scalar) : Optional.empty())
        .map(scalar -> scalar.text().strip())
        .filter(text -> measure.read(text).good())
        .map(measure::tidy);
  }

  /** A quantity that must be there; NaN if it is not or is faulty. */
  double required(Measure measure) {
    if (!has(measure.key())) {
      missing(measure.key(), measure.expected());
    }
    return quantityOr(measure, Double.NaN);
  }

  private double read(Measure measure, Node node) {
    Optional<String> text = words(measure.key(), node, measure.expected());
    Measure.Reading reading =
        text.map(measure::read).orElseGet(() -> new Measure.Reading(Double.NaN, ""));
    if (!reading.good()) {
      fault(measure.key(), reading.problem());
    }
    return reading.value();
  }

  /** A whole number, if the file gives it. */
  OptionalLong wholeNumber(String key, long low, long high) {
    String expected = "a whole number from " + low + " to " + high + ", without a unit";
    Optional<String> text = node(key).flatMap(node -> words(key, node, expected));
    if (text.isEmpty()) {
      return OptionalLong.empty();
    }
    OptionalLong number = whole(text.get());
    boolean fits = number.isPresent() && number.getAsLong() >= low && number.getAsLong() <= high;
    if (!fits) {
      fault(key, "found " + Quoted.of(text.get()) + "; expected " + expected);
    }
    return fits ? number : OptionalLong.empty();
  }

  private static OptionalLong whole(String text) {
    return text.matches("[+-]?\\d{1,18}")
        ? OptionalLong.of(Long.parseLong(text))
        : OptionalLong.empty();
  }

  /** Text or a number written without quotes, if the file gives it. */
  Optional<String> text(String key, String expected) {
    return node(key).flatMap(node -> words(key, node, expected));
  }

  private Optional<String> words(String key, Node node, String expected) {
    if (node instanceof Node.Scalar scalar
        && (scalar.kind() == Node.Kind.TEXT || scalar.kind() == Node.Kind.NUMBER)) {
      return Optional.of(scalar.text().strip());
    }
    fault(key, "found " + node.words() + "; expected " + expected);
    return Optional.empty();
  }

  /** True or false, if the file gives it. */
  Optional<Boolean> truth(String key) {
    Optional<Node> node = node(key);
    if (node.isPresent() && node.get() instanceof Node.Scalar scalar) {
      if (scalar.kind() == Node.Kind.TRUE || scalar.kind() == Node.Kind.FALSE) {
        return Optional.of(scalar.kind() == Node.Kind.TRUE);
      }
    }
    node.ifPresent(other -> fault(key, "found " + other.words() + "; expected true or false"));
    return Optional.empty();
  }

  /** One of several names, if the file gives it. */
  <E> Optional<E> choice(String key, Choices<E> choices) {
    Optional<String> text = text(key, choices.expected());
    Optional<E> choice = text.flatMap(choices::find);
    if (text.isPresent() && choice.isEmpty()) {
      String found = "found " + Quoted.of(text.get());
      fault(key, found + "; expected " + choices.expectedInsteadOf(text.get()));
    }
    return choice;
  }

  /** One of several names, which must be there. */
  <E> Optional<E> requiredChoice(String key, Choices<E> choices) {
    if (!has(key)) {
      missing(key, choices.expected());
    }
    return choice(key, choices);
  }

  /** A section inside, if the file gives it. */
  Optional<Section> inner(String key, String expected) {
    Optional<Node> node = node(key);
    if (node.isPresent() && node.get() instanceof Node.Mapping mapping) {
      return Optional.of(new Section(key, entries.get(key).key(), mapping, faults));
    }
    node.ifPresent(other -> fault(key, "found " + other.words() + "; expected " + expected));
    return Optional.empty();
  }

  /** The items of a list of {@code least} to {@code most}, if the file gives one. */
  List<Node> list(String key, int least, int most, String expected) {
    Optional<Node> node = node(key);
    if (node.isPresent() && node.get() instanceof Node.Sequence sequence) {
      int size = sequence.items().size();
      if (size >= least && size <= most) {
        return sequence.items();
      }
      fault(key, "found a list of " + size + "; expected " + least + " to " + most + " items");
      return List.of();
    }
    node.ifPresent(other -> fault(key, "found " + other.words() + "; expected " + expected));
    return List.of();
  }

  /** Reports the keys nobody asked for and the required ones that are missing. */
  void finish() {
    Set<String> meant = new HashSet<>();
    entries.forEach(
        (key, entry) -> {
          if (!known.contains(key) && !faults.full()) {
            Names.nearest(key, known).ifPresent(meant::add);
            faults.add(entry.key(), unknown(key));
          }
        });
    missing.stream().filter(one -> !meant.contains(one.key())).forEach(this::report);
  }

  private String unknown(String key) {
    return UnreadKeys.advice(name, key).orElseGet(() -> mistyped(key));
  }

  private String mistyped(String key) {
    String hint = Names.hint(key, known);
    return "unknown key "
        + Quoted.of(key)
        + (hint.isEmpty() ? "; known here: " + String.join(", ", known) : hint);
  }

  private void report(Missing one) {
    faults.add(place, name + " has no " + one.key() + "; expected " + one.expected());
  }
}
