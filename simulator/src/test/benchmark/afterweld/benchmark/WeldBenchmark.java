package afterweld.benchmark;

import afterweld.material.Alloy;
import afterweld.material.MaterialLibrary;
import afterweld.metallurgy.PrecipitateState;
import afterweld.metallurgy.PrecipitationModel;
import afterweld.weld.FillerChoice;
import afterweld.weld.Joint;
import afterweld.weld.Preparation;
import afterweld.section.SectionProfile;
import afterweld.weld.Side;
import afterweld.weld.WeldCase;
import afterweld.section.WeldSession;
import afterweld.thermal.ConductionMaterial;
import afterweld.thermal.furnace.FurnaceStep;
import afterweld.thermal.HeatInput;
import afterweld.thermal.Leg;
import afterweld.thermal.Pass;
import afterweld.thermal.furnace.QuenchMedium;
import afterweld.thermal.shell.ShellSolver;
import afterweld.thermal.shell.ShellWeld;
import afterweld.thermal.StationHistory;
import afterweld.thermal.SurfaceLoss;
import afterweld.thermal.TemperatureHistory;
import afterweld.thermal.WeldCourse;
import afterweld.thermal.WeldLegs;
import afterweld.thermal.WeldTimeline;
import afterweld.thermal.WeldingProcess;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** What the parts of the main job cost: compare them with each other on one machine. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 3, time = 2)
public class WeldBenchmark {
  private static final double ROOM = 298.15;
  private static final double THICKNESS = 0.006;
  private final Alloy alloy = MaterialLibrary.standard().base("6061").orElseThrow();
  private final Alloy filler = MaterialLibrary.standard().filler("4643").orElseThrow();
  private final SurfaceLoss loss = SurfaceLoss.stillAir(293.15);
  private final WeldLegs legs = WeldLegs.plate(THICKNESS, ConductionMaterial.of(alloy, "T6"));
  private final Pass pass =
      new Pass(
          WeldingProcess.GTAW_AC,
          180,
          15,
          2.117e-3,
          322,
          OptionalDouble.of(0.011),
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          0,
          OptionalDouble.empty());
  private final PrecipitationModel metal = PrecipitationModel.wrought(alloy.composition());
  private final TemperatureHistory whole =
      TemperatureHistory.of(alloy.temper("T6").orElseThrow().recipe().orElseThrow())
          .then(station(0.015).history())
          .thenTo(ROOM, 30 * 86400)
          .thenTo(448.15, 300)
          .thenTo(448.15, 8 * 3600)
          .thenTo(ROOM, 75);
  private final WeldCase forkArm = forkArm();
  private final ForkJoinPool oneThread = new ForkJoinPool(1);

  private WeldTimeline timeline() {
    return WeldTimeline.of(
        legs, 0, HeatInput.into(legs, loss).of(List.of(pass)), loss, THICKNESS / 2);
  }

  private StationHistory station(double distance) {
    return timeline().at(-distance);
  }

  private WeldCase forkArm() {
    Side side =
        new Side(
            alloy,
            alloy.temper("T6").orElseThrow(),
            THICKNESS,
            OptionalDouble.empty(),
            alloy.composition());
    List<FurnaceStep> steps =
        List.of(
            new FurnaceStep.SolutionTreat(802.6, 3600, FurnaceStep.Furnace.AIR),
            new FurnaceStep.Quench(QuenchMedium.WATER, ROOM, 8),
            new FurnaceStep.NaturalAge(7200),
            new FurnaceStep.Age(449.8, 8 * 3600, FurnaceStep.Ramp.BY_FURNACE, false));
    return WeldCase.of(side, side).title("Fork arm").joint(Joint.BUTT, Preparation.SINGLE_V).filler(new FillerChoice(Optional.of(filler), 0.3, 0.3, 0.3, true, 0.5)).passes(List.of(pass)).ambient(293.15).depth(THICKNESS / 2).naturalAge(86400).afterWeld(steps).done();
  }

  /** T6 start, weld, 30 days, age: one station of one weld. */
  @Benchmark
  public PrecipitateState onePrecipitationHistory() {
    return metal.follow(whole);
  }

  /** Calibration on the bead and the cycles of 60 stations. */
  @Benchmark
  public List<StationHistory> oneThermalField() {
    WeldTimeline timeline = timeline();
    return IntStream.range(0, 60).mapToObj(i -> timeline.at(-0.001 * (i + 1))).toList();
  }

  /** Once round a tube of 80 mm and 4 mm wall on another, one core, power from the bead's width. */
  @Benchmark
  public ShellWeld oneRing() {
    ConductionMaterial base = ConductionMaterial.of(alloy, "T6");
    WeldLegs tubes =
        new WeldLegs(
            List.of(
                new Leg(true, 0.004, OptionalDouble.of(0.1), base),
                new Leg(false, 0.004, OptionalDouble.of(0.2), base)),
            0);
    WeldCourse lap = WeldCourse.ring(Math.PI * 0.08, WeldCourse.Place.END);
    Pass onTube =
        new Pass(
            WeldingProcess.GTAW_AC,
            130,
            15,
            2.5e-3,
            293.15,
            OptionalDouble.of(0.007),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            0,
            OptionalDouble.empty());
    return ShellSolver.of(tubes, loss, lap).weld(List.of(onTube));
  }

  /** The main example, all cores. */
  @Benchmark
  public SectionProfile oneSection() {
    return new WeldSession().profile(forkArm);
  }

  /** The main example on one thread. */
  @Benchmark
  public SectionProfile oneSectionOnOneThread() {
    return oneThread.submit(() -> new WeldSession().profile(forkArm)).join();
  }
}
