package afterweld.cli.classroom;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.ScheduledExecutorService;
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

  private final long longestWork;
  private final Semaphore seats = new Semaphore(AT_ONCE, true);
  private final Map<String, AtomicLong> pages = new LinkedHashMap<>();
  private final Set<Work> going = ConcurrentHashMap.newKeySet();
  private final ScheduledExecutorService clock =
      Executors.newSingleThreadScheduledExecutor(Turns::watch);
  private volatile boolean closed;

  Turns() {
    this(LONGEST_WORK_NS);
  }

  /**
   * Turns of another length.
   *
   * @param longestWork after which work ends, ns
   */
  Turns(long longestWork) {
    this.longestWork = longestWork;
  }

  private static Thread watch(Runnable task) {
    Thread thread = new Thread(task, "classroom clock");
    thread.setDaemon(true);
    return thread;
  }

  /**
   * Work of one thread that ends early where nobody waits for it: it asks between stations, and is
   * interrupted for where it does not ask.
   */
  private final class Work {
    private final Thread worker = Thread.currentThread();
    private final long end = System.nanoTime() + longestWork;
    private final AtomicLong latest;
    private final long turn;
    private boolean done;

    Work(AtomicLong latest, long turn) {
      this.latest = latest;
      this.turn = turn;
    }

    boolean outdated() {
      return closed || latest.get() > turn || System.nanoTime() - end >= 0;
    }

    synchronized void endIfOutdated() {
      if (!done && outdated()) {
        worker.interrupt();
      }
    }

    /** The thread goes on to other work without the interrupt. */
    synchronized void finish() {
      done = true;
      Thread.interrupted();
    }
  }

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
    going.forEach(Work::endIfOutdated);
    sitDown();
    try {
      if (latest.get() > turn) {
        throw outdated();
      }
      return watched(new Work(latest, turn), work);
    } finally {
      seats.release();
    }
  }

  private <T> T watched(Work work, Function<BooleanSupplier, T> task) {
    Future<?> alarm = clock.schedule(work::endIfOutdated, longestWork, TimeUnit.NANOSECONDS);
    going.add(work);
    work.endIfOutdated();
    try {
      return task.apply(work::outdated);
    } finally {
      going.remove(work);
      work.finish();
      alarm.cancel(false);
    }
  }

  /** Whether nobody computes. */
  boolean idle() {
    return going.isEmpty();
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
    going.forEach(Work::endIfOutdated);
    clock.shutdownNow();
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
