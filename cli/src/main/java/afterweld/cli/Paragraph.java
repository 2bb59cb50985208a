package afterweld.cli;

import java.util.regex.Pattern;

/** Plain text in lines of at most 80 columns. */
final class Paragraph {
  private static final int WIDTH = 80;
  private static final Pattern WORDS = Pattern.compile("\\s+");

  private Paragraph() {}

  /** A sentence, its further lines indented by two. */
  static String of(String text) {
    return hanging("", text);
  }

  /** A sentence behind a lead such as {@code "- "}, its further lines indented by as much. */
  static String hanging(String lead, String text) {
    String indent = lead.isEmpty() ? "  " : " ".repeat(lead.length());
    StringBuilder lines = new StringBuilder();
    StringBuilder line = new StringBuilder(lead);
    for (String word : WORDS.split(printable(text), 0)) {
      boolean empty = line.toString().isBlank() || line.length() == lead.length();
      if (!empty && line.length() + 1 + word.length() > WIDTH) {
        lines.append(line).append('\n');
        line = new StringBuilder(indent);
        empty = true;
      }
      line.append(empty ? "" : " ").append(word);
    }
    return lines.append(line).append('\n').toString();
  }

  /** Text from a file without what would move a terminal's cursor. */
  static String printable(String text) {
    return text.replaceAll("\\p{Cntrl}", " ").strip();
  }
}
