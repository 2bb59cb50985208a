package afterweld.casefile.text;

import java.util.Comparator;

/**
 * A place in a text file.
 *
 * @param line from 1
 * @param column from 1, in characters
 */
public record Place(int line, int column) implements Comparable<Place> {
  /** The first character of a file. */
  public static final Place START = new Place(1, 1);

  private static final Comparator<Place> IN_READING_ORDER =
      Comparator.comparingInt(Place::line).thenComparingInt(Place::column);

  @Override
  public int compareTo(Place other) {
    return IN_READING_ORDER.compare(this, other);
  }
}
