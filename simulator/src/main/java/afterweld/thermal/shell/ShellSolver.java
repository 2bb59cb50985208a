package afterweld.thermal.shell;

import afterweld.thermal.HeatInput;
import afterweld.thermal.HeatInputException;
import afterweld.thermal.Leg;
import afterweld.thermal.Pass;
import afterweld.thermal.PassHeat;
import afterweld.thermal.PeakMap;
import afterweld.thermal.SurfaceLoss;
import afterweld.thermal.WeldCourse;
import afterweld.thermal.WeldLegs;
import afterweld.thermal.WeldingProcess;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.DoubleSupplier;

/**
 * Computes welds on small parts, where the heat has nowhere to go: round tubes and along narrow
 * strips. The temperature is two-dimensional in every leg and followed through all passes, with the
 * conductivity and heat capacity of the moment, the heat of fusion and the loss to still air.
 *
 * <p>Round a tube of 50 mm and 3 mm wall peaks agree with the integral of the moving source to 3 K
 * from 6 mm on (0.5 K on a net of 1 mm); in a wide plate with the steady field to 3 K from 240 to
 * 560 °C. Steps of time may add 2 K up to 530 °C and 7 K at 600 °C. Legs end insulated, wide ones
 * at 250 mm, and so do the parts along a seam. The current stays as it starts unless the course
 * says otherwise, although welders take it back towards the end of a lap.
 */
public final class ShellSolver {
  /** Longest way that is followed, m: a net fine enough for more takes too long. */
  static final double LONGEST = 0.9;

  /** Length of a straight weld before and after its section, in diffusivity over speed. */
  private static final double RUN_UP = 9;

  private static final double RUN_OUT = 5;

  /** What a place far from the weld needs more before its section, per distance. */
  private static final double RUN_UP_ACROSS = 2.5;

  private static final double SHORTEST_SCALE = 8e-3;
  private static final double LONGEST_SCALE = 32e-3;
  private static final double SCOUTING_COARSENESS = 2;
  private static final double LOOKED_AT = 0.04;
  private static final double TRIAL_END_POWER = 0.75;
  private static final double LEAST_END_POWER = 0.4;

  private final WeldLegs legs;
  private final SurfaceLoss loss;
  private final WeldCourse course;
  private final double coarseness;

  private ShellSolver(WeldLegs legs, SurfaceLoss loss, WeldCourse course, double coarseness) {
    this.legs = legs;
    this.loss = loss;
    this.course = course;
    this.coarseness = coarseness;
  }

  /** A solver for the welds of one joint. */
  public static ShellSolver of(WeldLegs legs, SurfaceLoss loss, WeldCourse course) {
    return new ShellSolver(legs, loss, course, 1);
  }

  /**
   * The same on another net: quicker and rougher above 1.
   *
   * @param factor on the usual spacing, 0.5 to 4
   */
  public ShellSolver withCoarseness(double factor) {
    if (!(factor >= 0.5 && factor <= 4)) {
      throw new IllegalArgumentException("coarseness " + factor + " (expected 0.5 to 4)");
    }
    return new ShellSolver(legs, loss, course, factor);
  }

  /**
   * The weld made by a procedure. A pass with a bead width gets the power that melts to it half way
   * round or along a seam (in the section of a steady weld); one that says nothing of its heat
   * takes the efficiency of the last such pass of its process, else the default of the process.
   *
   * @throws HeatInputException if a pass cannot be
   */
  public ShellWeld weld(List<Pass> passes) {
    if (passes.isEmpty()) {
      throw new IllegalArgumentException("a weld needs a pass");
    }
    WeldCourse whole = followed(passes);
    List<PassHeat> guesses = passes.stream().map(plate()::estimate).toList();
    if (course.ends() && course.place() == WeldCourse.Place.WORST) {
      ShellWeld scouted = weld(whole, guesses, whole.beyond(), coarseness * SCOUTING_COARSENESS);
      double hottest = whole.beyond() + scouted.peaks().hottest(LOOKED_AT);
      return weld(whole, scouted.heats(), hottest, coarseness);
    }
    return weld(whole, guesses, section(whole, passes), coarseness);
  }

