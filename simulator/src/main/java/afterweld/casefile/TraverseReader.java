package afterweld.casefile;

import afterweld.casefile.text.Fault;
import afterweld.casefile.text.FaultCollector;
import afterweld.casefile.text.Names;
import afterweld.casefile.text.Place;
import afterweld.casefile.text.Quoted;
import afterweld.strength.HardnessScale;
import afterweld.study.HardnessTraverse;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Reads a hardness traverse: CSV with a head, {@code distance_mm} or {@code distance_in}, then
 * {@code HV}, {@code HB} or {@code HRB}, and {@code sd} in the same scale if each indent's is
 * known. Lines that begin with {@code #} are remarks.
 *
 * @param traverse what was measured; empty if there is a fault
 * @param faults all that is wrong, with line and column
 */
public record TraverseReader(Optional<HardnessTraverse> traverse, List<Fault> faults) {
  /** No aluminium is softer, HV (common practice). */
  private static final double SOFTEST = 20;

  /** No aluminium is harder, HV (common practice). */
  private static final double HARDEST = 250;

  /** A larger scatter is no hardness test, HV (assumed). */
  private static final double LARGEST_DEVIATION = 50;

  private static final double INCH = 0.0254;

  /** Farther from a weld no traverse reads, m (assumed). */
  private static final double FARTHEST = 2;

  private static final String HEAD =
      "a head with distance_mm or distance_in, HV, HB or HRB, and sd if it is known";
  private static final List<String> NAMES =
      List.of("distance_mm", "distance_in", "hv", "hb", "hrb", "sd");
  private static final List<String> DEVIATIONS = List.of("sd", "std", "dev", "sigma", "scatter");

  /** Copies the list. */
  public TraverseReader {
    faults = List.copyOf(faults);
  }

  /**
   * Reads one file of readings on wrought metal.
   *
   * @param file its name as the user gave it
   * @param bytes its content, UTF-8
   */
  public static TraverseReader read(String file, byte[] bytes) {
    return read(file, bytes, false);
  }

  /**
   * Reads one file.
   *
   * @param file its name as the user gave it
   * @param bytes its content, UTF-8
   * @param casting whether a side of the joint is one, which no table of HRB holds for
   */
  public static TraverseReader read(String file, byte[] bytes, boolean casting) {
    FaultCollector faults = new FaultCollector(file);
    String text = new String(bytes, StandardCharsets.UTF_8).replace("\uFEFF", "");
    List<HardnessTraverse.Point> points = new Lines(faults, casting).points(text);
    HardnessTraverse traverse = new HardnessTraverse(points);
    if (faults.count() == 0) {
      traverse.faults().forEach(fault -> faults.add(Place.START, fault));
    }
    return new TraverseReader(
        faults.count() == 0 ? Optional.of(traverse) : Optional.empty(), faults.inOrder());
  }

  /** Which column holds what; -1 if none does. */
  private record Columns(int distance, double metres, int hardness, Unit scale, int spread) {
    static Optional<Columns> of(List<String> head) {
      int millimetres = head.indexOf("distance_mm");
      int inches = head.indexOf("distance_in");
      List<Unit> scales =
          head.stream()
              .filter(NAMES::contains)
              .flatMap(name -> Dimension.HARDNESS.unit(name).stream())
              .toList();
      boolean clear = millimetres < 0 != inches < 0 && scales.size() == 1;
      return clear
          ? Optional.of(
              new Columns(
                  Math.max(millimetres, inches),
                  inches >= 0 ? INCH : 1e-3,
                  head.indexOf(scales.get(0).name().toLowerCase(Locale.ROOT)),
                  scales.get(0),
                  head.indexOf("sd")))
          : Optional.empty();
    }
  }

  private static final class Lines {
    private final FaultCollector faults;
    private final boolean casting;
    private Optional<Columns> columns = Optional.empty();

    Lines(FaultCollector faults, boolean casting) {
      this.faults = faults;
      this.casting = casting;
    }

    List<HardnessTraverse.Point> points(String text) {
      List<HardnessTraverse.Point> points = new ArrayList<>();
      boolean headed = false;
      String[] lines = text.split("\\R", -1);
      for (int i = 0; i < lines.length && !faults.full(); i++) {
        boolean counts = !lines[i].isBlank() && !lines[i].startsWith("#");
        if (counts && !headed) {
          headed = true;
          head(lines[i], i + 1);
        } else if (counts && columns.isPresent()) {
          point(lines[i], i + 1, columns.get()).ifPresent(points::add);
        }
      }
      if (!headed) {
        faults.add(Place.START, "found nothing; expected " + HEAD);
      }
      return points;
    }

    private void head(String line, int number) {
      List<String> names =
          Arrays.stream(line.split(",", -1))
              .map(cell -> cell.strip().toLowerCase(Locale.ROOT))
              .toList();
      int before = faults.count();
      String[] cells = line.split(",", -1);
      for (int i = 0; i < cells.length; i++) {
        known(names, cells, i, number);
      }
      columns = Columns.of(names);
      if (columns.isEmpty() && faults.count() == before) {
        faults.add(new Place(number, 1), "found " + Quoted.of(line) + "; expected " + HEAD);
      }
    }

    /** A column left aside unread could be the scatter that the user took care to measure. */
    private void known(List<String> names, String[] cells, int index, int line) {
      String name = names.get(index);
      String found = Quoted.of(cells[index].strip());
      Place place = new Place(line, column(cells, index) + leading(cells[index]));
      if (!name.isEmpty() && !NAMES.contains(name)) {
        faults.add(place, "unknown column " + found + "; expected " + HEAD + meant(name));
      } else if (casting && name.equals("hrb")) {
        faults.add(place, "found " + found + "; expected " + HardnessScale.NO_CAST_ROCKWELL);
      } else if (!name.isEmpty() && names.indexOf(name) < index) {
        faults.add(place, "found the column " + found + " again; expected it once");
      }
    }

    /** A deviation goes by many names, all of them far from the one that is read. */
    private static String meant(String name) {
      if (HardnessScale.webster(name)) {
        return "; " + HardnessScale.NO_WEBSTER;
      }
      return DEVIATIONS.stream().anyMatch(name::contains)
          ? "; did you mean 'sd'?"
          : Names.hint(name, NAMES);
    }

    private static int leading(String cell) {
      return cell.length() - cell.stripLeading().length();
    }

    private Optional<HardnessTraverse.Point> point(String line, int number, Columns where) {
      String[] cells = line.split(",", -1);
      OptionalDouble distance =
          number(
              cells,
              where.distance(),
              number,
              -FARTHEST / where.metres(),
              FARTHEST / where.metres());
      OptionalDouble hardness = number(cells, where.hardness(), number, 1, 1000);
      OptionalDouble spread =
          where.spread() >= 0 && where.spread() < cells.length && !cells[where.spread()].isBlank()
              ? number(cells, where.spread(), number, 0.1, LARGEST_DEVIATION)
              : OptionalDouble.empty();
      if (distance.isEmpty() || hardness.isEmpty()) {
        return Optional.empty();
      }
      double vickers = vickers(hardness.getAsDouble(), where);
      if (!(vickers >= SOFTEST && vickers <= HARDEST)) {
        faults.add(
            new Place(number, column(cells, where.hardness())),
            "found "
                + Quoted.of(cells[where.hardness()].strip())
                + "; expected "
                + (Double.isNaN(vickers) ? where.scale().reach() : "a hardness from 20 to 250 HV"));
        return Optional.empty();
      }
      return Optional.of(
          new HardnessTraverse.Point(
              distance.getAsDouble() * where.metres(),
              vickers,
              deviation(hardness.getAsDouble(), spread, where)));
    }

    private static double vickers(double value, Columns where) {
      return where.scale().toInside().applyAsDouble(value);
    }

    /** A deviation in the scale of the file, as far as it reaches in HV. */
    private static double deviation(double hardness, OptionalDouble spread, Columns where) {
      if (spread.isEmpty()) {
        return HardnessTraverse.USUAL_DEVIATION;
      }
      double here = vickers(hardness, where);
      double above = vickers(hardness + spread.getAsDouble(), where) - here;
      double below = here - vickers(hardness - spread.getAsDouble(), where);
      return Double.isNaN(above)
          ? Double.isNaN(below) ? HardnessTraverse.USUAL_DEVIATION : below
          : above;
    }

    private OptionalDouble number(String[] cells, int column, int line, double low, double high) {
      String text = column < cells.length ? cells[column].strip() : "";
      try {
        double value = Double.parseDouble(text.replace('\u2212', '-'));
        if (value >= low && value <= high) {
          return OptionalDouble.of(value);
        }
      } catch (NumberFormatException notOne) {
        faults.add(
            new Place(line, column(cells, column)),
            "found " + Quoted.of(text) + "; expected a number");
        return OptionalDouble.empty();
      }
      faults.add(
          new Place(line, column(cells, column)),
          String.format(
              Locale.ROOT,
              "found %s; expected a number from %.4g to %.4g",
              Quoted.of(text),
              low,
              high));
      return OptionalDouble.empty();
    }

    private static int column(String[] cells, int index) {
      int column = 1;
      for (int i = 0; i < Math.min(index, cells.length); i++) {
        column += cells[i].length() + 1;
      }
      return column;
    }
  }
}
