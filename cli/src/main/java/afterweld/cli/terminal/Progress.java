package afterweld.cli.terminal;

import java.io.PrintWriter;
import java.time.Duration;
import java.util.Timer;
import java.util.TimerTask;
import java.util.function.Supplier;

/**
 * Tells a waiting person on standard error what is being done, once it takes over a second. Says
 * nothing to a file or a pipe. When the work is done its line is wiped.
 */
public final class Progress {
  private static final Duration PATIENCE = Duration.ofSeconds(1);

  private final PrintWriter err;
  private final Supplier<String> what;
  private final long start = System.nanoTime();
  private final Timer clock = new Timer("progress", true);
  private int shown;
  private boolean closed;

  private Progress(PrintWriter err, Supplier<String> what, Duration patience) {
    this.err = err;
    this.what = what;
    long millis = patience.toMillis();
    clock.scheduleAtFixedRate(
        new TimerTask() {
          @Override
          public void run() {
            show();
          }
        },
        millis,
        millis);
  }

  /**
   * Does some work and watches the clock meanwhile.
   *
   * @param what such as {@code computing the section}
   * @param quiet whether to say nothing at all
   */
  static <T> T during(Streams streams, String what, boolean quiet, Supplier<T> work) {
    return during(streams, () -> what, quiet, PATIENCE, work);
  }

  /** The same with words that may change while the work goes on. */
  public static <T> T during(
      Streams streams, Supplier<String> what, boolean quiet, Supplier<T> work) {
    return during(streams, what, quiet, PATIENCE, work);
  }

  static <T> T during(
      Streams streams, Supplier<String> what, boolean quiet, Duration patience, Supplier<T> work) {
    if (quiet || !streams.errIsTerminal()) {
      return work.get();
    }
    Progress progress = new Progress(streams.err(), what, patience);
    try {
      return work.get();
    } finally {
      progress.close();
    }
  }

  private synchronized void show() {
    if (closed) {
      return;
    }
    long seconds = Duration.ofNanos(System.nanoTime() - start).toSeconds();
    String text = what.get() + ", " + seconds + " s";
    String over = " ".repeat(Math.max(0, shown - text.length()));
    shown = Math.max(shown, text.length());
    err.print("\r" + text + over);
    err.flush();
  }

  private synchronized void close() {
    closed = true;
    clock.cancel();
    if (shown > 0) {
      err.print("\r" + " ".repeat(shown) + "\r");
      err.flush();
    }
  }
}
