package afterweld.casefile.text;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Gathers the faults of one file, so that the user sees all of them in one run. */
public final class FaultCollector {
  /** A file with more faults than this is not a case file; the rest is only counted. */
  private static final int MOST_SHOWN = 200;

  private final String file;
  private final List<Fault> faults = new ArrayList<>();
  private int count;

  /** Of one file, by the name that faults begin with. */
  public FaultCollector(String file) {
    this.file = file;
  }

  /** One more fault, in a sentence without its place. */
  public void add(Place place, String message) {
    count++;
    if (count <= MOST_SHOWN) {
      faults.add(new Fault(file, place.line(), place.column(), message));
    }
  }

  /** How many were found so far. */
  public int count() {
    return count;
  }

  /** Whether more faults would only be counted. */
  public boolean full() {
    return count > MOST_SHOWN;
  }

  /** In the order of the file; the last one says so if more were found than are shown. */
  public List<Fault> inOrder() {
    List<Fault> sorted = new ArrayList<>(faults);
    sorted.sort(Comparator.comparingInt(Fault::line).thenComparingInt(Fault::column));
    if (full()) {
      Fault last = sorted.get(sorted.size() - 1);
      String text = "more than " + MOST_SHOWN + " faults; the others are not shown";
      sorted.add(new Fault(file, last.line(), last.column(), text));
    }
    return List.copyOf(sorted);
  }
}
