package afterweld.charts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import afterweld.charts.plot.Picture;
import afterweld.joint.JointSettings.BendLoad;
import afterweld.joint.JointSettings.BendSettings;
import afterweld.joint.bend.BendReport;
import afterweld.quantity.UnitSystem;
import afterweld.section.SectionProfile;
import java.io.ByteArrayInputStream;
import java.util.List;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BendChartTest {
  private static final SectionProfile PROFILE = InventedWeld.symmetric().profile();

  private static List<Picture> pictures(double degrees, double length, BendLoad load) {
    BendSettings strip = new BendSettings(Math.toRadians(degrees), length, 0.025, load);
    return BendChart.of(
        BendReport.of(PROFILE, strip),
        PROFILE.states(),
        "Cover strip",
        InventedWeld.CAUTION,
        UnitSystem.METRIC);
  }

  @ParameterizedTest
  @CsvSource({"2, 0.15", "90, 0.15", "180, 0.15", "180, 0.6"})
  void everyAngleAndLengthIsDrawn(double degrees, double length) throws Exception {
    for (Picture picture : pictures(degrees, length, BendLoad.COUPLES)) {
      var image = ImageIO.read(new ByteArrayInputStream(picture.png()));
      assertEquals(picture.height(), image.getHeight());
      assertTrue(picture.height() > 900 && picture.height() < 1600, "height " + picture.height());
      new SvgCheck(picture.svg()).accept(picture);
    }
  }

  @Test
  void theLoadOfTheCaseComesFirst() {
    assertEquals(
        List.of("bend-couples", "bend-edge"),
        pictures(90, 0.15, BendLoad.COUPLES).stream().map(Picture::name).toList());
    assertEquals(
        List.of("bend-edge", "bend-couples"),
        pictures(90, 0.15, BendLoad.EDGE).stream().map(Picture::name).toList());
  }

  @Test
  void theDescriptionSaysWhatTheShapesShow() {
    String words = pictures(90, 0.15, BendLoad.COUPLES).get(0).description();
    assertTrue(words.contains("before welding: kink factor 1.0"), words);
    assertTrue(words.contains("even an unwelded strip folds"), words);
  }
}
