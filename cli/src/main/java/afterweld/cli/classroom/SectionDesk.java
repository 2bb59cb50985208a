package afterweld.cli.classroom;

import afterweld.section.SectionRun;
import afterweld.section.WeldCase;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Iterator;

/** The last welds that were asked for, each with what it keeps. */
final class SectionDesk {
  private static final int MOST_KEPT = 12;

  private final Deque<SectionRun> runs = new ArrayDeque<>();

  /** The run that holds a case's weld: a known one if there is one. */
  synchronized SectionRun runOf(WeldCase weldCase) {
    SectionRun run = taken(weldCase);
    runs.addFirst(run);
    if (runs.size() > MOST_KEPT) {
      runs.removeLast();
    }
    return run;
  }

  private SectionRun taken(WeldCase weldCase) {
    for (Iterator<SectionRun> known = runs.iterator(); known.hasNext(); ) {
      SectionRun run = known.next();
      if (run.holds(weldCase)) {
        known.remove();
        return run;
      }
    }
    return SectionRun.of(weldCase);
  }
}
