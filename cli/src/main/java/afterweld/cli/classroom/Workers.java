package afterweld.cli.classroom;

import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.Executor;
import java.util.concurrent.ThreadFactory;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;

/**
 * The threads that answer. There are more than ever compute at once, since those that wait for a
 * seat hold one as well. Whoever comes when all are taken and the queue is full meets a doorkeeper,
 * who only says so: without that, the connection would close without a word.
 */
final class Workers implements Executor {
  static final int THREADS = 32;
  static final int WAITING = 64;
  private static final int DOORKEEPERS = 4;
  private static final int TURNED_AWAY = 256;
  private static final long SPARE_S = 30;

  private final ThreadPoolExecutor doorkeepers = pool(DOORKEEPERS, TURNED_AWAY, Doorkeeper::new);
  private final ThreadPoolExecutor usual = pool(THREADS, WAITING, task -> new Thread(task));

  Workers() {
    usual.setRejectedExecutionHandler((task, unused) -> doorkeepers.execute(task));
  }

  private static final class Doorkeeper extends Thread {
    Doorkeeper(Runnable task) {
      super(task);
    }
  }

  private static ThreadPoolExecutor pool(int threads, int waiting, ThreadFactory threadOf) {
    ThreadPoolExecutor pool =
        new ThreadPoolExecutor(
            threads,
            threads,
            SPARE_S,
            TimeUnit.SECONDS,
            new ArrayBlockingQueue<>(waiting),
            task -> {
              Thread thread = threadOf.newThread(task);
              thread.setName("classroom");
              thread.setDaemon(true);
              return thread;
            });
    pool.allowCoreThreadTimeOut(true);
    return pool;
  }

  @Override
  public void execute(Runnable task) {
    usual.execute(task);
  }

  /**
   * Checks that the present thread has time for a request.
   *
   * @throws Refusal if it only turns away
   */
  static void checkTime() {
    if (Thread.currentThread() instanceof Doorkeeper) {
      throw Refusal.busy();
    }
  }

  /** Ends all of them. */
  void stop() {
    usual.shutdownNow();
    doorkeepers.shutdownNow();
  }
}
