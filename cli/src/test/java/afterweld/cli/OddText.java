package afterweld.cli;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Spoils texts at random, from a seed: bytes, pieces of syntax, numbers, units, names, lines and
 * the way they are nested.
 */
final class OddText {
  private static final Pattern NUMBER = Pattern.compile("(?<![A-Za-z])-?\\d+(?:\\.\\d+)?");
  private static final Pattern UNIT =
      Pattern.compile(
          "(?<=\\d ?)(mm/s|in/min|mm²|mm|in|°C|°F|°F/h|K/min|K/s|min|h|days?|s|%|MPa|ksi|HV|HB|A|V)\\b");
  private static final Pattern WORD = Pattern.compile("[A-Za-z_][A-Za-z_0-9-]+");

  private static final List<String> PIECES =
      List.of(
          "{",
          "}",
          "[",
          "]",
          ":",
          ": ",
          ",",
          "\"",
          "'",
          "-",
          "- ",
          "\n",
          "\t",
          " ",
          "#",
          "&a ",
          "*a",
          "!t ",
          "!!float ",
          "|",
          ">",
          "|2\n",
          "%",
          "%YAML 1.2\n",
          "@",
          "`",
          "?",
          "? ",
          "~",
          "---\n",
          "...\n",
          "null",
          "true",
          "yes",
          "\u0000",
          "\uFEFF",
          "\u2028",
          "\u0085",
          "é",
          "\uD83D\uDE00",
          "\uD800",
          "<<: ",
          "\\",
          "\\u12",
          "\\x",
          "/*",
          "//",
          "{}",
          "[]",
          "{{",
          "]]",
          "\r",
          "\r\n",
          "\u0007",
          "\u007f",
          "0x",
          "=",
          "..");
  private static final List<String> NUMBERS =
      List.of(
          "0",
          "-0",
          "-1",
          "1e-300",
          "1e300",
          "1e999",
          "-1e-9",
          "1e-9",
          "100.00000001",
          "NaN",
          "nan",
          ".nan",
          "inf",
          ".inf",
          "-.inf",
          "Infinity",
          "1/0",
          "0/0",
          "1/3",
          "1 1/2",
          "1,5",
          "0x10",
          "0o17",
          "1_000",
          "1e",
          "1.e5",
          ".5",
          "+5",
          "--5",
          "5.",
          "9".repeat(60),
          "9".repeat(400),
          "0." + "0".repeat(60) + "1",
          "1e-999999999",
          "1e2147483648",
          "12:30",
          "2026-01-01",
          "0.3",
          "3650",
          "4.9e-324",
          "1.7976931348623157e308",
          "٣",
          "½",
          "−5");
  private static final List<String> UNITS =
      List.of(
          "mm", "in", "\"", "ft", "m", "°C", "°F", "K", "s", "min", "h", "days", "years", "%",
          "MPa", "ksi", "psi", "bar", "HV", "HB", "HRB", "A", "kA", "V", "mm/s", "in/min", "K/s",
          "K/h", "mm²", "", " ", "MM", "°", "deg", "µm", "kg", "mm mm", "%%");

  private final Random random;

  OddText(long seed) {
    this.random = new Random(seed);
  }

  /** The text with one to four things spoilt, as bytes. */
  byte[] spoil(String text, List<String> others) {
    String spoilt = text;
    int changes = 1 + random.nextInt(4);
    for (int i = 0; i < changes; i++) {
      spoilt = change(spoilt, others);
    }
    byte[] bytes = spoilt.getBytes(StandardCharsets.UTF_8);
    return random.nextInt(12) == 0 && bytes.length > 0 ? withOddBytes(bytes) : bytes;
  }

  private String change(String text, List<String> others) {
    return switch (random.nextInt(14)) {
      case 0, 1 -> insert(text, oneOf(PIECES));
      case 2 -> cut(text);
      case 3, 4, 5 -> replaceOne(text, NUMBER, oneOf(NUMBERS));
      case 6 -> replaceOne(text, UNIT, oneOf(UNITS));
      case 7 -> replaceOne(text, WORD, word(oneOf(others)));
      case 8 -> replaceOne(text, NUMBER, number(oneOf(others)));
      case 9 -> moveLine(text);
      case 10 -> indent(text);
      case 11 -> withLineOf(text, oneOf(others));
      case 12 -> nest(text);
      default -> insert(text, oneCharacter());
    };
  }

  private String insert(String text, String piece) {
    int at = random.nextInt(text.length() + 1);
    return text.substring(0, at) + piece + text.substring(at);
  }

  private String cut(String text) {
    int from = random.nextInt(text.length() + 1);
    int length = random.nextInt(random.nextInt(10) == 0 ? 200 : 8);
    return text.substring(0, from) + text.substring(Math.min(text.length(), from + length));
  }

  private String replaceOne(String text, Pattern what, String by) {
    Matcher found = what.matcher(text);
    List<int[]> places = new ArrayList<>();
    while (found.find()) {
      places.add(new int[] {found.start(), found.end()});
    }
    if (places.isEmpty()) {
      return insert(text, by);
    }
    int[] place = places.get(random.nextInt(places.size()));
    return text.substring(0, place[0]) + by + text.substring(place[1]);
  }

  private String word(String text) {
    return found(WORD, text);
  }

  private String number(String text) {
    return found(NUMBER, text);
  }

  private String found(Pattern pattern, String text) {
    List<String> all = pattern.matcher(text).results().map(found -> found.group()).toList();
    return all.isEmpty() ? "x" : oneOf(all);
  }

  private String moveLine(String text) {
    List<String> lines = lines(text);
    String line = lines.remove(random.nextInt(lines.size()));
    lines.add(random.nextInt(lines.size() + 1), line);
    return String.join("\n", lines);
  }

  private String indent(String text) {
    List<String> lines = lines(text);
    int at = random.nextInt(lines.size());
    String line = lines.get(at);
    lines.set(at, random.nextBoolean() ? "  " + line : line.strip());
    return String.join("\n", lines);
  }

  private String withLineOf(String text, String other) {
    List<String> lines = lines(text);
    lines.add(random.nextInt(lines.size() + 1), oneOf(lines(other)));
    return String.join("\n", lines);
  }

  /** Puts a stretch into brackets or braces, many deep now and then. */
  private String nest(String text) {
    int depth = random.nextInt(20) == 0 ? 400 : 1 + random.nextInt(3);
    boolean list = random.nextBoolean();
    int from = random.nextInt(text.length() + 1);
    int to = Math.min(text.length(), from + random.nextInt(30));
    String open = (list ? "[" : "{a: ").repeat(depth);
    return text.substring(0, from)
        + open
        + text.substring(from, to)
        + (list ? "]" : "}").repeat(depth)
        + text.substring(to);
  }

  private byte[] withOddBytes(byte[] bytes) {
    byte[] odd = Arrays.copyOf(bytes, bytes.length);
    for (int i = 0; i <= random.nextInt(3); i++) {
      odd[random.nextInt(odd.length)] = (byte) random.nextInt(256);
    }
    return odd;
  }

  private String oneCharacter() {
    int point = random.nextInt(3) == 0 ? random.nextInt(0x3000) : 32 + random.nextInt(95);
    return new String(Character.toChars(point));
  }

  private static List<String> lines(String text) {
    return new ArrayList<>(Arrays.asList(text.split("\n", -1)));
  }

  <T> T oneOf(List<T> choices) {
    return choices.get(random.nextInt(choices.size()));
  }
}