  /** The same legs in the steady field. */
  HeatInput plate() {
    return HeatInput.into(legs, loss);
  }

  private double section(WeldCourse whole, List<Pass> passes) {
    return course.ends()
        ? whole.along(whole.place())
        : whole.stop() - RUN_OUT * scale(legs, passes);
  }

  /**
   * The weld with the heat of its passes given, in the section of another.
   *
   * @param heats of the passes
   * @param like the weld whose section is taken
   */
  public ShellWeld weld(List<PassHeat> heats, ShellWeld like) {
    WeldCourse whole = followed(heats.stream().map(PassHeat::pass).toList());
    double section = whole.beyond() + like.peaks().section();
    ShellProcedure procedure = procedure(whole, heats, section, coarseness);
    lay(heats, procedure);
    procedure.finish();
    return new ShellWeld(procedure, heats);
  }

  private static void lay(List<PassHeat> heats, ShellProcedure procedure) {
    for (PassHeat heat : heats) {
      procedure.waitFor(heat.pass());
      procedure.weld(heat);
    }
  }

  /**
   * The same passes with another share of their first power at the end and the same power half way:
   * so much more at the start.
   *
   * @param heats on this course
   * @param endPower power at the end over that at the start
   */
  public List<PassHeat> pivoted(List<PassHeat> heats, double endPower) {
    double factor = (1 + course.endPower()) / (1 + endPower);
    return heats.stream().map(heat -> heat.times(factor)).toList();
  }

  /**
   * Power at the end of the weld over that at its start with which the end melts no farther than
   * the middle does, the power half way being the same: with it the peaks at the fusion line are
   * alike. By a secant, on a coarse net; 1 where the end is no hotter at constant current.
   *
   * @param constant the weld at constant current
   */
  public double evenEndPower(ShellWeld constant) {
    double fusion = constant.beadWidth(WeldCourse.Place.MIDDLE) / 2;
    double excess = ending(1, constant).hotterAtEnd(fusion);
    if (excess <= 0) {
      return 1;
    }
    double left = ending(TRIAL_END_POWER, constant).hotterAtEnd(fusion);
    double even = 1 - excess * (1 - TRIAL_END_POWER) / (excess - left);
    return left < excess ? Math.max(LEAST_END_POWER, even) : LEAST_END_POWER;
  }

  private PeakMap ending(double endPower, ShellWeld constant) {
    List<PassHeat> heats = pivoted(constant.heats(), endPower);
    ShellProcedure scouted =
        procedure(
            course.withEndPower(endPower),
            heats,
            course.along(WeldCourse.Place.MIDDLE),
            coarseness * SCOUTING_COARSENESS);
    lay(heats, scouted);
    scouted.settle();
    return scouted.peaks();
  }

  /** The course as far as it is followed: a long seam no longer than until it is steady. */
  private WeldCourse followed(List<Pass> passes) {
    double steady = steadyLength(legs, passes);
    if (!course.ends()) {
      return WeldCourse.seam(steady, 0, WeldCourse.Place.MIDDLE);
    }
    boolean cut = !course.ring() && course.length() > steady && course.endPower() == 1;
    if (!cut && course.length() > LONGEST) {
      throw HeatInputException.outside(
          course.ring() ? "diameter" : "length",
          course.length() / (course.ring() ? Math.PI : 1) * 1e3,
          "mm",
          String.format(
              Locale.ROOT,
              "a weld of at most %.0f mm for the transient field; heat_flow: plate takes longer ones",
              LONGEST * 1e3));
    }
    return cut ? WeldCourse.seam(steady, course.beyond(), course.place()) : course;
  }

  /** Length from which on a seam is steady in its middle, m. */
  static double steadyLength(WeldLegs legs, List<Pass> passes) {
    double widest = legs.legs().stream().mapToDouble(Leg::widthOrWide).max().orElseThrow();
    return (RUN_UP + RUN_OUT) * scale(legs, passes) + RUN_UP_ACROSS * Math.min(LOOKED_AT, widest);
  }

