package afterweld.charts.plot;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class ContourFieldTest {
  /** A slope of 10 a step to the right. */
  private static ContourField slope() {
    return new ContourField(new double[] {0, 10, 20, 0, 10, 20, 0, 10, 20}, 3);
  }

  @Test
  void aLineOfASlopeIsUpright() {
    List<ContourField.Piece> pieces = slope().pieces(5);
    double length = 0;
    for (ContourField.Piece piece : pieces) {
      assertEquals(0.5, piece.x1(), 1e-12);
      assertEquals(0.5, piece.x2(), 1e-12);
      length += Math.abs(piece.y2() - piece.y1());
    }
    assertEquals(2, length, 1e-12, "from bottom to top without a gap");
  }

  @Test
  void aFinerFieldIsTheSameSlope() {
    ContourField finer = slope().finer(4);
    assertEquals(9, finer.side());
    assertEquals(1.25, finer.middle(0, 0), 1e-12);
    assertEquals(18.75, finer.middle(7, 7), 1e-12);
  }

  @Test
  void levelsAreRoundAndInside() {
    assertEquals(List.of(0.0, 5.0, 10.0, 15.0, 20.0), slope().levels(5));
    assertTrue(new ContourField(new double[] {3, 3, 3, 3}, 2).levels(5).isEmpty());
  }

  @Test
  void nothingIsDrawnThroughTheUnknown() {
    ContourField field = new ContourField(new double[] {0, 10, Double.NaN, 20}, 2);
    assertTrue(Double.isNaN(field.middle(0, 0)));
    assertTrue(field.pieces(15).isEmpty());
  }
}
