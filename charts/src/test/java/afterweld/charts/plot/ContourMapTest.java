package afterweld.charts.plot;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.function.DoubleBinaryOperator;
import org.junit.jupiter.api.Test;

/** Where the figures of a map stand, on fields that are made up. */
class ContourMapTest {
  private static final int SIDE = 81;
  private static final Rectangle2D FRAME = new Rectangle2D.Double(0, 0, 1400, 600);

  private static Plot plot() {
    Graphics2D g = new BufferedImage(1400, 600, BufferedImage.TYPE_INT_RGB).createGraphics();
    return new Plot(g, FRAME, new Axis("current (A)", 0, 1), new Axis("preheat (K)", 0, 1));
  }

  private static ContourMap map(Plot plot, DoubleBinaryOperator height, List<Double> levels) {
    double[] values = new double[SIDE * SIDE];
    for (int i = 0; i < values.length; i++) {
      values[i] =
          height.applyAsDouble(i % SIDE / (SIDE - 1.0), Math.floorDiv(i, SIDE) / (SIDE - 1.0));
    }
    ContourField field = new ContourField(values, SIDE);
    return new ContourMap(
        plot, new Axis("current (A)", 0, 1), new Axis("preheat (K)", 0, 1), field, levels);
  }

  private static void assertEachHasItsFigure(DoubleBinaryOperator height, List<Double> levels) {
    Plot plot = plot();
    ContourMap map = map(plot, height, levels);
    List<ContourMap.Contour> lines = map.contours();
    List<ContourMap.Figure> figures = map.figures(lines, "MPa");
    for (ContourMap.Contour line : lines) {
      boolean has = figures.stream().anyMatch(figure -> figure.contour().equals(line));
      assertTrue(has || map.length(line) < 80, "level " + line.level());
    }
    for (ContourMap.Figure one : figures) {
      assertTrue(plot.area().contains(one.room()), "inside the map");
      figures.stream()
          .filter(other -> !other.equals(one))
          .forEach(other -> assertFalse(one.room().intersects(other.room()), "one over another"));
    }
  }

  @Test
  void bothOfTwoLinesAtOneLevelCarryIt() {
    Plot plot = plot();
    ContourMap ridge = map(plot, (x, y) -> 100 - 200 * Math.abs(x - 0.5), List.of(40.0));
    assertEquals(2, ridge.contours().size());
    assertEquals(2, ridge.figures(ridge.contours(), "MPa").size());
    assertEachHasItsFigure(
        (x, y) -> 100 - 200 * Math.abs(x - 0.5), List.of(20.0, 40.0, 60.0, 80.0));
  }

  @Test
  void linesCloseToACornerAndToEachOtherCarryTheirs() {
    assertEachHasItsFigure(
        (x, y) -> 100 * Math.exp(-4 * x) * y * y,
        List.of(10.0, 20.0, 30.0, 40.0, 50.0, 60.0, 80.0));
    assertEachHasItsFigure((x, y) -> 50 * (x + y), List.of(5.0, 6.0, 40.0, 94.0));
  }

  @Test
  void aScratchOfALineCarriesNone() {
    ContourMap corner = map(plot(), (x, y) -> 50 * (x + y), List.of(0.6));
    assertEquals(1, corner.contours().size());
    assertEquals(List.of(), corner.figures(corner.contours(), "MPa"));
  }
}
