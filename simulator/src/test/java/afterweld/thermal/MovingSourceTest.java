package afterweld.thermal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class MovingSourceTest {
  private static final double DIFFUSIVITY = 72e-6;
  private static final double WIDE = Double.POSITIVE_INFINITY;

  private static double k(double speed) {
    return speed / (2 * DIFFUSIVITY);
  }

  private static MovingSource strip(double thickness, double own, double other, double k) {
    return new MovingSource(
        new LegGeometry(thickness, thickness, thickness, 0, thickness / 2, own, other), k, 0);
  }

  /**
   * The same plate by images through its thickness, F = exp(−kξ)/(2π) Σ exp(−μ R)/R: 1e-7 of a
   * kilowatt's rise is below a ten-thousandth of a kelvin.
   */
  @Property(tries = 150)
  void agreesWithImagesThroughTheThickness(
      @ForAll @DoubleRange(min = 1, max = 25) double thickness,
      @ForAll @DoubleRange(min = 1, max = 15) double speed,
      @ForAll @DoubleRange(min = 1, max = 60) double y,
      @ForAll @DoubleRange(min = -200, max = 20) double xi,
      @ForAll @DoubleRange(min = 0, max = 1) double depth,
      @ForAll @DoubleRange(min = 0, max = 100) double loss) {
    double d = thickness * 1e-3;
    LegGeometry plate = LegGeometry.plate(d, 0, depth * d);
    MovingSource source = new MovingSource(plate, k(speed * 1e-3), loss);
    double images = images(d, depth * d, k(speed * 1e-3), loss, xi * 1e-3, y * 1e-3);
    assertEquals(images, source.rise(xi * 1e-3, y * 1e-3), 1e-7 * (1 + images));
  }

  private static double images(double d, double z, double k, double loss, double xi, double y) {
    double mu = Math.sqrt(k * k + loss);
    double sum = 0;
    for (int n = -20000; n <= 20000; n++) {
      double distance = Math.sqrt(xi * xi + y * y + (z + 2 * n * d) * (z + 2 * n * d));
      sum += Math.exp(-k * xi - mu * distance) / distance;
    }
    return sum / (2 * Math.PI);
  }

  /** Slope against a difference of the rise. */
  @Property(tries = 100)
  void knowsItsSlope(
      @ForAll @DoubleRange(min = 1, max = 30) double y,
      @ForAll @DoubleRange(min = -120, max = 10) double xi) {
    for (double width : new double[] {WIDE, 40e-3}) {
      MovingSource source = strip(3e-3, width, width, k(4e-3));
      double step = 1e-7;
      double place = xi * 1e-3;
      double difference =
          (source.rise(place + step, y * 1e-3) - source.rise(place - step, y * 1e-3)) / (2 * step);
      double slope = source.slope(place, y * 1e-3);
      assertEquals(difference, slope, 1e-5 * Math.abs(slope) + 1e-4);
    }
  }

  /** What the arc has put in is what crosses a line far behind it: v ∫ F dy = a/D, no losses. */
  @Test
  void keepsTheHeat() {
    double k = k(3e-3);
    MovingSource plate = new MovingSource(LegGeometry.plate(4e-3, 4e-3, 0), k, 0);
    double step = 0.5e-3;
    double sum = 0.5 * plate.rise(-0.5, 0);
    for (double y = step; y < 1; y += step) {
      sum += plate.rise(-0.5, y);
    }
    double flow = 2 * sum * step * 3e-3;
    double expected = DIFFUSIVITY / 4e-3;
    assertEquals(expected, flow, 0.02 * expected);
  }

  /** A strip without losses ends up evenly warm: F = a/(v d (w1 + w2)). */
  @Test
  void warmsAStripEvenly() {
    double expected = DIFFUSIVITY / (3e-3 * 4e-3 * 80e-3);
    MovingSource strip = strip(4e-3, 30e-3, 50e-3, k(3e-3));
    for (double y : new double[] {-49e-3, -10e-3, 1e-3, 29e-3}) {
      assertEquals(expected, strip.rise(-5, y), 1e-9 * expected);
    }
  }

  /** Rows of images and waves across the strip are one sum: no step where they change over. */
  @Property(tries = 60)
  void changesFromImagesToWavesWithoutAStep(
      @ForAll @DoubleRange(min = 15, max = 120) double own,
      @ForAll @DoubleRange(min = 15, max = 120) double other,
      @ForAll @DoubleRange(min = 2, max = 14) double y) {
    double k = k(4e-3);
    double width = (own + other) * 1e-3;
    double change = 0.16 * k * width * width;
    MovingSource strip = strip(3e-3, own * 1e-3, other * 1e-3, k);
    double before = strip.rise(-change * (1 - 1e-12), y * 1e-3);
    double after = strip.rise(-change * (1 + 1e-12), y * 1e-3);
    assertEquals(before, after, 1e-7 * before);
    double slopeBefore = strip.slope(-change * (1 - 1e-12), y * 1e-3);
    double slopeAfter = strip.slope(-change * (1 + 1e-12), y * 1e-3);
    assertEquals(slopeBefore, slopeAfter, 1e-6 * before / width);
  }

  @Property(tries = 60)
  void mirrorsAStrip(
      @ForAll @DoubleRange(min = 10, max = 100) double own,
      @ForAll @DoubleRange(min = 10, max = 100) double other,
      @ForAll @DoubleRange(min = -9, max = 9) double y,
      @ForAll @DoubleRange(min = -300, max = 5) double xi) {
    MovingSource strip = strip(3e-3, own * 1e-3, other * 1e-3, k(3e-3));
    MovingSource turned = strip(3e-3, other * 1e-3, own * 1e-3, k(3e-3));
    double rise = strip.rise(xi * 1e-3, y * 1e-3);
    assertEquals(rise, turned.rise(xi * 1e-3, -y * 1e-3), 1e-9 * rise);
  }

  /** One edge alone is the limit of a strip whose other edge is far away. */
  @Test
  void takesOneEdgeAlone() {
    MovingSource half = strip(3e-3, 25e-3, WIDE, k(3e-3));
    MovingSource strip = strip(3e-3, 25e-3, 3, k(3e-3));
    MovingSource turned = strip(3e-3, WIDE, 25e-3, k(3e-3));
    for (double xi : new double[] {-0.3, -0.03, 0.002}) {
      double rise = strip.rise(xi, 20e-3);
      assertEquals(rise, half.rise(xi, 20e-3), 1e-9 * rise);
      assertEquals(rise, turned.rise(xi, -20e-3), 1e-9 * rise);
    }
  }

  /** Up to what is left out at the end of the series. */
  @Property(tries = 100)
  void isHottestAtThePeak(
      @ForAll @DoubleRange(min = 0.5, max = 20) double speed,
      @ForAll @DoubleRange(min = 0.2, max = 80) double y,
      @ForAll @DoubleRange(min = 0, max = 1) double sourceDepth) {
    LegGeometry plate = LegGeometry.plate(8e-3, sourceDepth * 8e-3, 4e-3);
    MovingSource source = new MovingSource(plate, k(speed * 1e-3), 10);
    double place = source.peakPlace(y * 1e-3);
    double peak = source.rise(place, y * 1e-3);
    for (double factor : new double[] {0.2, 0.9, 0.999, 1.001, 1.1, 5, 50}) {
      assertTrue(source.rise(place * factor, y * 1e-3) <= peak * (1 + 1e-7), "at " + factor);
    }
  }

  static Stream<Table.Row> depths() {
    return Table.read("through_thickness.csv").stream();
  }

  /** Peak over the line source's peak at the top, the middle and the root, surface source. */
  @ParameterizedTest
  @MethodSource("depths")
  void agreesThroughTheThickness(Table.Row row) {
    double d = 10e-3;
    double k = row.number("k_times_thickness") / d;
    double y = row.number("y_over_thickness") * d;
    double line = peak(LegGeometry.plate(d, d, 0), k, y);
    assertEquals(row.number("top"), peak(LegGeometry.plate(d, 0, 0), k, y) / line, 0.012);
    assertEquals(row.number("middle"), peak(LegGeometry.plate(d, 0, d / 2), k, y) / line, 0.006);
    assertEquals(row.number("root"), peak(LegGeometry.plate(d, 0, d), k, y) / line, 0.006);
  }

  private static double peak(LegGeometry leg, double k, double y) {
    MovingSource source = new MovingSource(leg, k, 0);
    return source.rise(source.peakPlace(y), y);
  }

  static Stream<Table.Row> edges() {
    return Table.read("plate_edges.csv").stream();
  }

  /** Peak in a strip over the peak in a wide plate, 3 mm thick; ratios given to two decimals. */
  @ParameterizedTest
  @MethodSource("edges")
  void agreesInStrips(Table.Row row) {
    double k = k(row.millimetres("speed_mm_s"));
    double y = row.millimetres("y_mm");
    double width = row.millimetres("half_width_mm");
    LegGeometry strip = new LegGeometry(3e-3, 3e-3, 3e-3, 3e-3, 0, width, width);
    double ratio = peak(strip, k, y) / peak(LegGeometry.plate(3e-3, 3e-3, 0), k, y);
    assertEquals(row.number("ratio_to_wide_plate"), ratio, 0.006);
  }
}
