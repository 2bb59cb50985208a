package afterweld.section.heat;

import afterweld.thermal.Pass;
import afterweld.thermal.WeldCourse;
import afterweld.thermal.shell.ShellWeld;
import afterweld.weld.Joint;
import afterweld.weld.Preparation;
import afterweld.weld.Side;
import afterweld.weld.WeldCase;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.function.Supplier;

/**
 * The transient fields that were solved last. A solution depends on the parts and the procedure
 * alone and takes most of the time of such a case, and the section, the fillers and the routes of
 * one case ask for the same one. Whoever asks while it is being solved waits for it, and solves it
 * where the first one failed or was interrupted, for nothing is kept of that. Safe for several
 * threads; what comes out does not depend on what is kept.
 */
public final class SolvedShells {
  private static final int MOST = 8;

  private final Kept<Key, CompletableFuture<ShellWeld>> kept = new Kept<>(MOST);

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

  /**
   * The solution for a case.
   *
   * @param solve how to find it
   * @throws CancellationException if this thread is interrupted
   */
  ShellWeld of(WeldCase weldCase, Supplier<ShellWeld> solve) {
    Key key = new Key(weldCase);
    while (true) {
      CompletableFuture<ShellWeld> own = new CompletableFuture<>();
      CompletableFuture<ShellWeld> known = kept.keep(key, own);
      if (known == own) {
        return solved(key, solve, own);
      }
      Optional<ShellWeld> found = awaited(known);
      if (found.isPresent()) {
        return found.get();
      }
    }
  }

  private ShellWeld solved(Key key, Supplier<ShellWeld> solve, CompletableFuture<ShellWeld> own) {
    try {
      ShellWeld weld = solve.get();
      own.complete(weld);
      return weld;
    } finally {
      if (!own.isDone()) {
        kept.forget(key, own);
        own.cancel(false);
      }
    }
  }

  /** Empty if whoever solved it failed or was interrupted. */
  private static Optional<ShellWeld> awaited(CompletableFuture<ShellWeld> known) {
    try {
      return Optional.of(known.get());
    } catch (CancellationException | ExecutionException others) {
      return Optional.empty();
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      throw new CancellationException("interrupted while another followed the heat");
    }
  }
}
