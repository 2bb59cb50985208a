package afterweld.cli.classroom;

import afterweld.section.SectionRun;
import afterweld.weld.WeldCase;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;

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

  /** A run near which a case's preview may be had: one that is ready for it, if there is one. */
  synchronized Optional<SectionRun> near(WeldCase weldCase) {
    List<SectionRun> near = runs.stream().filter(run -> run.isNear(weldCase)).toList();
    return near.stream()
        .filter(SectionRun::isReadyNear)
        .findFirst()
        .or(() -> near.stream().findFirst());
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
