package afterweld.charts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import afterweld.charts.plot.Ink;
import afterweld.charts.plot.LineLook;
import afterweld.charts.plot.Typeface;
import java.awt.Color;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class StyleTest {
  private static final int STATES = 10;

  private static List<LineLook> stateLooks() {
    return IntStream.range(0, STATES).mapToObj(state -> StateLooks.of(state, STATES)).toList();
  }

  private static List<LineLook> cycleLooks() {
    return IntStream.range(0, 6).mapToObj(CyclePanel::look).toList();
  }

  /** A quarter of the range from black to white is told apart on any printer. */
  @Test
  void theMainStatesDifferInAGreyPrint() {
    double before = Ink.lightness(StateLooks.of(0, 3).color());
    double welded = Ink.lightness(StateLooks.of(1, 3).color());
    double after = Ink.lightness(StateLooks.of(2, 3).color());
    assertTrue(before - welded > 50, before + " " + welded);
    assertTrue(welded - after > 50, welded + " " + after);
  }

  @Test
  void noTwoLinesDifferByColourAlone() {
    for (List<LineLook> looks : List.of(stateLooks(), cycleLooks())) {
      for (int i = 0; i < looks.size(); i++) {
        for (int j = 0; j < i; j++) {
          assertNotEquals(withoutColour(looks.get(i)), withoutColour(looks.get(j)));
        }
      }
    }
  }

  private static String withoutColour(LineLook look) {
    return look.dash() + " " + look.marker() + " " + Math.round(look.width());
  }

  /** Contrast of at least 2.5 to 1 for broad lines, by the luminance of WCAG 2.1 (W3C, 2018). */
  @Test
  void everyLineStandsOutFromThePaper() {
    for (LineLook look : stateLooks()) {
      double needed = look.width() >= 8 ? 2.5 : 3;
      assertTrue(contrastToWhite(look.color()) >= needed, look.toString());
      assertEquals(255, look.color().getAlpha());
    }
  }

  @Test
  void wordsAreDarkerThanTheirLine() {
    for (LineLook look : stateLooks()) {
      assertTrue(contrastToWhite(Ink.forWords(look.color())) >= 4.5, look.toString());
    }
  }

  private static double contrastToWhite(Color color) {
    double luminance =
        0.2126 * linear(color.getRed())
            + 0.7152 * linear(color.getGreen())
            + 0.0722 * linear(color.getBlue());
    return 1.05 / (luminance + 0.05);
  }

  private static double linear(int channel) {
    double share = channel / 255.0;
    return share <= 0.03928 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
  }

  @Test
  void theTypefaceComesFromTheResourcesWithItsLicence() {
    assertEquals("Manrope Medium", Typeface.plain(20).getFontName());
    assertEquals("Manrope Bold", Typeface.bold(20).getFontName());
    assertNotNull(Typeface.class.getResource("font/OFL.txt"));
  }

  @Test
  void theTypefaceHasEverySignTheChartsUse() {
    assertEquals(-1, Typeface.plain(20).canDisplayUpTo("−°±·…–%()<>&,;:0123456789"));
    assertEquals(-1, Typeface.bold(20).canDisplayUpTo("−°±·…–%()<>&,;:0123456789"));
  }
}
