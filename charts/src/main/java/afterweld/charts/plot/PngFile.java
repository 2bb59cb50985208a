package afterweld.charts.plot;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.zip.CRC32;
import java.util.zip.Deflater;

/**
 * Writes pixels as a PNG file (ISO/IEC 15948): true colour, 8 bits, no filter, no date. Half the
 * time of the JDK's writer, and with the resolution in the header.
 */
final class PngFile {
  private static final byte[] SIGNATURE = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n'};
  private static final int PIXELS_PER_METRE = 6299; // 160 per inch
  private static final int COMPRESSION = 5;

  private PngFile() {}

  /**
   * The bytes of the file.
   *
   * @param image pixels of type {@link BufferedImage#TYPE_INT_RGB}
   */
  static byte[] of(BufferedImage image) {
    ByteArrayOutputStream file = new ByteArrayOutputStream(1 << 18);
    file.writeBytes(SIGNATURE);
    file.writeBytes(chunk("IHDR", header(image)));
    file.writeBytes(chunk("pHYs", resolution()));
    file.writeBytes(chunk("IDAT", deflated(rows(image))));
    file.writeBytes(chunk("IEND", new byte[0]));
    return file.toByteArray();
  }

  private static byte[] header(BufferedImage image) {
    ByteBuffer header = ByteBuffer.allocate(13).putInt(image.getWidth()).putInt(image.getHeight());
    return header.put(new byte[] {8, 2, 0, 0, 0}).array();
  }

  private static byte[] resolution() {
    ByteBuffer resolution = ByteBuffer.allocate(9);
    return resolution.putInt(PIXELS_PER_METRE).putInt(PIXELS_PER_METRE).put((byte) 1).array();
  }

  private static byte[] rows(BufferedImage image) {
    int width = image.getWidth();
    int[] row = new int[width];
    ByteBuffer rows = ByteBuffer.allocate(image.getHeight() * (1 + 3 * width));
    for (int y = 0; y < image.getHeight(); y++) {
      image.getRaster().getDataElements(0, y, width, 1, row);
      rows.put((byte) 0);
      for (int pixel : row) {
        rows.put((byte) (pixel >> 16)).put((byte) (pixel >> 8)).put((byte) pixel);
      }
    }
    return rows.array();
  }

  private static byte[] deflated(byte[] rows) {
    Deflater deflater = new Deflater(COMPRESSION);
    deflater.setInput(rows);
    deflater.finish();
    ByteArrayOutputStream packed = new ByteArrayOutputStream(1 << 18);
    byte[] part = new byte[1 << 16];
    while (!deflater.finished()) {
      packed.write(part, 0, deflater.deflate(part));
    }
    deflater.end();
    return packed.toByteArray();
  }

  private static byte[] chunk(String type, byte[] data) {
    ByteBuffer chunk = ByteBuffer.allocate(12 + data.length);
    chunk.putInt(data.length).put(type.getBytes(StandardCharsets.US_ASCII)).put(data);
    CRC32 check = new CRC32();
    check.update(chunk.array(), 4, 4 + data.length);
    return chunk.putInt((int) check.getValue()).array();
  }
}
