package afterweld.benchmark;

import afterweld.study.SyntheticTraverse;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Warmup;

/** Fits to 1500 made-up traverses: how long they take and how many intervals hold the truth. */
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.SECONDS)
@Fork(1)
@Warmup(iterations = 0)
@Measurement(iterations = 1)
public class FitBenchmark {
  private static final int TRAVERSES = 1500;
  private static final double FEWEST = 0.925;

  @Benchmark
  public int[] fits() {
    int[] covered = SyntheticTraverse.covered(TRAVERSES);
    for (int count : covered) {
      if (count < FEWEST * TRAVERSES) {
        throw new IllegalStateException(count + " of " + TRAVERSES + " intervals hold the truth");
      }
    }
    return covered;
  }
}
