package afterweld.cli;

import java.util.List;
import java.util.regex.Pattern;

/** The tables of a page, as rows of cells without their marks. */
final class HtmlTables {
  private static final Pattern TABLE = Pattern.compile("(?s)<table.*?</table>");
  private static final Pattern ROW = Pattern.compile("(?s)<tr.*?</tr>");
  private static final Pattern CELL = Pattern.compile("(?s)<t[hd][^>]*>(.*?)</t[hd]>");

  private final String html;

  HtmlTables(String html) {
    this.html = html;
  }

  /** The rows of the first table whose heading has a cell that begins so, the heading first. */
  List<List<String>> withHeading(String cell) {
    return TABLE
        .matcher(html)
        .results()
        .map(table -> rows(table.group()))
        .filter(rows -> rows.get(0).stream().anyMatch(heading -> heading.startsWith(cell)))
        .findFirst()
        .orElseThrow(() -> new AssertionError("no table with " + cell));
  }

  private static List<List<String>> rows(String table) {
    return ROW.matcher(table).results().map(row -> cells(row.group())).toList();
  }

  private static List<String> cells(String row) {
    return CELL.matcher(row)
        .results()
        .map(cell -> cell.group(1).replaceAll("<[^>]+>", "").replaceAll("\\s+", " ").strip())
        .toList();
  }
}
