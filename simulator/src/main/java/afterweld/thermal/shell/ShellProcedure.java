package afterweld.thermal.shell;

import afterweld.thermal.HeatInput;
import afterweld.thermal.HeatInputException;
import afterweld.thermal.HeatPotential;
import afterweld.thermal.Leg;
import afterweld.thermal.Pass;
import afterweld.thermal.PassHeat;
import afterweld.thermal.PeakMap;
import afterweld.thermal.SourceDepth;
import afterweld.thermal.SurfaceLoss;
import afterweld.thermal.WeldCourse;
import afterweld.thermal.WeldLegs;
import afterweld.thermal.WeldTimeline;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The passes of a weld in a transient field, one after the other on what the one before left warm.
 * A pass with a bead width gets the power that melts to that width where the width is taken: half
 * way round a ring, in the section of a straight joint. Mutable and for one thread.
 *
 * <p>The power is found by secants on the heat potential that is missing at the fusion line of the
 * arc side, by thickness over the legs.
 */
final class ShellProcedure {
  private static final int MOST_TRIALS = 12;

  /** So near the last secant is good to a thousandth of the rise. */
  private static final double CLOSE = 0.03;

  private static final double AFTER_ARC = 5e-3;
  private static final double WIDTHS_AFTER_ARC = 1.5;
  private static final double COOLER = 0.7;
  private static final double SETTLING = 30;

  /** Width that is advised where nothing melts, m: over the narrowest by what trials may miss. */
  private static final double SURELY_A_BEAD = 2.4e-3;

  /** Half-width of a bead that is looked for at all, m. */
  private static final double NARROWEST = 1e-4;

  /** Records of the run, in this order. */
  private static final int SECTION = 0;

  private static final int WIDTHS = 1;
  private static final int START = 2;
  private static final int END = 3;

  private final WeldLegs legs;
  private final SurfaceLoss loss;
  private final WeldCourse course;
  private final ShellGrid grid;
  private final ShellRun run;
  private final double section;
  private final List<PassHeat> heats = new ArrayList<>();
  private ShellRun.Mark beforeLast;

  /**
   * A procedure before its first pass.
   *
   * @param course with its length
   * @param section where the section is taken, m from the end of the parts
   * @param widthPlace where bead widths are taken, m from the end of the parts
   * @param coarseness of the net
   */
  ShellProcedure(
      WeldLegs legs,
      SurfaceLoss loss,
      WeldCourse course,
      List<Pass> passes,
      double section,
      double widthPlace,
      double coarseness) {
    this.legs = legs;
    this.loss = loss;
    this.course = course;
    this.section = section;
    boolean centred = passes.stream().allMatch(pass -> pass.offset() == 0);
    this.grid = new ShellGrid(legs, course.ring(), course.whole(), coarseness, centred);
    double start = passes.get(0).startTemperature();
    List<Double> places =
        List.of(
            section,
            widthPlace,
            course.along(WeldCourse.Place.START),
            course.along(WeldCourse.Place.END));
    this.run = new ShellRun(grid, course, loss, start, places);
  }

  /** Prepares the metal for the next pass. */
  void waitFor(Pass next) {
    if (heats.isEmpty()) {
      return;
    }
    if (next.pause().isPresent()) {
      run.cool(0, next.pause().getAsDouble());
      return;
    }
    double wanted = next.startTemperature();
    run.cool(wanted + WeldTimeline.NEAR, WeldTimeline.LONGEST_WAIT);
    if (Math.abs(run.field().hottest() - wanted) > 1.01 * WeldTimeline.NEAR) {
      run.bringTo(wanted, WeldTimeline.TO_INTERPASS);
    }
  }

  /** Welds a pass with a known power. */
  void weld(PassHeat heat) {
    beforeLast = run.mark();
    run.weld(heat.pass(), heat.netPower());
    heats.add(heat);
  }

  /** Lets the finished weld cool until no place near it gets any hotter. */
  void settle() {
    run.cool(WeldTimeline.cooled(loss), SETTLING);
  }

