package afterweld.charts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import afterweld.charts.plot.Axis;
import afterweld.charts.plot.Curve;
import afterweld.charts.plot.Ink;
import afterweld.charts.plot.Plot;
import afterweld.choice.answer.Requirement;
import afterweld.quantity.OutputQuantity;
import afterweld.quantity.UnitSystem;
import afterweld.section.SectionProfile;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class SectionPanelTest {
  private final BufferedImage image = new BufferedImage(1600, 900, BufferedImage.TYPE_INT_RGB);

  private Plot draw(SectionProfile profile, Requirement requirement, OutputQuantity quantity) {
    Graphics2D g = image.createGraphics();
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.setColor(Color.WHITE);
    g.fillRect(0, 0, 1600, 900);
    SectionView view = new SectionView(profile, requirement, UnitSystem.METRIC);
    Plot plot =
        new SectionPanel(view, quantity).draw(g, new Rectangle2D.Double(0, 0, 1600, 900), true);
    g.dispose();
    return plot;
  }

  private static SectionPanel panel(SectionProfile profile, UnitSystem units) {
    return new SectionPanel(
        new SectionView(profile, InventedWeld.requirement(), units), OutputQuantity.YIELD);
  }

  @Test
  void theRequirementIsADarkLineAtItsHeight() {
    SectionProfile profile = InventedWeld.symmetric().profile();
    Plot plot = draw(profile, InventedWeld.requirement(), OutputQuantity.YIELD);
    int row = (int) plot.y(193);
    double share = darkPixels(row) / plot.area().getWidth();
    assertTrue(share > 0.5, "dashes cover " + share);
    draw(profile, Requirement.NONE, OutputQuantity.YIELD);
    assertEquals(0, darkPixels(row));
  }

  /** Pixels as dark as the ink of a requirement, right of the axis. */
  private int darkPixels(int row) {
    int count = 0;
    for (int x = 200; x < image.getWidth(); x++) {
      count += Ink.lightness(new Color(image.getRGB(x, row))) < 25 ? 1 : 0;
    }
    return count;
  }

  @Test
  void whereNothingIsPredictedNothingIsDrawn() {
    SectionProfile whole = InventedWeld.symmetric().profile();
    SectionProfile gap = InventedWeld.symmetric().withUnknownWeldMetal().profile();
    Plot plot = draw(whole, Requirement.NONE, OutputQuantity.HARDNESS);
    int from = (int) plot.x(-5);
    int to = (int) plot.x(5);
    assertTrue(pixels(Ink.EMBER, from, to) > 500);
    draw(gap, Requirement.NONE, OutputQuantity.HARDNESS);
    assertEquals(0, pixels(Ink.EMBER, from, to));
    assertEquals(0, pixels(Ink.DEEP_BLUE, from, to));
    assertTrue(pixels(Ink.STONE, from, to) > 500, "before welding is known");
  }

  private int pixels(Color color, int from, int to) {
    int count = 0;
    for (int x = from; x < to; x++) {
      for (int y = 0; y < image.getHeight(); y++) {
        count += image.getRGB(x, y) == color.getRGB() ? 1 : 0;
      }
    }
    return count;
  }

  @Test
  void aGapSplitsTheCurveAndOnlyThatOne() {
    SectionProfile gap = InventedWeld.symmetric().withUnknownWeldMetal().profile();
    List<Curve> curves = panel(gap, UnitSystem.METRIC).curves();
    assertEquals(List.of(1, 2, 2), curves.stream().map(curve -> curve.pieces().size()).toList());
  }

  @Test
  void valuesAndAxesAreInTheUnitsAskedFor() {
    SectionProfile profile = InventedWeld.symmetric().profile();
    SectionPanel metric = panel(profile, UnitSystem.METRIC);
    SectionPanel us = panel(profile, UnitSystem.US);
    assertEquals("yield strength (MPa)", metric.axis().label());
    assertEquals("yield strength (ksi)", us.axis().label());
    assertEquals(276, metric.curves().get(0).lowest().orElseThrow().y(), 1e-9);
    // 276 MPa is 40.03 ksi: 1 ksi = 6.894757 MPa (NIST SP 811, appendix B)
    assertEquals(40.03, us.curves().get(0).lowest().orElseThrow().y(), 5e-3);
    assertEquals(-60, metric.curves().get(0).spots().get(0).x(), 1e-9);
    assertEquals(-60 / 25.4, us.curves().get(0).spots().get(0).x(), 1e-9);
  }

  @Test
  void theAxisStartsAtZeroAndHoldsTheRequirement() {
    Requirement high =
        new Requirement(
            OptionalDouble.of(500e6),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            java.util.Optional.empty(),
            OptionalDouble.empty());
    SectionView view = new SectionView(InventedWeld.symmetric().profile(), high, UnitSystem.METRIC);
    Axis axis = new SectionPanel(view, OutputQuantity.YIELD).axis();
    assertEquals(0, axis.from());
    assertTrue(axis.to() > 500);
  }
}
