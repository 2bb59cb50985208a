package afterweld.validation;

import afterweld.joint.CrossWeldTension;
import afterweld.joint.ProfileSlices;
import afterweld.joint.SliceLine;
import afterweld.joint.TensionCoupon;
import afterweld.material.Alloy;
import afterweld.material.MaterialLibrary;
import afterweld.section.SectionProfile;
import afterweld.section.Station;
import afterweld.section.Welded;
import afterweld.section.Zone;
import afterweld.strength.Strength;
import afterweld.thermal.Pass;
import afterweld.thermal.WeldingProcess;
import afterweld.thermal.furnace.FurnaceStep;
import afterweld.thermal.furnace.QuenchMedium;
import afterweld.weld.FillerChoice;
import afterweld.weld.Side;
import afterweld.weld.WeldCase;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;

/**
 * The one procedure all published welds are compared on: 6 mm, square, full penetration, 20 °C
 * start, 30 days at room temperature; tungsten arc at 2.5 mm/s with a bead of 12 mm, or metal arc
 * at 8 mm/s with a bead of 10 mm.
 */
record TestWeld(SectionProfile profile) {
  private static final double THICKNESS = 0.006;
  private static final double START = 293.15;
  private static final double DAY = 86400;

  /** The two arcs. */
  enum Arc {
    TIG(WeldingProcess.GTAW_AC, 200, 17, 2.5e-3, 12e-3),
    MIG(WeldingProcess.GMAW, 200, 24, 8e-3, 10e-3);

    private final WeldingProcess process;
    private final double current;
    private final double voltage;
    private final double speed;
    private final double bead;

    Arc(WeldingProcess process, double current, double voltage, double speed, double bead) {
      this.process = process;
      this.current = current;
      this.voltage = voltage;
      this.speed = speed;
      this.bead = bead;
    }

    /** The pass; volts and amps drop out, since the bead width calibrates the heat. */
    Pass pass() {
      return new Pass(
          process,
          current,
          voltage,
          speed,
          START,
          OptionalDouble.of(bead),
          OptionalDouble.of(THICKNESS),
          OptionalDouble.empty(),
          0,
          OptionalDouble.empty());
    }
  }

  static TestWeld asWelded(String base, String temper, String filler, double dilution, Arc arc) {
    return of(base, temper, filler, dilution, arc.pass(), 30 * DAY, List.of());
  }

  /** With the standard solution treatment, quench and age of the base after a day. */
  static TestWeld treated(String base, String temper, String filler, double dilution, Arc arc) {
    Alloy.StandardSchedule schedule = Tempers.alloy(base).schedule().orElseThrow();
    List<FurnaceStep> steps =
        List.of(
            new FurnaceStep.SolutionTreat(
                schedule.solutionTemperature(), schedule.soak(), FurnaceStep.Furnace.AIR),
            new FurnaceStep.Quench(QuenchMedium.WATER, 298.15, 7),
            new FurnaceStep.NaturalAge(DAY),
            new FurnaceStep.Age(
                schedule.ageTemperature(), schedule.ageTime(), FurnaceStep.Ramp.BY_FURNACE, false));
    return of(base, temper, filler, dilution, arc.pass(), DAY, steps);
  }

  static TestWeld of(
      String base,
      String temper,
      String filler,
      double dilution,
      Pass pass,
      double naturalAge,
      List<FurnaceStep> steps) {
    Alloy alloy = Tempers.alloy(base);
    Side side =
        new Side(
            alloy,
            alloy.temper(temper).orElseThrow(),
            THICKNESS,
            OptionalDouble.empty(),
            alloy.composition());
    FillerChoice choice =
        new FillerChoice(
            MaterialLibrary.standard().filler(filler), dilution, dilution, dilution, true, 0.5);
    return new TestWeld(
        Welded.SESSION.profile(
            WeldCase.of(side, side)
                .title(base + "-" + temper + " with " + filler)
                .filler(choice)
                .passes(List.of(pass))
                .reinforcement(0)
                .ambient(START)
                .depth(THICKNESS / 2)
                .naturalAge(naturalAge)
                .afterWeld(steps)
                .done()));
  }

  private int last() {
    return profile.states().size() - 1;
  }

  /** Pulled across the weld, bead dressed flush, 50 mm gauge. */
  CrossWeldTension pulled() {
    SliceLine line =
        ProfileSlices.flush(profile, last(), ProfileSlices.End.MIDDLE, 0.05).orElseThrow();
    return CrossWeldTension.pull(line, TensionCoupon.DEFAULT);
  }

  /** Softest place outside the weld. */
  Strength softest() {
    return profile.stations().stream()
        .filter(station -> station.zone() != Zone.FUSION)
        .map(station -> station.estimates().get(last()).middle())
        .min(Comparator.comparingDouble(Strength::yield))
        .orElseThrow();
  }

  Strength base() {
    return profile.stations().get(0).estimates().get(0).middle();
  }

  Strength weldMetal() {
    return profile.stations().stream()
        .filter(station -> station.zone() == Zone.FUSION)
        .findFirst()
        .orElseThrow()
        .estimates()
        .get(last())
        .middle();
  }

  /** Outermost place that has lost a share of its yield, interpolated, mm from the weld centre. */
  double extent(double lossShare) {
    ToDoubleFunction<Station> ratio =
        station ->
            station.estimates().get(1).middle().yield()
                / station.estimates().get(0).middle().yield();
    double limit = 1 - lossShare;
    List<Station> stations = profile.stations();
    for (int i = stations.size() - 1; i > 0; i--) {
      double inner = ratio.applyAsDouble(stations.get(i - 1));
      double outer = ratio.applyAsDouble(stations.get(i));
      if (inner < limit && outer >= limit) {
        double part = (limit - inner) / (outer - inner);
        double from = stations.get(i - 1).distance();
        return 1e3 * (from + part * (stations.get(i).distance() - from));
      }
    }
    return 0;
  }

  boolean warnsOf(String code) {
    return profile.warnings().stream().anyMatch(warning -> warning.code().equals(code));
  }
}
