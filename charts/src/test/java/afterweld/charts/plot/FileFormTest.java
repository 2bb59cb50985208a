package afterweld.charts.plot;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;

class FileFormTest {
  private static final Pattern TOKEN = Pattern.compile("[mlqcz]|-?[0-9]*\\.?[0-9]+");

  @Test
  void aPngHoldsThePixelsItWasGiven() throws IOException {
    BufferedImage image = new BufferedImage(37, 23, BufferedImage.TYPE_INT_RGB);
    Random random = new Random(1);
    for (int i = 0; i < 37 * 23; i++) {
      image.setRGB(i % 37, i / 37, random.nextInt());
    }
    BufferedImage read = ImageIO.read(new ByteArrayInputStream(PngFile.of(image)));
    for (int i = 0; i < 37 * 23; i++) {
      assertEquals(image.getRGB(i % 37, i / 37), read.getRGB(i % 37, i / 37));
    }
  }

  @Test
  void aPngHoldsTheResolutionAndNoDate() {
    byte[] file = PngFile.of(new BufferedImage(4, 4, BufferedImage.TYPE_INT_RGB));
    assertEquals(List.of("IHDR", "pHYs", "IDAT", "IEND"), chunks(file));
    // 160 dots per inch of 25.4 mm
    assertEquals(160 / 0.0254, ByteBuffer.wrap(file).getInt(41), 0.5);
  }

  private static List<String> chunks(byte[] file) {
    List<String> types = new ArrayList<>();
    ByteBuffer chunks = ByteBuffer.wrap(file).position(8);
    while (chunks.hasRemaining()) {
      int length = chunks.getInt();
      byte[] type = new byte[4];
      chunks.get(type);
      types.add(new String(type, StandardCharsets.US_ASCII));
      chunks.position(chunks.position() + length + 4);
    }
    return types;
  }

  @Test
  void aShortPathLeadsToTheSamePlaces() {
    Random random = new Random(7);
    for (int i = 0; i < 50; i++) {
      List<double[]> places = new ArrayList<>();
      String absolute = randomPath(random, places);
      List<double[]> reached = places(ShortPath.of(absolute));
      assertEquals(places.size(), reached.size());
      for (int j = 0; j < places.size(); j++) {
        assertEquals(places.get(j)[0], reached.get(j)[0], 0.0501);
        assertEquals(places.get(j)[1], reached.get(j)[1], 0.0501);
      }
    }
  }

  private static String randomPath(Random random, List<double[]> places) {
    StringBuilder path = new StringBuilder();
    for (int part = 0; part < 3; part++) {
      for (String command : List.of("M", "L", "Q", "C", "L")) {
        path.append(command);
        for (int i = 0; i < "MLQC".indexOf(command) + (command.equals("M") ? 1 : 0); i++) {
          double[] place = {random.nextInt(160000) / 100.0, random.nextInt(200000) / 100.0 - 500};
          places.add(place);
          path.append(String.format(Locale.ROOT, "%.2f %.2f ", place[0], place[1]));
        }
      }
      path.append("Z ");
    }
    return path.toString();
  }

  /** Every point a relative path names, as places; an own reading of the SVG path grammar. */
  private static List<double[]> places(String relative) {
    Matcher token = TOKEN.matcher(relative);
    List<double[]> places = new ArrayList<>();
    double[] pen = {0, 0};
    double[] start = pen;
    while (token.find()) {
      char command = token.group().charAt(0);
      if (command == 'z') {
        pen = start;
      } else {
        double[] next = pen;
        for (int i = 0; i < ("mlqc".indexOf(command) + (command == 'm' ? 1 : 0)); i++) {
          next = new double[] {pen[0] + number(token), pen[1] + number(token)};
          places.add(next);
        }
        pen = next;
        start = command == 'm' ? next : start;
      }
    }
    return places;
  }

  private static double number(Matcher token) {
    if (!token.find()) {
      throw new AssertionError("a number is missing");
    }
    return Double.parseDouble(token.group());
  }

  @Test
  void everyLetterOutlineIsOfTheCommandsThatShortPathReads() {
    Path2D outline = new Path2D.Double();
    outline.append(
        Typeface.bold(20)
            .createGlyphVector(new java.awt.font.FontRenderContext(null, true, true), "ag%8&")
            .getOutline(),
        false);
    double[] ends = new double[6];
    for (PathIterator i = outline.getPathIterator(null); !i.isDone(); i.next()) {
      int kind = i.currentSegment(ends);
      assertEquals(true, kind <= PathIterator.SEG_CLOSE);
    }
  }
}
