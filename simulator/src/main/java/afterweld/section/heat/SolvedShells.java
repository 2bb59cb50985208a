package afterweld.section.heat;

import afterweld.thermal.Pass;
import afterweld.thermal.WeldCourse;
import afterweld.thermal.shell.ShellWeld;
import afterweld.weld.Joint;
import afterweld.weld.Preparation;
import afterweld.weld.Side;
import afterweld.weld.WeldCase;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.function.Supplier;

/**
 * The transient fields that were solved last. A solution depends on the parts and the procedure
 * alone and takes most of the time of such a case, and the section, the fillers and the routes of
 * one case ask for the same one. Whoever asks while it is being solved waits for it, and solves it
 * where the first one was interrupted, for nothing is kept of that. Safe for several threads; what
 * comes out does not depend on what is kept.
 */
final class SolvedShells {
  private static final int MOST = 4;
  private static final Map<Key, CompletableFuture<ShellWeld>> KEPT = new LinkedHashMap<>();

  /** All that a solution depends on. */
  private record Key(
      Side left,
      Side right,
      Joint joint,
      Preparation preparation,
      WeldCourse course,
      List<Pass> passes,
      double ambient) {
    private Key(WeldCase weldCase) {
      this(
          weldCase.left(),
          weldCase.right(),
          weldCase.joint(),
          weldCase.preparation(),
          weldCase.course(),
          weldCase.passes(),
          weldCase.ambient());
    }
  }

  private SolvedShells() {}

  /**
   * The solution for a case.
   *
   * @param solve how to find it
   * @throws CancellationException if this thread is interrupted
   */
  static ShellWeld of(WeldCase weldCase, Supplier<ShellWeld> solve) {
    Key key = new Key(weldCase);
    while (true) {
      CompletableFuture<ShellWeld> own = new CompletableFuture<>();
      CompletableFuture<ShellWeld> kept = keep(key, own);
      if (kept == own) {
        return solved(key, solve, own);
      }
      Optional<ShellWeld> found = awaited(kept);
      if (found.isPresent()) {
        return found.get();
      }
    }
  }

  private static ShellWeld solved(
      Key key, Supplier<ShellWeld> solve, CompletableFuture<ShellWeld> own) {
    try {
      ShellWeld weld = solve.get();
      own.complete(weld);
      return weld;
    } catch (CancellationException ended) {
      forget(key, own);
      own.cancel(false);
      throw ended;
    } catch (RuntimeException | Error failure) {
      own.completeExceptionally(failure);
      throw failure;
    }
  }

  /** Empty if whoever solved it was interrupted. */
  private static Optional<ShellWeld> awaited(CompletableFuture<ShellWeld> kept) {
    try {
      return Optional.of(kept.get());
    } catch (CancellationException others) {
      return Optional.empty();
    } catch (ExecutionException failure) {
      throw failure.getCause() instanceof RuntimeException cause
          ? cause
          : new IllegalStateException(failure);
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      throw new CancellationException("interrupted while another followed the heat");
    }
  }

  private static void forget(Key key, CompletableFuture<ShellWeld> own) {
    synchronized (KEPT) {
      KEPT.remove(key, own);
    }
  }

  private static CompletableFuture<ShellWeld> keep(Key key, CompletableFuture<ShellWeld> own) {
    synchronized (KEPT) {
      CompletableFuture<ShellWeld> known = KEPT.putIfAbsent(key, own);
      if (KEPT.size() > MOST) {
        KEPT.remove(KEPT.keySet().iterator().next());
      }
      return known == null ? own : known;
    }
  }
}
