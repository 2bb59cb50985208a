package afterweld.cli.terminal;

import java.util.ArrayList;
import java.util.List;

/**
 * Rows of words and numbers under one head, in columns as wide as they need to be. Columns whose
 * head starts with a blank hold numbers and stand to the right.
 */
public final class TextTable {
  private static final String GAP = "  ";

  private final List<String> head;
  private final List<List<String>> rows = new ArrayList<>();

  public TextTable(String... head) {
    this.head = List.of(head);
  }

  /** Adds a row with a cell for every column. */
  public TextTable row(String... cells) {
    if (cells.length != head.size()) {
      throw new IllegalArgumentException(cells.length + " cells in " + head.size() + " columns");
    }
    rows.add(List.of(cells));
    return this;
  }

  /** The table, a line each row. */
  public String text() {
    StringBuilder text = new StringBuilder(line(head.stream().map(String::strip).toList()));
    rows.forEach(row -> text.append(line(row)));
    return text.toString();
  }

  private String line(List<String> cells) {
    StringBuilder line = new StringBuilder();
    for (int column = 0; column < cells.size(); column++) {
      line.append(column == 0 ? "" : GAP).append(cell(cells.get(column).stripTrailing(), column));
    }
    return line.toString().stripTrailing() + "\n";
  }

  private String cell(String text, int column) {
    String blanks = " ".repeat(width(column) - length(text));
    return head.get(column).startsWith(" ") ? blanks + text : text + blanks;
  }

  private int width(int column) {
    int width = length(head.get(column).strip());
    for (List<String> row : rows) {
      width = Math.max(width, length(row.get(column).stripTrailing()));
    }
    return width;
  }

  private static int length(String text) {
    return text.codePointCount(0, text.length());
  }
}
