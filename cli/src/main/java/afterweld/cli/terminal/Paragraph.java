package afterweld.cli.terminal;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Plain text in lines of at most 80 columns. */
public final class Paragraph {
  private static final int WIDTH = 80;
  private static final Pattern BLANKS = Pattern.compile("\\s+");

  private Paragraph() {}

  /** A sentence, its further lines indented by two. */
  public static String of(String text) {
    return indented("", "  ", text);
  }

  /** A sentence behind a lead such as {@code "- "}, its further lines indented by as much. */
  public static String hanging(String lead, String text) {
    return indented(lead, " ".repeat(lead.length()), text);
  }

  /** Each sentence as a paragraph of its own. */
  public static String each(List<String> sentences) {
    return sentences.stream().map(Paragraph::of).collect(Collectors.joining());
  }

  private static String indented(String lead, String indent, String text) {
    List<String> lines = lines(text, WIDTH - indent.length());
    return lead + String.join("\n" + indent, lines) + "\n";
  }

  /** A text cut between words; a word longer than the width stands alone. */
  public static List<String> lines(String text, int width) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String word : BLANKS.split(printable(text), 0)) {
      if (line.length() > 0 && line.length() + 1 + word.length() > width) {
        lines.add(line.toString());
        line.setLength(0);
      }
      line.append(line.length() == 0 ? "" : " ").append(word);
    }
    lines.add(line.toString());
    return lines;
  }

  /** Text from a file without what would move a terminal's cursor. */
  public static String printable(String text) {
    return text.replaceAll("\\p{Cntrl}", " ").strip();
  }
}
