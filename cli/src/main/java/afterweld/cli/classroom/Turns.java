package afterweld.cli.classroom;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.BooleanSupplier;
import java.util.function.Function;

/**
 * Who may compute, and for how long. A page counts its changes; work for an earlier change of the
 * same page ends as soon as a later one arrives. Few computations run at once, and none for ever.
 */
final class Turns {
  private static final int AT_ONCE = 3;
  private static final int MOST_PAGES = 100;
  private static final long LONGEST_WAIT_MS = 4_000;
  private static final long LONGEST_WORK_NS = TimeUnit.SECONDS.toNanos(20);

  private final Semaphore seats = new Semaphore(AT_ONCE, true);
  private final Map<String, AtomicLong> pages = new LinkedHashMap<>();
  private volatile boolean closed;

  /**
   * Does work for a page's change.
   *
   * @param page which page asks
   * @param turn number of its change
   * @param work given a question that turns true when nobody waits for it any more
   * @throws Refusal if a later change is known or there is no seat
   */
  <T> T take(String page, long turn, Function<BooleanSupplier, T> work) {
    AtomicLong latest = latest(page);
    if (latest.accumulateAndGet(turn, Math::max) > turn) {
      throw outdated();
    }
    sitDown();
    try {
      long end = System.nanoTime() + LONGEST_WORK_NS;
      return work.apply(() -> closed || latest.get() > turn || System.nanoTime() > end);
    } finally {
      seats.release();
    }
  }

  /** Why work ended early. */
  Refusal ended(String page, long turn) {
    return latest(page).get() > turn
        ? outdated()
        : new Refusal(
            Refusal.BUSY, "This case takes longer than 20 s: use 'afterweld profile' for it.");
  }

  private static Refusal outdated() {
    return new Refusal(Refusal.OUTDATED, "A later change took its place.");
  }

  /** Ends all work. */
  void close() {
    closed = true;
  }

  private AtomicLong latest(String page) {
    synchronized (pages) {
      AtomicLong known = pages.remove(page);
      AtomicLong latest = known == null ? new AtomicLong(Long.MIN_VALUE) : known;
      pages.put(page, latest);
      if (pages.size() > MOST_PAGES) {
        pages.remove(pages.keySet().iterator().next());
      }
      return latest;
    }
  }

  private void sitDown() {
    try {
      if (seats.tryAcquire(LONGEST_WAIT_MS, TimeUnit.MILLISECONDS)) {
        return;
      }
    } catch (InterruptedException stopping) {
      Thread.currentThread().interrupt();
    }
    throw new Refusal(Refusal.BUSY, "Too much is being computed at once; try again.");
  }
}
