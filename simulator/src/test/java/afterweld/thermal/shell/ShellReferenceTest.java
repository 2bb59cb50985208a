package afterweld.thermal.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;

import afterweld.thermal.ConductionMaterial;
import afterweld.thermal.Leg;
import afterweld.thermal.Metals;
import afterweld.thermal.MovingPointIntegral;
import afterweld.thermal.Pass;
import afterweld.thermal.PassHeat;
import afterweld.thermal.SurfaceLoss;
import afterweld.thermal.Table;
import afterweld.thermal.WeldCourse;
import afterweld.thermal.WeldLegs;
import afterweld.thermal.Welds;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The transient field against values computed by other methods: the time integral of the moving
 * point source, modes through the thickness, another shell solver, three-dimensional volumes. The
 * method and its tolerance stand in each row of the table.
 */
class ShellReferenceTest {
  static List<ShellCase> transientCases() {
    return Table.read("thermal_reference.csv").stream()
        .filter(row -> row.text("belongs_to").equals("shell solver"))
        .map(ShellCase::new)
        .toList();
  }

  @ParameterizedTest
  @MethodSource("transientCases")
  void agreesWithTheOtherMethod(ShellCase reference) {
    Table.Row row = reference.row();
    assertEquals(row.number("value"), reference.computed(), row.number("tolerance"));
  }

  @Test
  void hasEveryRow() {
    assertEquals(26, transientCases().size());
  }

  /** The integral itself against the rows of the table that came from it (C42 to C50). */
  @ParameterizedTest
  @CsvSource({
    "5, 6, 477.7",
    "5, 15, 376.2",
    "5, 30, 299.0",
    "74, 6, 423.8",
    "74, 15, 290.4",
    "74, 30, 276.0",
    "140, 6, 537.6",
    "140, 15, 404.0",
    "140, 30, 313.6"
  })
  void theIntegralGivesTheTable(double x, double y, double celsius) {
    MovingPointIntegral ring =
        new MovingPointIntegral(640, 200, 72e-6, 3e-3, 2.5e-3, 0.147655, true, 0.06, 0.06);
    assertEquals(celsius - 20, ring.peak(x * 1e-3, y * 1e-3), 0.1);
  }

  /** Another ring than the table's: unequal widths of the legs, shorter lap, quicker. */
  @ParameterizedTest
  @CsvSource({"0.5, -8", "0.5, 20", "0.95, -15", "0.95, 8", "0.95, 55"})
  void agreesWithTheIntegralOnAnotherRing(double share, double y) {
    double lap = 0.11;
    ConductionMaterial metal = Metals.constant(200, 72e-6, 2000, 2000);
    WeldLegs legs =
        new WeldLegs(
            List.of(
                new Leg(true, 4e-3, OptionalDouble.of(0.03), metal),
                new Leg(false, 4e-3, OptionalDouble.of(0.06), metal)),
            0);
    WeldCourse course = WeldCourse.ring(lap, WeldCourse.Place.MIDDLE);
    Pass pass = Welds.pass(200, 4e-3, Welds.ROOM, OptionalDouble.empty(), OptionalDouble.of(4e-3));
    ShellProcedure procedure =
        new ShellProcedure(
            legs, SurfaceLoss.none(Welds.ROOM), course, List.of(pass), share * lap, 0, 1);
    PassHeat heat = new PassHeat(pass, 0.6, 0.6, 0.6, false, 700, 4e-3, OptionalDouble.empty());
    procedure.weld(heat);
    procedure.run().cool(0, 60);
    ShellSection section = procedure.leg(y < 0 ? 0 : 1, List.of(heat), 0);
    double exact =
        new MovingPointIntegral(700, 200, 72e-6, 4e-3, 4e-3, lap, true, 0.03, 0.06)
            .peak(share * lap, y * 1e-3);
    assertEquals(exact, section.peak(Math.abs(y) * 1e-3) - Welds.ROOM, 2.5);
  }
}
