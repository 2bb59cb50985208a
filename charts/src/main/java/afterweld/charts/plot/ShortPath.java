package afterweld.charts.plot;

import java.util.StringTokenizer;

/**
 * Shortens the path data of an SVG to less than half: every point is given from the one before
 * instead of from the corner, in tenths of a unit. Letters are outlines of many short pieces, so
 * they make most of a file.
 *
 * <p>The differences are taken between rounded places, so that roundings do not add up.
 */
final class ShortPath {
  private final StringBuilder data = new StringBuilder();
  private long x;
  private long y;
  private long startX;
  private long startY;

  private ShortPath() {}

  /**
   * The same path, shorter.
   *
   * @param absolute path data of the commands M, L, Q, C and Z with a letter before every group
   */
  static String of(String absolute) {
    ShortPath path = new ShortPath();
    StringTokenizer groups = new StringTokenizer(absolute, " MLQCZ", true);
    while (groups.hasMoreTokens()) {
      char command = groups.nextToken().charAt(0);
      if (command != ' ') {
        path.append(command, groups);
      }
    }
    return path.data.toString();
  }

  private void append(char command, StringTokenizer groups) {
    if (command == 'Z') {
      data.append('z');
      x = startX;
      y = startY;
      return;
    }
    int points = points(command);
    data.append(Character.toLowerCase(command));
    long lastX = x;
    long lastY = y;
    for (int i = 0; i < points; i++) {
      lastX = tenths(groups);
      lastY = tenths(groups);
      number(lastX - x);
      number(lastY - y);
    }
    x = lastX;
    y = lastY;
    if (command == 'M') {
      startX = x;
      startY = y;
    }
  }

  private static int points(char command) {
    return switch (command) {
      case 'M', 'L' -> 1;
      case 'Q' -> 2;
      case 'C' -> 3;
      default -> throw new IllegalArgumentException("path command " + command);
    };
  }

  private static long tenths(StringTokenizer groups) {
    String number = groups.nextToken();
    while (number.equals(" ")) {
      number = groups.nextToken();
    }
    return Math.round(10 * Double.parseDouble(number));
  }

  private void number(long tenths) {
    boolean first = Character.isLetter(data.charAt(data.length() - 1));
    if (!first && tenths >= 0) {
      data.append(' ');
    }
    if (tenths % 10 == 0) {
      data.append(tenths / 10);
    } else {
      data.append(tenths < 0 ? "-" : "");
      data.append(Math.abs(tenths) < 10 ? "" : Math.abs(tenths) / 10);
      data.append('.').append(Math.abs(tenths) % 10);
    }
  }
}
