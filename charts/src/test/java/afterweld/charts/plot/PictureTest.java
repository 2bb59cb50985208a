package afterweld.charts.plot;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import afterweld.charts.InventedWeld;
import afterweld.charts.ProfileCharts;
import afterweld.charts.SvgCheck;
import afterweld.choice.answer.Requirement;
import afterweld.quantity.UnitSystem;
import afterweld.section.SectionProfile;
import afterweld.weld.Warning;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class PictureTest {
  private static final Path FOLDER = Path.of("target", "pictures");

  /** Cases that a chart must survive; their pictures land in the build folder to be looked at. */
  enum Sample {
    PLAIN(InventedWeld.symmetric(), UnitSystem.METRIC),
    TWO_SIDED(InventedWeld.twoSided(), UnitSystem.METRIC),
    TWO_STATES(InventedWeld.twoStates(), UnitSystem.US),
    STAGES(InventedWeld.manyStages().inPasses(3), UnitSystem.METRIC),
    UNKNOWN_WELD_METAL(
        InventedWeld.symmetric()
            .withUnknownWeldMetal()
            .warning(
                new Warning("weld-metal-not-modelled", "The weld metal is not modelled."),
                new Warning("dilution-assumed", "The dilution is assumed.")),
        UnitSystem.US),
    WIDE_TUBE(
        InventedWeld.symmetric()
            .withLegs(0.3)
            .onTube()
            .titled(
                "A title so long that it has to be broken, because a picture of this width"
                    + " holds no more than some hundred and thirty letters in one line <&>"),
        UnitSystem.METRIC);

    private final SectionProfile profile;
    private final UnitSystem units;

    Sample(InventedWeld weld, UnitSystem units) {
      this.profile = weld.profile();
      this.units = units;
    }

    List<Picture> pictures() {
      return ProfileCharts.of(profile, InventedWeld.requirement(), units);
    }

    Path file(Picture picture, String ending) {
      return FOLDER.resolve(name().toLowerCase(Locale.ROOT) + "-" + picture.name() + ending);
    }
  }

  @ParameterizedTest
  @EnumSource
  void isDrawnAtTheStatedSize(Sample sample) throws IOException {
    Files.createDirectories(FOLDER);
    for (Picture picture : sample.pictures()) {
      byte[] png = picture.png();
      Files.write(sample.file(picture, ".png"), png);
      var image = ImageIO.read(new ByteArrayInputStream(png));
      assertEquals(1600, image.getWidth());
      assertEquals(picture.height(), image.getHeight());
    }
  }

  @ParameterizedTest
  @EnumSource
  void isWrittenAsSvg(Sample sample) throws Exception {
    Files.createDirectories(FOLDER);
    for (Picture picture : sample.pictures()) {
      String svg = picture.svg();
      Files.writeString(sample.file(picture, ".svg"), svg);
      new SvgCheck(svg).accept(picture);
    }
  }

  @Test
  void theThreePicturesComeInOrder() {
    List<String> names = Sample.PLAIN.pictures().stream().map(Picture::name).toList();
    assertEquals(List.of("hardness", "strength", "temperature"), names);
  }

  @Test
  void sameResultSameBytesOnOneThreadAndOnMany() {
    List<Picture> pictures = Sample.PLAIN.pictures();
    List<Picture.Files> drawn = Picture.drawAll(Sample.PLAIN.pictures());
    for (int i = 0; i < pictures.size(); i++) {
      assertEquals(pictures.get(i).name(), drawn.get(i).name());
      assertArrayEquals(pictures.get(i).png(), drawn.get(i).png());
      assertEquals(pictures.get(i).svg(), drawn.get(i).svg());
    }
  }

  @Test
  void theLanguageOfTheMachineDoesNotMatter() {
    Locale machine = Locale.getDefault();
    String svg = Sample.TWO_STATES.pictures().get(1).svg();
    try {
      Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
      assertEquals(svg, Sample.TWO_STATES.pictures().get(1).svg());
    } finally {
      Locale.setDefault(machine);
    }
  }

  @Test
  void theDescriptionSaysWhatTheCurvesSay() {
    String words = Sample.PLAIN.pictures().get(0).description();
    assertTrue(words.contains("hardness before welding: 107 HV throughout."), words);
    assertTrue(words.contains("hardness as welded (after 24 h): lowest 51 HV at −6.2 mm."), words);
    assertTrue(words.contains("Required: 74 HV."), words);
    assertTrue(words.contains("not a design value"), words);
  }

  @Test
  void nothingRequiredNothingSaid() {
    var pictures =
        ProfileCharts.of(InventedWeld.symmetric().profile(), Requirement.NONE, UnitSystem.METRIC);
    assertTrue(pictures.stream().noneMatch(picture -> picture.description().contains("equired")));
  }
}
