package afterweld.charts.plot;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

class LayoutTest {
  private static final RowSpread ROW = new RowSpread(10, 100, 1500);

  @Provide
  Arbitrary<List<RowSpread.Label>> labels() {
    Arbitrary<Double> centres = Arbitraries.doubles().between(100, 1500);
    Arbitrary<Double> widths = Arbitraries.doubles().between(20, 160);
    return Combinators.combine(centres, widths)
        .as(RowSpread.Label::new)
        .list()
        .ofMinSize(1)
        .ofMaxSize(8)
        .map(list -> list.stream().sorted(Comparator.comparing(RowSpread.Label::centre)).toList());
  }

  @Property(tries = 300)
  void labelsInARowStayApartAndInside(@ForAll("labels") List<RowSpread.Label> labels) {
    List<Double> centres = ROW.centres(labels);
    double free = 100;
    for (int i = 0; i < labels.size(); i++) {
      double left = centres.get(i) - labels.get(i).width() / 2;
      assertTrue(left >= free - 1e-6, "label " + i + " starts at " + left + ", free " + free);
      free = left + labels.get(i).width() + 10;
    }
    assertTrue(free - 10 <= 1500 + 1e-6);
  }

  @Example
  void aLabelWithRoomStandsWhereItWantsTo() {
    List<RowSpread.Label> labels =
        List.of(new RowSpread.Label(300, 100), new RowSpread.Label(900, 100));
    assertEquals(List.of(300.0, 900.0), ROW.centres(labels));
  }

  @Example
  void twoThatWantTheSamePlaceShareTheWay() {
    List<RowSpread.Label> labels =
        List.of(new RowSpread.Label(800, 100), new RowSpread.Label(800, 100));
    assertEquals(List.of(745.0, 855.0), ROW.centres(labels));
  }

  @Example
  void aRowKnowsWhatItHolds() {
    assertTrue(ROW.holds(List.of(new RowSpread.Label(800, 1400))));
    assertFalse(ROW.holds(List.of(new RowSpread.Label(1, 700), new RowSpread.Label(2, 700))));
  }

  @Property(tries = 50)
  void wordsNeverCoverWordsWhileThereIsRoom(@ForAll("points") List<Point2D> points) {
    Rectangle2D area = new Rectangle2D.Double(0, 0, 1400, 900);
    FreeSpace space = new FreeSpace(area);
    List<Rectangle2D> boxes = new ArrayList<>();
    for (Point2D point : points) {
      Rectangle2D box = space.near(point, 150, 20);
      assertTrue(area.contains(box));
      assertTrue(boxes.stream().noneMatch(box::intersects), box + " among " + boxes);
      boxes.add(box);
    }
  }

  @Provide
  Arbitrary<List<Point2D>> points() {
    Arbitrary<Double> x = Arbitraries.doubles().between(0, 1400);
    Arbitrary<Double> y = Arbitraries.doubles().between(0, 900);
    return Combinators.combine(x, y)
        .as((a, b) -> (Point2D) new Point2D.Double(a, b))
        .list()
        .ofMinSize(1)
        .ofMaxSize(6);
  }

  @Example
  void wordsStandOffALine() {
    FreeSpace space = new FreeSpace(new Rectangle2D.Double(0, 0, 1000, 600));
    for (int x = 0; x <= 1000; x += 9) {
      space.addLinePoint(new Point2D.Double(x, 300));
    }
    Rectangle2D box = space.near(new Point2D.Double(500, 300), 200, 20);
    assertTrue(box.getMinY() > 300 || box.getMaxY() < 300);
  }

  @Property(tries = 100)
  void thinningKeepsTheLineWithinItsTolerance(@ForAll("wavy") List<Point2D> line) {
    List<Point2D> thin = LineThinning.thinned(line);
    assertEquals(line.get(0), thin.get(0));
    assertEquals(line.get(line.size() - 1), thin.get(thin.size() - 1));
    for (Point2D point : line) {
      assertTrue(distance(point, thin) <= 0.12 + 1e-9);
    }
  }

  private static double distance(Point2D point, List<Point2D> line) {
    double nearest = Double.MAX_VALUE;
    for (int i = 1; i < line.size(); i++) {
      var piece = new java.awt.geom.Line2D.Double(line.get(i - 1), line.get(i));
      nearest = Math.min(nearest, piece.ptSegDist(point));
    }
    return nearest;
  }

  @Provide
  Arbitrary<List<Point2D>> wavy() {
    Arbitrary<Double> height = Arbitraries.doubles().between(-80, 80);
    Arbitrary<Double> pitch = Arbitraries.doubles().between(0.01, 0.3);
    return Combinators.combine(height, pitch).as(LayoutTest::wave);
  }

  private static List<Point2D> wave(double height, double pitch) {
    List<Point2D> line = new ArrayList<>();
    for (int x = 0; x < 300; x++) {
      line.add(new Point2D.Double(x, height * Math.sin(pitch * x)));
    }
    return line;
  }

  @Example
  void aStraightLineNeedsTwoPoints() {
    assertEquals(2, LineThinning.thinned(wave(0, 0.1)).size());
  }

  @Example
  void aWalkStepsEvenlyRoundACorner() {
    List<Point2D> line =
        List.of(new Point2D.Double(0, 0), new Point2D.Double(5, 0), new Point2D.Double(5, 10));
    assertEquals(
        List.of(
            new Point2D.Double(1, 0),
            new Point2D.Double(5, 0),
            new Point2D.Double(5, 4),
            new Point2D.Double(5, 8)),
        LineWalk.every(4, 1, line));
  }
}
