package afterweld.benchmark;

import afterweld.choice.answer.Requirement;
import afterweld.joint.JointSettings;
import afterweld.section.Cases;
import afterweld.weld.WeldCase;
import afterweld.section.WeldSession;
import afterweld.study.SpreadRunner;
import afterweld.study.SpreadSettings;
import afterweld.study.SpreadStudy;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * A study of spread by number of joints and of cores: the time must grow straight with the joints
 * and fall with the cores. Each joint goes through weld, solution treatment, quench and ageing.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.SECONDS)
@Fork(1)
@Warmup(iterations = 1)
@Measurement(iterations = 2)
public class SpreadBenchmark {
  private static final OptionalDouble USUAL = OptionalDouble.empty();

  @Param({"50", "100", "200"})
  public int runs;

  @Param({"1", "2"})
  public int cores;

  private final WeldCase weldCase =
      Cases.butt("6061", "T6").then(Cases.fullTreatment("6061")).weldCase();

  /** All joints of one study. */
  @Benchmark
  public SpreadStudy joints() {
    SpreadSettings settings =
        new SpreadSettings(
            OptionalInt.of(runs),
            OptionalLong.of(1),
            USUAL,
            USUAL,
            USUAL,
            USUAL,
            USUAL,
            USUAL,
            USUAL,
            USUAL,
            USUAL);
    ForkJoinPool pool = new ForkJoinPool(cores);
    try {
      return pool.submit(
              () ->
                  SpreadRunner.run(new WeldSession(), 
                      weldCase,
                      JointSettings.DEFAULT.gauge(),
                      Requirement.NONE,
                      settings,
                      () -> {}))
          .join();
    } finally {
      pool.shutdown();
    }
  }
}
