package afterweld.cli.terminal;

import java.util.function.Supplier;

/** What is still done when the process is ended from outside, such as by Ctrl-C. */
public final class Interrupted {
  private Interrupted() {}

  /**
   * Does some work, and something else first if the process is ended before the work is done.
   *
   * @param atTheEnd what the process waits for before it ends
   */
  public static <T> T during(Supplier<T> work, Runnable atTheEnd) {
    Thread hook = new Thread(atTheEnd, "at the end");
    Runtime.getRuntime().addShutdownHook(hook);
    try {
      return work.get();
    } finally {
      forget(hook);
    }
  }

  /** The same for work without a result. */
  public static void during(Runnable work, Runnable atTheEnd) {
    during(
        () -> {
          work.run();
          return true;
        },
        atTheEnd);
  }

  private static boolean forget(Thread hook) {
    try {
      return Runtime.getRuntime().removeShutdownHook(hook);
    } catch (IllegalStateException ending) {
      return false;
    }
  }
}
