package afterweld.casefile;

import static afterweld.casefile.Dimension.LENGTH;
import static afterweld.casefile.Dimension.RATIO;

import afterweld.casefile.text.Node;
import afterweld.choice.RouteSettings;
import afterweld.material.Alloy;
import afterweld.material.Temper;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

/** Reads {@code routes}: what the shop can do and what matters to it. */
final class RouteSettingsReader {
  private static final Measure ALLOWANCE = movement("distortion_allowance");
  private static final Measure MOVEMENT = movement("expected_movement");
  private static final Measure TARGET = Measure.within("target", RATIO, 0.5, 0.999, "");
  private static final List<Measure> SIDES = List.of(side("length"), side("width"), side("height"));
  private static final String BOX = "keys length, width and height";

  /** More than all tempers there are (assumed). */
  private static final int MOST_NAMES = 20;

  /** What routes are compared by, in the words of a case file. */
  private static final Choices<String> CRITERIA =
      Choices.of(
          List.of("strength margin", "distortion", "steps", "furnace hours"),
          UnaryOperator.identity());

  private final Plates plates;

  RouteSettingsReader(Plates plates) {
    this.plates = plates;
  }

  private static Measure movement(String key) {
    return Measure.within(key, LENGTH, 0, 1000, "mm");
  }

  private static Measure side(String key) {
    return Measure.above(key, LENGTH, 0, 100, "m");
  }

  RouteSettings read(Section top) {
    return top.inner("routes", "keys such as furnace, part, tank, target and order")
        .map(this::settings)
        .orElse(RouteSettings.DEFAULT);
  }

  private RouteSettings settings(Section section) {
    RouteSettings settings =
        new RouteSettings(
            box(section, "furnace"),
            box(section, "part"),
            box(section, "tank"),
            section.quantity(ALLOWANCE),
            section.quantity(MOVEMENT),
            tempersAvailable(section),
            section.quantity(TARGET),
            names(section, "order", CRITERIA, written -> Optional.empty()));
    section.finish();
    return settings;
  }

  private static Optional<RouteSettings.Box> box(Section section, String key) {
    return section.inner(key, BOX).flatMap(RouteSettingsReader::box);
  }

  private static Optional<RouteSettings.Box> box(Section section) {
    List<Double> sizes = SIDES.stream().map(section::required).toList();
    section.finish();
    return section.built(() -> new RouteSettings.Box(sizes.get(0), sizes.get(1), sizes.get(2)));
  }

  private List<String> tempersAvailable(Section section) {
    return names(section, "tempers_available", tempers(), this::notComputed);
  }

  private Optional<String> notComputed(String written) {
    return Stream.of(plates.left(), plates.right())
        .flatMap(side -> side.alloy().stream())
        .flatMap(alloy -> TemperWords.notComputed(alloy, written).stream())
        .findFirst();
  }

  private Choices<String> tempers() {
    List<String> names =
        Stream.of(plates.left(), plates.right())
            .flatMap(side -> side.alloy().stream())
            .flatMap(alloy -> alloy.tempers().stream())
            .map(Temper::name)
            .distinct()
            .toList();
    return Choices.of(names, UnaryOperator.identity(), this::libraryName);
  }

  private String libraryName(String written) {
    return Stream.of(plates.left(), plates.right())
        .flatMap(side -> side.alloy().stream())
        .flatMap(alloy -> temper(alloy, written))
        .findFirst()
        .orElse(written);
  }

  private static Stream<String> temper(Alloy alloy, String written) {
    return alloy.temper(written.strip()).stream().map(Temper::name);
  }

  private static List<String> names(
      Section section,
      String key,
      Choices<String> choices,
      Function<String, Optional<String>> notComputed) {
    List<String> found = new ArrayList<>();
    for (Node item : section.list(key, 1, MOST_NAMES, "a list of names")) {
      Optional<String> name = named(item).flatMap(word -> meant(word, choices));
      if (name.isEmpty()) {
        String written = item instanceof Node.Scalar scalar ? scalar.text() : "";
        String why =
            notComputed
                .apply(written)
                .map(text -> ", " + text)
                .orElseGet(() -> "; expected " + choices.expectedInsteadOf(written));
        section.faults().add(item.place(), key + ": found " + item.words() + why);
      } else if (found.contains(name.get())) {
        section.faults().add(item.place(), key + ": found " + item.words() + " again");
      }
      name.ifPresent(found::add);
    }
    return found;
  }

  /** Without any known name (the alloys are faulty) every name is taken. */
  private static Optional<String> meant(String word, Choices<String> choices) {
    return choices.names().isEmpty() ? Optional.of(word) : choices.find(word);
  }

  private static Optional<String> named(Node item) {
    return item instanceof Node.Scalar scalar ? Optional.of(scalar.text()) : Optional.empty();
  }
}