  /** Diffusivity over the slowest speed, m, as far as it is followed. */
  private static double scale(WeldLegs legs, List<Pass> passes) {
    double slowest = passes.stream().mapToDouble(Pass::travelSpeed).min().orElseThrow();
    double quickest =
        legs.legs().stream().mapToDouble(leg -> leg.material().diffusivity()).max().orElseThrow();
    return Math.min(LONGEST_SCALE, Math.max(SHORTEST_SCALE, quickest / slowest));
  }

  private ShellProcedure procedure(
      WeldCourse whole, List<PassHeat> heats, double section, double spacing) {
    List<Pass> passes = heats.stream().map(PassHeat::pass).toList();
    double widthPlace = course.ends() ? whole.along(WeldCourse.Place.MIDDLE) : section;
    return new ShellProcedure(legs, loss, whole, passes, section, widthPlace, spacing);
  }

  private ShellWeld weld(WeldCourse whole, List<PassHeat> guesses, double section, double spacing) {
    boolean scouting = spacing > coarseness;
    ShellProcedure procedure = procedure(whole, guesses, section, spacing);
    Map<WeldingProcess, PassHeat> calibrated = new EnumMap<>(WeldingProcess.class);
    List<PassHeat> heats = new ArrayList<>();
    for (int i = 0; i < guesses.size(); i++) {
      Pass pass = guesses.get(i).pass();
      try {
        procedure.waitFor(pass);
        PassHeat guess = guesses.get(i);
        PassHeat heat =
            heat(
                guess,
                calibrated.get(pass.process()),
                () -> procedure.power(pass, guess.netPower()));
        procedure.weld(heat);
        heats.add(scouting || pass.beadWidth().isPresent() ? heat : procedure.melted());
        if (pass.beadWidth().isPresent()) {
          calibrated.put(pass.process(), heat);
        }
      } catch (HeatInputException fault) {
        throw fault.inPass(i);
      }
    }
    if (scouting) {
      procedure.settle();
    } else {
      procedure.finish();
    }
    return new ShellWeld(procedure, heats);
  }

  /**
   * Heat of a pass: as its width tells, as its efficiency says, as the last pass of its process
   * that told, or by default.
   *
   * @param guess of it
   * @param before last pass of its process with a width; null if none
   * @param powerOfWidth W
   */
  static PassHeat heat(PassHeat guess, PassHeat before, DoubleSupplier powerOfWidth) {
    Pass pass = guess.pass();
    if (pass.beadWidth().isPresent()) {
      return ofWidth(pass, powerOfWidth.getAsDouble());
    }
    boolean alike = before != null && pass.efficiency().isEmpty();
    if (alike) {
      double value = before.efficiency();
      return ofEfficiency(guess, value, value, value, before.calibratedBy());
    }
    if (pass.efficiency().isPresent()) {
      double value = HeatInput.within(pass, pass.efficiency().getAsDouble(), () -> "");
      return ofEfficiency(guess, value, value, value, OptionalDouble.empty());
    }
    WeldingProcess process = pass.process();
    return ofEfficiency(
        guess,
        process.efficiency(),
        process.efficiencyLow(),
        process.efficiencyHigh(),
        OptionalDouble.empty());
  }

  private static PassHeat ofWidth(Pass pass, double power) {
    double width = pass.beadWidth().orElseThrow();
    double efficiency = HeatInput.within(pass, power / pass.arcPower(), () -> "");
    return new PassHeat(
        pass, efficiency, efficiency, efficiency, true, power, width / 2, OptionalDouble.of(width));
  }

  private static PassHeat ofEfficiency(
      PassHeat guess, double value, double low, double high, OptionalDouble calibratedBy) {
    return new PassHeat(
        guess.pass(),
        value,
        low,
        high,
        calibratedBy.isPresent(),
        value * guess.pass().arcPower(),
        guess.fusionHalfWidth(),
        calibratedBy);
  }
}
