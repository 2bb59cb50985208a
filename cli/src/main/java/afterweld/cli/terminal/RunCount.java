package afterweld.cli.terminal;

import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Supplier;

/** What a progress line says of many runs: how many are done and how long the rest will take. */
public final class RunCount implements Runnable, Supplier<String> {
  private final String what;
  private final AtomicInteger done = new AtomicInteger();
  private volatile int all;
  private volatile long start;

  /**
   * A count that has not begun.
   *
   * @param what is counted, such as {@code joint}
   */
  public RunCount(String what) {
    this.what = what;
  }

  /** Begins to count. */
  public void begin(int runs) {
    all = runs;
    start = System.nanoTime();
  }

  /** One more is done. */
  @Override
  public void run() {
    done.incrementAndGet();
  }

  @Override
  public String get() {
    int count = done.get();
    String text = "simulating " + what + " " + count + " of " + all;
    if (count == 0) {
      return text;
    }
    double each = (System.nanoTime() - start) * 1e-9 / count;
    return text + " (about " + Math.round(each * (all - count)) + " s left)";
  }
}
