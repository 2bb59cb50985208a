package afterweld.section;

import afterweld.material.Alloy;
import afterweld.material.MaterialLibrary;
import afterweld.thermal.Pass;
import afterweld.thermal.WeldingProcess;
import afterweld.thermal.furnace.FurnaceStep;
import afterweld.thermal.furnace.QuenchMedium;
import afterweld.weld.FillerChoice;
import afterweld.weld.Side;
import afterweld.weld.WeldCase;
import java.util.List;
import java.util.OptionalDouble;

/** Cases to compute in tests, built up from one plain butt weld. */
public record Cases(
    Side left,
    Side right,
    FillerChoice filler,
    List<Pass> passes,
    double naturalAge,
    List<FurnaceStep> afterWeld) {
  public static final double DAY = 86400;
  private static final MaterialLibrary LIBRARY = MaterialLibrary.standard();

  /** 3 mm of one alloy on both sides, 4043 at 40 %, one tungsten-arc pass, 30 days. */
  public static Cases butt(String alloy, String temper) {
    Side side = side(alloy, temper, 0.003);
    return new Cases(
        side, side, filler("4043", 0.4), List.of(pass(110, 3e-3, 293.15)), 30 * DAY, List.of());
  }

  public static Side side(String name, String temper, double thickness) {
    return side(name, temper, thickness, OptionalDouble.empty());
  }

  /** The same of a part that ends near the weld. */
  public static Side narrow(String name, String temper, double thickness, double width) {
    return side(name, temper, thickness, OptionalDouble.of(width));
  }

  private static Side side(String name, String temper, double thickness, OptionalDouble width) {
    Alloy alloy = LIBRARY.base(name).orElseThrow();
    return new Side(
        alloy, alloy.temper(temper).orElseThrow(), thickness, width, alloy.composition());
  }

  public static FillerChoice filler(String name, double dilution) {
    return new FillerChoice(LIBRARY.filler(name), dilution, dilution, dilution, true, 0.5);
  }

  /** A pass of fixed efficiency 0.6, so that the bead follows the heat. */
  public static Pass pass(double current, double speed, double start) {
    return pass(current, speed, start, OptionalDouble.of(0.6), 0);
  }

  public static Pass pass(
      double current, double speed, double start, OptionalDouble efficiency, double offset) {
    return new Pass(
        WeldingProcess.GTAW_AC,
        current,
        14,
        speed,
        start,
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        efficiency,
        offset,
        OptionalDouble.empty());
  }

  /** The standard schedule of an alloy after a day. */
  public static List<FurnaceStep> fullTreatment(String alloy) {
    Alloy.StandardSchedule schedule = LIBRARY.base(alloy).orElseThrow().schedule().orElseThrow();
    return List.of(
        new FurnaceStep.SolutionTreat(
            schedule.solutionTemperature(), schedule.soak(), FurnaceStep.Furnace.AIR),
        new FurnaceStep.Quench(QuenchMedium.WATER, 298.15, 5),
        new FurnaceStep.NaturalAge(DAY),
        new FurnaceStep.Age(
            schedule.ageTemperature(), schedule.ageTime(), FurnaceStep.Ramp.BY_FURNACE, false));
  }

  public Cases withRight(Side other) {
    return new Cases(left, other, filler, passes, naturalAge, afterWeld);
  }

  public Cases withLeft(Side other) {
    return new Cases(other, right, filler, passes, naturalAge, afterWeld);
  }

  public Cases withFiller(FillerChoice other) {
    return new Cases(left, right, other, passes, naturalAge, afterWeld);
  }

  public Cases withPasses(Pass... others) {
    return new Cases(left, right, filler, List.of(others), naturalAge, afterWeld);
  }

  public Cases then(List<FurnaceStep> steps) {
    return new Cases(left, right, filler, passes, naturalAge, steps);
  }

  public WeldCase weldCase() {
    return WeldCase.of(left, right)
        .title("test")
        .filler(filler)
        .passes(passes)
        .ambient(293.15)
        .depth(Math.min(left.thickness() / 2, right.thickness()))
        .naturalAge(naturalAge)
        .afterWeld(afterWeld)
        .done();
  }

  public SectionProfile run() {
    return Welded.SESSION.profile(weldCase());
  }

  /** Computed with nothing kept from before. */
  SectionProfile runAnew() {
    return new WeldSession().profile(weldCase());
  }
}