  /** Lets the finished weld cool. */
  void finish() {
    run.cool(WeldTimeline.cooled(loss), WeldTimeline.LONGEST_COOLING);
  }

  /**
   * The power that melts to the pass's width, W.
   *
   * @param guess from which to search, W
   */
  double power(Pass pass, double guess) {
    double target = missingBefore(pass);
    double power = guess;
    double before = 0;
    double missingBefore = target;
    for (int trial = 0; trial < MOST_TRIALS; trial++) {
      double missing = tried(pass, power);
      double next = power + missing * (power - before) / (missingBefore - missing);
      if (Math.abs(missing) < CLOSE * target) {
        return next;
      }
      if (Double.isInfinite(missing)) {
        power *= COOLER;
      } else {
        before = power;
        missingBefore = missing;
        power = Math.min(1.6 * power, Math.max(0.4 * power, next));
      }
    }
    throw HeatInputException.outside(
        "bead_width", pass.beadWidth().orElse(0) * 1e3, "mm", "a width that one power melts");
  }

  /** Heat potential missing at the fusion line with a power; minus infinity if it burns through. */
  private double tried(Pass pass, double power) {
    double width = pass.beadWidth().orElseThrow();
    ShellRun.Mark mark = run.mark();
    try {
      double until = run.record(WIDTHS).along() + WIDTHS_AFTER_ARC * width + AFTER_ARC;
      run.weld(pass, power, Math.min(course.stop(), until));
      return missing(pass, run.record(WIDTHS));
    } catch (HeatInputException tooHot) {
      return Double.NEGATIVE_INFINITY;
    } finally {
      run.backTo(mark);
    }
  }

  private double missing(Pass pass, ShellRecord record) {
    double halfWidth = pass.beadWidth().orElseThrow() / 2;
    return missing(pass, surfaces(pass, record, halfWidth), heats.size(), halfWidth);
  }

  /**
   * Heat potential missing to the fusion temperature, by thickness over the legs.
   *
   * @param surfaces arc side of each leg
   * @param which number of the pass
   * @param halfWidth distance from the bead's centre, m
   */
  private double missing(Pass pass, List<ShellSection> surfaces, int which, double halfWidth) {
    double sum = 0;
    for (int i = 0; i < surfaces.size(); i++) {
      Leg leg = legs.legs().get(i);
      double place = Math.max(0, halfWidth + towards(leg, pass));
      sum += missing(leg, surfaces.get(i).peak(which, place));
    }
    return sum;
  }

  private static double missing(Leg leg, double reached) {
    HeatPotential potential = leg.material().potential();
    double rise = potential.at(leg.material().fusionTemperature()) - potential.at(reached);
    return leg.thickness() * rise;
  }

  /** What is missing before the pass. */
  private double missingBefore(Pass pass) {
    return legs.legs().stream().mapToDouble(leg -> missing(leg, pass.startTemperature())).sum();
  }

  private static double towards(Leg leg, Pass pass) {
    return leg.left() ? -pass.offset() : pass.offset();
  }

  private List<ShellSection> surfaces(Pass pass, ShellRecord record, double halfWidth) {
    return IntStream.range(0, legs.legs().size())
        .mapToObj(leg -> surface(record, leg, pass, halfWidth))
        .toList();
  }

  /** The arc side of a leg without what unequal legs change, as the power is found. */
  private ShellSection surface(ShellRecord record, int index, Pass pass, double halfWidth) {
    WeldLegs plain = legs.withUnequalWeight(0);
    double sourceDepth = SourceDepth.of(pass, legs.legs().get(index).thickness(), halfWidth);
    List<ShellLocalRise> local =
        IntStream.range(0, record.arcs().size())
            .mapToObj(i -> local(plain, index, sourceDepth, 0, record, i, pass.offset()))
            .toList();
    return section(record, index, local);
  }

