package afterweld.casefile.text;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Where everything stands in a case file, so that a fault found long after reading (a bead width
 * that the heat cannot melt) still names its line and column.
 *
 * <p>A pointer is written as in RFC 6901: {@code /passes/0/bead_width} is the bead width of the
 * first pass. A value is found at its first character; a list or a group of keys at the key that
 * holds it.
 */
public final class Positions {
  private final String file;
  private final Map<String, Place> places;

  private Positions(String file, Map<String, Place> places) {
    this.file = file;
    this.places = places;
  }

  /** Places of everything under {@code root}. */
  public static Positions of(String file, Node root) {
    Map<String, Place> places = new HashMap<>();
    collect("", root, Place.START, places);
    return new Positions(file, places);
  }

  /** Positions of a file that could not be taken apart: everything is at its start. */
  public static Positions unknown(String file) {
    return new Positions(file, Map.of());
  }

  private static void collect(String pointer, Node node, Place holder, Map<String, Place> places) {
    if (node instanceof Node.Mapping mapping) {
      places.put(pointer, holder);
      mapping
          .entries()
          .forEach(
              (key, entry) -> collect(below(pointer, key), entry.value(), entry.key(), places));
    } else if (node instanceof Node.Sequence sequence) {
      places.put(pointer, holder);
      List<Node> items = sequence.items();
      for (int i = 0; i < items.size(); i++) {
        collect(pointer + "/" + i, items.get(i), items.get(i).place(), places);
      }
    } else {
      places.put(pointer, node.place());
    }
  }

  private static String below(String pointer, String key) {
    return pointer + "/" + key.replace("~", "~0").replace("/", "~1");
  }

  /**
   * Where a key's value stands; if the file does not name it (a default was used), the place of the
   * nearest key above it.
   *
   * @param pointer such as {@code /left/thickness}; the empty text is the whole file
   */
  public Place place(String pointer) {
    String rest = pointer;
    while (!places.containsKey(rest)) {
      int cut = rest.lastIndexOf('/');
      if (cut < 0) {
        return Place.START;
      }
      rest = rest.substring(0, cut);
    }
    return places.get(rest);
  }

  /** Whether the file names that key. */
  public boolean holds(String pointer) {
    return places.containsKey(pointer);
  }

  /**
   * A fault at that place.
   *
   * @param pointer such as {@code /passes/0/bead_width}
   * @param message what was found and what was expected
   */
  public Fault fault(String pointer, String message) {
    Place place = place(pointer);
    return new Fault(file, place.line(), place.column(), message);
  }
}
