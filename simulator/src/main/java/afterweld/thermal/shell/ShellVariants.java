package afterweld.thermal.shell;

import afterweld.thermal.HeatInput;
import afterweld.thermal.HeatInputException;
import afterweld.thermal.Pass;
import afterweld.thermal.PassHeat;
import afterweld.thermal.WeldCourse;
import afterweld.thermal.WeldingProcess;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * Welds that differ little in speed, heat or width from one solved in the transient field, for
 * studies that need many of them.
 *
 * <p>The power is not searched for anew. It grows with the width as W^n, n from a second weld that
 * is narrower; with another speed it changes by as many times as in the steady field of the same
 * legs. Within 10 % of speed and 0.5 mm of width that is good to 1 % of the power. The field is
 * computed on a net that is coarser the wider the bead is, in the section of the first weld: peaks
 * at one power are within 3 K from 5 mm on, the edge of the molten metal within 0.2 mm.
 */
public final class ShellVariants {
  private static final double COARSEST = 1.5;
  private static final double BEAD_OF_THE_USUAL_NET = 5e-3;
  private static final double NARROWER = 0.93;
  private static final double THIN_PLATE = 1;

  private final ShellSolver solver;
  private final ShellWeld known;
  private final HeatInput plate;
  private final double[] exponents;

  private ShellVariants(ShellSolver solver, ShellWeld known, HeatInput plate, double[] exponents) {
    this.solver = solver;
    this.known = known;
    this.plate = plate;
    this.exponents = exponents;
  }

  /**
   * Variants of a weld.
   *
   * @param solver that solved it
   */
  public static ShellVariants of(ShellSolver solver, ShellWeld known) {
    HeatInput plate = solver.plate();
    return new ShellVariants(solver, known, plate, exponents(solver, known.heats()));
  }

  /** By how much the power of each pass grows with its width; as in a thin plate if not found. */
  private static double[] exponents(ShellSolver solver, List<PassHeat> heats) {
    List<Pass> narrower =
        heats.stream()
            .map(heat -> heat.pass().ofWidth(NARROWER * 2 * heat.fusionHalfWidth()))
            .toList();
    double[] exponents = new double[heats.size()];
    try {
      List<PassHeat> less = solver.weld(narrower).heats();
      for (int i = 0; i < exponents.length; i++) {
        double times = less.get(i).netPower() / heats.get(i).netPower();
        exponents[i] = Math.log(times) / Math.log(NARROWER);
      }
    } catch (HeatInputException noWeld) {
      Arrays.fill(exponents, THIN_PLATE);
    }
    return exponents;
  }

  /** A narrow bead, such as that of a cold start, must not fall between the lines of the net. */
  private double coarseness() {
    double narrowest =
        Math.min(
            known.beadWidth(WeldCourse.Place.START),
            known.heats().stream()
                .mapToDouble(heat -> 2 * heat.fusionHalfWidth())
                .min()
                .orElseThrow());
    return Math.max(1, Math.min(COARSEST, narrowest / BEAD_OF_THE_USUAL_NET));
  }

  /**
   * One of them.
   *
   * @param passes as many as the first weld has
   * @throws HeatInputException if a pass cannot be
   */
  public ShellWeld weld(List<Pass> passes) {
    return solver.withCoarseness(coarseness()).weld(heats(passes), known);
  }

  private List<PassHeat> heats(List<Pass> passes) {
    Map<WeldingProcess, PassHeat> calibrated = new EnumMap<>(WeldingProcess.class);
    List<PassHeat> heats = new ArrayList<>();
    for (int i = 0; i < passes.size(); i++) {
      Pass pass = passes.get(i);
      try {
        PassHeat heat = heat(i, pass, calibrated.get(pass.process()));
        if (pass.beadWidth().isPresent()) {
          calibrated.put(pass.process(), heat);
        }
        heats.add(heat);
      } catch (HeatInputException fault) {
        throw fault.inPass(i);
      }
    }
    return heats;
  }

  private PassHeat heat(int index, Pass pass, PassHeat before) {
    PassHeat solved = known.heats().get(index);
    double width = 2 * solved.fusionHalfWidth();
    double atWidth = solved.netPower() * bySpeed(solved.pass(), pass, width);
    double grows = exponents[index];
    double own = pass.beadWidth().orElse(width);
    PassHeat heat =
        ShellSolver.heat(
            plate.estimate(pass), before, () -> atWidth * Math.pow(own / width, grows));
    return pass.beadWidth().isPresent()
        ? heat
        : heat.melting(width / 2 * Math.pow(heat.netPower() / atWidth, 1 / grows));
  }

  /** How many times the power a width needs at the speed of another pass. */
  private double bySpeed(Pass solved, Pass pass, double width) {
    return plate.estimate(pass.ofWidth(width)).netPower()
        / plate.estimate(solved.ofWidth(width)).netPower();
  }
}
