package afterweld.thermal;

import static afterweld.thermal.HeatPotential.ZERO_CELSIUS;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class ShellReferenceTest {
  static List<Table.Row> rows() {
    return Table.read("thermal_reference.csv").stream()
        .filter(
            row ->
                row.text("belongs_to").equals("shell solver")
                    && row.text("geometry").startsWith("ring"))
        .toList();
  }

  @ParameterizedTest
  @MethodSource("rows")
  void ring(Table.Row row) {
    boolean table = row.text("lambda_W_mmK").equals("table");
    ConductionMaterial metal =
        table ? Metals.ALUMINIUM_6061 : Metals.constant(200, 72e-6, 2000, 2000);
    double w = table ? 0.2 : 0.06;
    WeldLegs legs =
        new WeldLegs(
            List.of(
                new Leg(true, 3e-3, OptionalDouble.of(w), metal),
                new Leg(false, 3e-3, OptionalDouble.of(w), metal)),
            0);
    ShellGrid grid = new ShellGrid(legs, true, 0.147655, 1, true);
    String g = row.text("geometry");
    double x = Double.parseDouble(g.replaceAll(".*x=(\\d+).*", "$1")) * 1e-3;
    SurfaceLoss none = SurfaceLoss.none(Welds.ROOM);
    ShellRun run =
        new ShellRun(
            grid,
            WeldCourse.ring(0.147655, WeldCourse.Place.HALF_LAP),
            none,
            Welds.ROOM,
            grid.nearest(x));
    double before = run.field().content();
    long t0 = System.nanoTime();
    run.weld(
        Welds.pass(100, 2.5e-3, Welds.ROOM, OptionalDouble.empty(), OptionalDouble.empty()), 640);
    long t1 = System.nanoTime();
    run.cool(0, 60);
    System.out.println(
        (t1 - t0) / 1e9
            + " "
            + (System.nanoTime() - t1) / 1e9
            + " balance "
            + (run.field().content() - before - run.given())
            + " "
            + run.given()
            + " lines "
            + run.lines().count()
            + " "
            + run.record().size());
    double y = row.millimetres("y_mm");
    int n = grid.chains().get(0).last();
    double[] d = grid.chains().get(0).distance();
    int line = 1;
    while (d[line] < y) line++;
    double t = 0;
    for (int i = line - 2; i < line + 2; i++) {
      double wgt = 1;
      for (int j = line - 2; j < line + 2; j++) if (j != i) wgt *= (y - d[j]) / (d[i] - d[j]);
      t += wgt * run.peaks()[i][grid.nearest(x)];
    }
    System.out.println(
        row + " -> " + (t - ZERO_CELSIUS) + " vs " + row.text("value") + " " + row.text("method"));
  }
}
