package afterweld.casefile;

import afterweld.casefile.text.Names;
import afterweld.casefile.text.Quoted;
import afterweld.study.GridInput;
import afterweld.study.GridStudy;
import afterweld.weld.WeldCase;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Reads the axes of a map as a user types them: {@code travel_speed=2..8mm/s,preheat=20..150C}. The
 * unit behind the second number holds for both where the first has none.
 *
 * @param axes the axes; empty if there is a fault
 * @param faults all that is wrong, in words
 */
public record GridReader(List<GridStudy.Axis> axes, List<String> faults) {
  private static final String FORM =
      "one or two of name=from..to with a unit, such as"
          + " travel_speed=2..8mm/s,preheat=20..150C";

  /** Copies the lists. */
  public GridReader {
    axes = List.copyOf(axes);
    faults = List.copyOf(faults);
  }

  /** Reads a text against the case it is for. */
  public static GridReader read(String text, WeldCase weldCase) {
    List<GridStudy.Axis> axes = new ArrayList<>();
    List<String> faults = new ArrayList<>();
    for (String part : text.split(",", -1)) {
      axis(part.strip(), weldCase, faults).ifPresent(axes::add);
    }
    boolean twice = axes.size() == 2 && axes.get(0).input() == axes.get(1).input();
    if (faults.isEmpty() && (axes.size() > 2 || twice)) {
      faults.add("found " + Quoted.of(text) + "; expected " + FORM + ", each input once");
    }
    return new GridReader(faults.isEmpty() ? axes : List.of(), faults);
  }

  private static Optional<GridStudy.Axis> axis(
      String part, WeldCase weldCase, List<String> faults) {
    String[] sides = part.split("=", -1);
    String[] ends = sides.length == 2 ? sides[1].split("\\.\\.", -1) : new String[0];
    if (ends.length != 2) {
      faults.add("found " + Quoted.of(part) + "; expected " + FORM);
      return Optional.empty();
    }
    Optional<GridInput> input = input(sides[0].strip());
    if (input.isEmpty()) {
      faults.add(unknown(sides[0].strip()));
      return Optional.empty();
    }
    Optional<String> missing = input.get().missingIn(weldCase);
    missing.ifPresent(why -> faults.add(input.get().key() + ": the case " + why));
    return missing.isPresent() ? Optional.empty() : range(input.get(), ends, faults);
  }

  private static Optional<GridInput> input(String name) {
    return Arrays.stream(GridInput.values()).filter(one -> one.key().equals(name)).findFirst();
  }

  private static String unknown(String name) {
    List<String> known = Arrays.stream(GridInput.values()).map(GridInput::key).toList();
    return "found "
        + Quoted.of(name)
        + "; expected one of "
        + String.join(", ", known)
        + Names.hint(name, known);
  }

  private static Optional<GridStudy.Axis> range(
      GridInput input, String[] ends, List<String> faults) {
    Measure measure = measure(input);
    String first = ends[0].strip();
    if (Quantity.parse(first).filter(found -> found.unit().isEmpty()).isPresent()) {
      first += " " + Quantity.parse(ends[1]).map(Quantity::unit).orElse("");
    }
    Measure.Reading low = measure.read(first.strip());
    Measure.Reading high = measure.read(ends[1].strip());
    List<String> problems =
        List.of(low, high).stream()
            .filter(reading -> !reading.good())
            .map(reading -> input.key() + ": " + reading.problem())
            .distinct()
            .toList();
    faults.addAll(problems);
    if (!problems.isEmpty()) {
      return Optional.empty();
    }
    if (!(high.value() > low.value())) {
      faults.add(input.key() + ": expected the lower end first, then a higher one");
      return Optional.empty();
    }
    return Optional.of(new GridStudy.Axis(input, low.value(), high.value()));
  }

  private static Measure measure(GridInput input) {
    String key = input.key();
    return switch (input) {
      case TRAVEL_SPEED -> Measure.within(key, Dimension.SPEED, 0.3, 40, "mm/s");
      case PREHEAT -> Measure.within(key, Dimension.TEMPERATURE, 0, 300, "°C");
      case CURRENT -> Measure.within(key, Dimension.CURRENT, 1, 2000, "A");
      case VOLTAGE -> Measure.within(key, Dimension.VOLTAGE, 1, 100, "V");
      case DILUTION -> Measure.within(key, Dimension.SHARE, 0, 100, "%");
      case NATURAL_AGE -> Measure.within(key, Dimension.TIME, 0, 3650, "days");
      case SOLUTION_TEMPERATURE -> Measure.within(key, Dimension.TEMPERATURE, 400, 570, "°C");
      case QUENCH_DELAY -> Measure.within(key, Dimension.TIME, 0, 600, "s");
      case AGEING_TEMPERATURE -> Measure.within(key, Dimension.TEMPERATURE, 50, 259, "°C");
      case AGEING_TIME -> Measure.within(key, Dimension.TIME, 0.01, 1000, "h");
    };
  }
}
