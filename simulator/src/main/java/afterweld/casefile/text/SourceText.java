package afterweld.casefile.text;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Optional;

/** From the bytes of a file to its text: UTF-8, with or without byte order mark, any line ends. */
public final class SourceText {
  /** A case file has a few kilobytes; this much is never one. */
  static final int MOST_BYTES = 256_000;

  private static final char BYTE_ORDER_MARK = '\uFEFF';

  private SourceText() {}

  /** The text with line feeds as line ends, or empty when faults were found. */
  public static Optional<String> decode(byte[] bytes, FaultCollector faults) {
    if (bytes.length > MOST_BYTES) {
      faults.add(
          Place.START,
          "found a file of "
              + bytes.length
              + " bytes; expected a case file of at most "
              + MOST_BYTES
              + " bytes");
      return Optional.empty();
    }
    return characters(bytes, faults)
        .map(SourceText::withoutMark)
        .map(text -> text.replace("\r\n", "\n").replace('\r', '\n'))
        .filter(text -> printable(text, faults));
  }

  private static Optional<String> characters(byte[] bytes, FaultCollector faults) {
    CharsetDecoder decoder = StandardCharsets.UTF_8.newDecoder();
    ByteBuffer in = ByteBuffer.wrap(bytes);
    CharBuffer out = CharBuffer.allocate(bytes.length + 1);
    CoderResult result = decoder.decode(in, out, true);
    String text = out.flip().toString();
    if (result.isError()) {
      faults.add(
          placeAfter(withoutMark(text)),
          String.format(
              Locale.ROOT,
              "found the byte 0x%02X, which is not UTF-8; expected a text saved as UTF-8 (the degree"
                  + " sign may be left out: 325 F)",
              bytes[in.position()]));
      return Optional.empty();
    }
    return Optional.of(text);
  }

  private static String withoutMark(String text) {
    return !text.isEmpty() && text.charAt(0) == BYTE_ORDER_MARK ? text.substring(1) : text;
  }

  private static boolean printable(String text, FaultCollector faults) {
    int before = faults.count();
    for (int i = 0; i < text.length() && !faults.full(); i++) {
      char character = text.charAt(i);
      if (forbidden(character)) {
        faults.add(
            placeAfter(text.substring(0, i)),
            String.format(
                Locale.ROOT, "found the invisible character U+%04X; remove it", (int) character));
      }
    }
    return faults.count() == before;
  }

  /** Control characters, and line ends that editors do not count as lines. */
  private static boolean forbidden(char character) {
    if (character == '\n' || character == '\t') {
      return false;
    }
    return Character.isISOControl(character)
        || character == '\u2028'
        || character == '\u2029'
        || character == BYTE_ORDER_MARK
        || character == '\uFFFE'
        || character == '\uFFFF';
  }

  private static Place placeAfter(String text) {
    int line = 1;
    int lineStart = 0;
    String unified = text.replace("\r\n", "\n").replace('\r', '\n');
    for (int i = 0; i < unified.length(); i++) {
      if (unified.charAt(i) == '\n') {
        line++;
        lineStart = i + 1;
      }
    }
    return new Place(line, unified.length() - lineStart + 1);
  }
}