  private ShellLocalRise local(
      WeldLegs seen,
      int index,
      double sourceDepth,
      double depth,
      ShellRecord record,
      int pass,
      double offset) {
    double nearest = ShellSource.spread(grid);
    return new ShellLocalRise(
        seen, index, sourceDepth, depth, course, record, pass, offset, nearest);
  }

  private ShellSection section(ShellRecord record, int index, List<ShellLocalRise> local) {
    int chain = grid.chainOf(index);
    return new ShellSection(
        record,
        legs.legs().get(index).material(),
        run.lines().ofChain(chain),
        grid.chains().get(chain).distance(),
        local);
  }

  /**
   * Distance of the fusion line from the bead's centre on the arc side, where widths are taken, m,
   * as the power is found: no heat potential missing there, by thickness over the legs, the bead
   * deciding how deep its heat enters; 0 if it does not melt there.
   *
   * @param pass number of it; {@code WORST} stands for the section
   */
  double fusionHalfWidth(int pass, WeldCourse.Place place) {
    return fusionHalfWidth(heats.get(pass).pass(), pass, record(place));
  }

  /**
   * The heat of the pass that was welded last with the bead that it melts where widths are taken.
   *
   * @throws HeatInputException if that is no bead, with the current at which one begins
   */
  PassHeat melted() {
    int last = heats.size() - 1;
    double halfWidth = fusionHalfWidth(last, WeldCourse.Place.MIDDLE);
    if (halfWidth < HeatInput.NARROWEST_FUSION) {
      throw noBead(heats.remove(last));
    }
    heats.set(last, heats.get(last).melting(halfWidth));
    return heats.get(last);
  }

  private HeatInputException noBead(PassHeat cold) {
    run.backTo(beforeLast);
    Pass barely = cold.pass().ofWidth(SURELY_A_BEAD);
    double times = power(barely, cold.netPower()) / cold.netPower();
    return new HeatInputException(
        "current",
        HeatInput.NO_BEAD + "; one begins " + HeatInput.fromCurrent(times * cold.pass().current()));
  }

  private ShellRecord record(WeldCourse.Place place) {
    return switch (place) {
      case WORST -> run.record(SECTION);
      case START -> run.record(START);
      case MIDDLE -> run.record(WIDTHS);
      case END -> run.record(END);
    };
  }

  private double fusionHalfWidth(Pass pass, int which, ShellRecord record) {
    ShellSection widest =
        surfaces(pass, record, NARROWEST).stream()
            .max(Comparator.comparingDouble(ShellSection::end))
            .orElseThrow();
    return widest.outermost(
        y -> -missing(pass, surfaces(pass, record, Math.max(y, NARROWEST)), which, y), 0);
  }

  /** Time line of the stations of a leg at a place; {@code WORST} stands for the section. */
  ShellTimeline timeline(WeldCourse.Place place, int index, double depth) {
    Leg leg = legs.legs().get(index);
    return new ShellTimeline(leg(record(place), index, heats, depth), leg, heats.get(0).pass());
  }

  /**
   * A leg in the section.
   *
   * @param passHeats of the passes recorded
   * @param depth below the arc side, m
   */
  ShellSection leg(int index, List<PassHeat> passHeats, double depth) {
    return leg(run.record(SECTION), index, passHeats, depth);
  }

  private ShellSection leg(ShellRecord record, int index, List<PassHeat> passHeats, double depth) {
    Leg leg = legs.legs().get(index);
    List<ShellLocalRise> local = new ArrayList<>();
    for (int i = 0; i < passHeats.size(); i++) {
      PassHeat heat = passHeats.get(i);
      double sourceDepth = SourceDepth.of(heat.pass(), leg.thickness(), heat.fusionHalfWidth());
      double offset = heat.pass().offset();
      local.add(local(legs, index, sourceDepth, depth, record, i, offset));
    }
    return section(record, index, local);
  }

  ShellRun run() {
    return run;
  }

  PeakMap peaks() {
    return ShellPeaks.of(grid, run, course, legs.legs().size(), section);
  }
}
