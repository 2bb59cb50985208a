package afterweld.thermal.shell;

import afterweld.quantity.UnitSystem;
import afterweld.thermal.ConductionMaterial;
import afterweld.thermal.Leg;
import afterweld.thermal.Metals;
import afterweld.thermal.Pass;
import afterweld.thermal.PassHeat;
import afterweld.thermal.SurfaceLoss;
import afterweld.thermal.Table;
import afterweld.thermal.WeldCourse;
import afterweld.thermal.WeldLegs;
import afterweld.thermal.Welds;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/** One row of the table of reference values that belongs to the transient field. */
record ShellCase(Table.Row row) {
  private static final Map<String, ShellProcedure> RUNS = new HashMap<>();
  private static final double CIRCUMFERENCE = 0.147655;

  /** Room before the start of a weld inside a plate, m. */
  private static final double MARGIN = 0.15;

  @Override
  public String toString() {
    return row.toString();
  }

  private boolean says(String word) {
    return row.text("geometry").contains(word);
  }

  private double after(String word) {
    String text = row.text("geometry");
    return Double.parseDouble(text.split(word, 2)[1].split("[^0-9.]", 2)[0]);
  }

  private ConductionMaterial material() {
    return row.text("lambda_W_mmK").equals("table")
        ? Metals.ALUMINIUM_6061
        : Metals.constant(
            row.number("lambda_W_mmK") * 1e3, row.number("a_mm2_s") * 1e-6, 2000, 2000);
  }

  private WeldLegs legs() {
    ConductionMaterial metal = material();
    if (says("3 legs")) {
      List<Leg> legs = new ArrayList<>();
      legs.add(Leg.wide(true, 3e-3, metal));
      legs.add(Leg.wide(true, 6e-3, metal));
      legs.add(Leg.wide(false, 2e-3, metal));
      return new WeldLegs(legs, 0);
    }
    double thickness = row.millimetres("d_mm");
    OptionalDouble width = says("ring") ? OptionalDouble.of(after("legs ") * 1e-3) : none();
    return new WeldLegs(
        List.of(new Leg(true, thickness, width, metal), new Leg(false, thickness, width, metal)),
        0);
  }

  private static OptionalDouble none() {
    return OptionalDouble.empty();
  }

  private WeldCourse course() {
    if (says("ring")) {
      return WeldCourse.ring(CIRCUMFERENCE, WeldCourse.Place.MIDDLE);
    }
    return says("arc starts")
        ? WeldCourse.seam(0.2, MARGIN, WeldCourse.Place.START)
        : WeldCourse.seam(0.35, 0, WeldCourse.Place.END);
  }

  private double section() {
    if (says("arc starts")) {
      return MARGIN + after("point x=") * 1e-3;
    }
    return says("ring") ? after("x=") * 1e-3 : 0.25;
  }

  private Pass pass() {
    OptionalDouble penetration = says("surface source") ? OptionalDouble.of(0) : none();
    return Welds.pass(200, row.millimetres("v_mm_s"), row.kelvin("T0_C"), none(), penetration);
  }

  private PassHeat heat() {
    return new PassHeat(
        pass(), 0.6, 0.6, 0.6, false, row.number("q_W(net)"), 3e-3, OptionalDouble.empty());
  }

  /** Peak temperature in °C; a rise from 0 °C is the same number in K. */
  double computed() {
    ShellProcedure procedure = RUNS.computeIfAbsent(row.text("geometry"), unused -> welded());
    double depth = row.has("z_mm") ? row.millimetres("z_mm") : 0;
    ShellSection leg = procedure.leg(0, List.of(heat()), depth);
    return leg.peak(row.millimetres("y_mm")) - UnitSystem.ZERO_CELSIUS;
  }

  /** Rings on the net of 1 mm that the rows' own second method had, others on the usual one. */
  private ShellProcedure welded() {
    double coarseness = says("ring") ? 2 / 3.0 : 1;
    SurfaceLoss loss = SurfaceLoss.none(row.kelvin("T0_C"));
    ShellProcedure procedure =
        new ShellProcedure(
            legs(), loss, course(), List.of(pass()), section(), section(), coarseness);
    procedure.weld(heat());
    procedure.run().cool(0, 60);
    return procedure;
  }
}
