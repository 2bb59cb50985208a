package afterweld.section;

import afterweld.thermal.Pass;
import afterweld.thermal.ShellWeld;
import afterweld.thermal.WeldCourse;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.function.Supplier;

/**
 * The transient fields that were solved last. A solution depends on the parts and the procedure
 * alone and takes most of the time of such a case, and the section, the fillers and the routes of
 * one case ask for the same one. Whoever asks while it is being solved waits for it. Safe for
 * several threads; what comes out does not depend on what is kept.
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
   */
  static ShellWeld of(WeldCase weldCase, Supplier<ShellWeld> solve) {
    CompletableFuture<ShellWeld> own = new CompletableFuture<>();
    CompletableFuture<ShellWeld> kept = keep(new Key(weldCase), own);
    if (kept == own) {
      solve(solve, own);
    }
    try {
      return kept.join();
    } catch (CompletionException failure) {
      throw failure.getCause() instanceof RuntimeException cause ? cause : failure;
    }
  }

  private static void solve(Supplier<ShellWeld> solve, CompletableFuture<ShellWeld> own) {
    try {
      own.complete(solve.get());
    } catch (RuntimeException | Error failure) {
      own.completeExceptionally(failure);
      throw failure;
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
