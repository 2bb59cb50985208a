package afterweld.thermal.shell;

import afterweld.thermal.ConductionMaterial;
import afterweld.thermal.HeatFlow;
import afterweld.thermal.HeatInput;
import afterweld.thermal.HeatInputException;
import afterweld.thermal.Leg;
import afterweld.thermal.Pass;
import afterweld.thermal.PassHeat;
import afterweld.thermal.SurfaceLoss;
import afterweld.thermal.WeldCourse;
import afterweld.thermal.WeldLegs;
import java.util.List;
import java.util.Locale;

/**
 * Decides which temperature field a weld needs. The transient one where
 *
 * <ul>
 *   <li>the heat of a ring builds up by more than 10 K on the way round: the larger of 0.7 q/(λ L
 *       Σd) √(4at/π), as in long legs, and q t/(ρc L Σ d w), as in short ones, with q the power, L
 *       the circumference, t the time of the lap, d and w thickness and width of the legs; within
 *       20 % of computed fields;
 *   <li>legs end so near that their heat builds up along the weld ({@link WeldLegs#narrow});
 *   <li>a seam is too short to become steady, or is looked at near its start or end;
 *   <li>a pass follows after a stated pause on metal that is still more than 10 K off the
 *       temperature stated for it, by the cooling of a line of heat in a wide plate.
 * </ul>
 */
public final class HeatFlowRule {
  /** Heat that comes back, K, from which on it counts (assumed). */
  private static final double NOTICED = 10;

  private final WeldLegs legs;
  private final List<PassHeat> heats;

  private HeatFlowRule(WeldLegs legs, List<PassHeat> heats) {
    this.legs = legs;
    this.heats = heats;
  }

  /**
   * The field for a weld.
   *
   * @param course where it runs
   * @throws HeatInputException if a number of a pass is out of range
   */
  public static HeatFlow.Choice choose(
      WeldLegs legs, SurfaceLoss loss, List<Pass> passes, WeldCourse course) {
    HeatInput plate = HeatInput.into(legs, loss);
    HeatFlowRule rule = new HeatFlowRule(legs, passes.stream().map(plate::estimate).toList());
    if (course.ring()) {
      return rule.round(course.length());
    }
    return course.ends() ? rule.seam(course) : rule.straight();
  }

  private HeatFlow.Choice round(double circumference) {
    double rise = heats.stream().mapToDouble(heat -> buildUp(heat, circumference)).max().orElse(0);
    String size =
        String.format(
            Locale.ROOT,
            "the heat builds up by about %.0f °C (%.0f °F) on the way round a tube of %s",
            rise,
            1.8 * rise,
            length(circumference / Math.PI));
    if (rise <= NOTICED) {
      return new HeatFlow.Choice(
          HeatFlow.PLATE, size + ", which a long steady weld comes near enough");
    }
    return circumference > ShellSolver.LONGEST
        ? new HeatFlow.Choice(
            HeatFlow.PLATE,
            size
                + " if the air takes none of it, but a way of more than "
                + length(ShellSolver.LONGEST)
                + " is not followed in time: give half of the rise as more preheat to see what it"
                + " does",
            true)
        : new HeatFlow.Choice(HeatFlow.SHELL, size + ", so the whole part is followed in time");
  }

  private static String length(double metres) {
    return String.format(Locale.ROOT, "%.0f mm (%.2f in)", metres * 1e3, metres / 25.4e-3);
  }

  private double buildUp(PassHeat heat, double circumference) {
    double lap = circumference / heat.pass().travelSpeed();
    double conductance = 0;
    double capacity = 0;
    double diffusivity = 0;
    for (Leg leg : legs.legs()) {
      ConductionMaterial metal = leg.material();
      conductance += metal.lossConductivity() * leg.thickness();
      capacity +=
          metal.lossConductivity() / metal.diffusivity() * leg.thickness() * leg.widthOrWide();
      diffusivity += metal.diffusivity() / legs.legs().size();
    }
    double longLegs =
        0.7
            * heat.netPower()
            / (conductance * circumference)
            * Math.sqrt(4 * diffusivity * lap / Math.PI);
    return Math.max(longLegs, heat.netPower() * lap / (circumference * capacity));
  }

  /** The middle of a long seam is that of a steady weld. */
  private HeatFlow.Choice seam(WeldCourse course) {
    List<Pass> passes = heats.stream().map(PassHeat::pass).toList();
    double steady = ShellSolver.steadyLength(legs, passes);
    if (course.place() == WeldCourse.Place.MIDDLE
        && course.length() >= steady
        && course.endPower() == 1) {
      return straight();
    }
    String reason =
        course.length() < steady
            ? "a weld of " + length(course.length()) + " is too short to become steady"
            : "the start and the end of the weld are looked at";
    return new HeatFlow.Choice(HeatFlow.SHELL, reason + ", so the whole part is followed in time");
  }

  private HeatFlow.Choice straight() {
    double slowest = heats.stream().mapToDouble(heat -> heat.pass().travelSpeed()).min().orElse(1);
    if (legs.narrow(slowest)) {
      return new HeatFlow.Choice(
          HeatFlow.SHELL,
          "the legs end so near the weld that its heat builds up along them, so the whole part is"
              + " followed in time");
    }
    for (int i = 1; i < heats.size(); i++) {
      if (stillWarm(heats.get(i - 1), heats.get(i).pass())) {
        return new HeatFlow.Choice(
            HeatFlow.SHELL,
            "pass "
                + (i + 1)
                + " follows before the metal has cooled to the temperature stated for it, so the"
                + " whole part is followed in time");
      }
    }
    return new HeatFlow.Choice(HeatFlow.PLATE, "the plates are wide and the weld is long");
  }

  private boolean stillWarm(PassHeat before, Pass next) {
    if (next.pause().isEmpty()) {
      return false;
    }
    double density = 0;
    double diffusivity = 0;
    for (Leg leg : legs.legs()) {
      ConductionMaterial metal = leg.material();
      density += metal.lossConductivity() / metal.diffusivity() * leg.thickness() / 2;
      diffusivity += metal.diffusivity() / legs.legs().size();
    }
    double perLength = before.netPower() / before.pass().travelSpeed();
    double spread = 2 * Math.sqrt(Math.PI * diffusivity * next.pause().getAsDouble());
    double left = before.pass().startTemperature() + perLength / (density * spread);
    return Math.abs(left - next.startTemperature()) > NOTICED;
  }
}
