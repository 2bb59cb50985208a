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
import java.util.function.Supplier;

/**
 * Who may compute, and for how long. A page counts its changes; work for an earlier change of the
 * same page ends as soon as a later one arrives. Few computations run at once, and none for ever.
 * One seat is kept for work that is known to be short, so that long work makes only long work wait.
 */
final class Turns {
  private static final int AT_ONCE = 3;
  private static final int LONG_AT_ONCE = AT_ONCE - 1;
  private static final int MOST_WAITING = 12;
  private static final int MOST_PAGES = 100;

  /** Longer than any usual work takes: who waits gets its turn. */
  private static final long LONGEST_NS = TimeUnit.SECONDS.toNanos(20);

  private final long longestWork;
  private final long longestWait;
  private final Semaphore seats = new Semaphore(AT_ONCE, true);
  private final Semaphore longSeats = new Semaphore(LONG_AT_ONCE, true);
  private final Map<String, AtomicLong> pages = new LinkedHashMap<>();
  private final Set<Work> going = ConcurrentHashMap.newKeySet();
  private final ScheduledExecutorService clock =
      Executors.newSingleThreadScheduledExecutor(Turns::watch);
  private volatile boolean closed;

  Turns() {
    this(LONGEST_NS, LONGEST_NS);
  }

  /**
   * Turns of another length.
   *
   * @param longestWork after which work ends, ns
   * @param longestWait for a seat, ns
   */
  Turns(long longestWork, long longestWait) {
    this.longestWork = longestWork;
    this.longestWait = longestWait;
  }

  private static Thread watch(Runnable task) {
    Thread thread = new Thread(task, "classroom clock");
    thread.setDaemon(true);
    return thread;
  }

  /**
   * Work of one thread that ends early where nobody waits for it: it asks between stations, and is
   * interrupted for where it does not ask or still waits for a seat.
   */
  private final class Work {
    private final Thread worker = Thread.currentThread();
    private final AtomicLong latest;
    private final long turn;
    private volatile boolean seated;
    private volatile long end;
    private boolean done;

    Work(AtomicLong latest, long turn) {
      this.latest = latest;
      this.turn = turn;
    }

    void begin() {
      end = System.nanoTime() + longestWork;
      seated = true;
    }

    boolean outdated() {
      return closed || isLate() || (seated && System.nanoTime() - end >= 0);
    }

    boolean isLate() {
      return latest.get() > turn;
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
   * @param isLong whether the work may take seconds
   * @param task given a question that turns true when nobody waits for it any more
   * @throws Refusal if a later change is known or there is no seat
   */
  <T> T take(String page, long turn, boolean isLong, Function<BooleanSupplier, T> task) {
    AtomicLong latest = latest(page);
    if (latest.accumulateAndGet(turn, Math::max) > turn) {
      throw outdated();
    }
    Work work = new Work(latest, turn);
    going.add(work);
    going.forEach(Work::endIfOutdated);
    try {
      return isLong ? seated(longSeats, work, () -> seated(work, task)) : seated(work, task);
    } finally {
      going.remove(work);
      work.finish();
    }
  }

  private <T> T seated(Work work, Function<BooleanSupplier, T> task) {
    return seated(seats, work, () -> timed(work, task));
  }

  private <T> T seated(Semaphore some, Work work, Supplier<T> task) {
    sitDown(some, work);
    try {
      return task.get();
    } finally {
      some.release();
    }
  }

  private <T> T timed(Work work, Function<BooleanSupplier, T> task) {
    work.begin();
    Future<?> alarm = clock.schedule(work::endIfOutdated, longestWork, TimeUnit.NANOSECONDS);
    try {
      return task.apply(work::outdated);
    } finally {
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

  private void sitDown(Semaphore some, Work work) {
    try {
      if (some.getQueueLength() < MOST_WAITING
          && some.tryAcquire(longestWait, TimeUnit.NANOSECONDS)) {
        return;
      }
    } catch (InterruptedException ended) {
      if (work.isLate()) {
        throw outdated();
      }
    }
    throw Refusal.busy();
  }
}
