package afterweld.casefile;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/**
 * The text of a case with the arc efficiency of its passes put in: everything else, remarks
 * included, stays as the user wrote it. What the fit found that no key holds stands on top as a
 * remark. A bead width gives way to the efficiency, since it would set another.
 */
public final class FittedCase {
  private final String text;
  private final List<Edit> edits = new ArrayList<>();

  private FittedCase(String text) {
    this.text = text;
  }

  /** A stretch of the text and what takes its place. */
  private record Edit(int from, int to, String put) {}

  /**
   * The new text.
   *
   * @param text the case as read without faults
   * @param positions where its keys stand
   * @param efficiencies one for each pass
   * @param remarks lines for the top; a JSON file, which knows no remarks, gets none
   */
  public static String of(
      String text, Positions positions, List<Double> efficiencies, List<String> remarks) {
    FittedCase fitted = new FittedCase(text);
    for (int pass = 0; pass < efficiencies.size(); pass++) {
      fitted.edit("/passes/" + pass, positions, efficiencies.get(pass));
    }
    return fitted.remarked(remarks) + fitted.applied();
  }

  /** A text that begins with a brace is JSON. */
  private String remarked(List<String> remarks) {
    return text.stripLeading().startsWith("{")
        ? ""
        : remarks.stream().map(line -> "# " + line + "\n").collect(Collectors.joining());
  }

  private void edit(String pass, Positions positions, double efficiency) {
    String value = String.format(Locale.ROOT, "%.4f", efficiency);
    int process = offset(positions.place(pass + "/process"));
    for (String key : List.of("bead_width", "efficiency")) {
      if (positions.holds(pass + "/" + key)) {
        replace(key, offset(positions.place(pass + "/" + key)), value);
        return;
      }
    }
    insert(process, value);
  }

  private void replace(String key, int at, String value) {
    int from = text.lastIndexOf(key, at);
    edits.add(new Edit(from, from + key.length(), "efficiency"));
    edits.add(new Edit(at, end(at), value));
  }

  /** Before the key of the process: in a line of its own where the pass is written in lines. */
  private void insert(int at, String value) {
    int key = text.lastIndexOf("process", at);
    boolean quoted = key > 0 && (text.charAt(key - 1) == '"' || text.charAt(key - 1) == '\'');
    int from = quoted ? key - 1 : key;
    String name =
        quoted ? text.charAt(key - 1) + "efficiency" + text.charAt(key - 1) : "efficiency";
    edits.add(new Edit(from, from, name + ": " + value + (inBraces(from) ? ", " : line(from))));
  }

  private boolean inBraces(int at) {
    int before = at - 1;
    while (before >= 0 && Character.isWhitespace(text.charAt(before))) {
      before--;
    }
    return before >= 0 && (text.charAt(before) == '{' || text.charAt(before) == ',');
  }

  private String line(int at) {
    int start = text.lastIndexOf('\n', at - 1) + 1;
    return "\n" + " ".repeat(at - start);
  }

  /** Where a value ends: behind its quotes, or before what may follow a plain one. */
  private int end(int at) {
    char first = text.charAt(at);
    if (first == '"' || first == '\'') {
      return text.indexOf(first, at + 1) + 1;
    }
    int end = at;
    while (end < text.length() && ",}]\n\r".indexOf(text.charAt(end)) < 0 && !remark(end)) {
      end++;
    }
    return text.substring(0, end).stripTrailing().length();
  }

  private boolean remark(int at) {
    return text.charAt(at) == '#' && Character.isWhitespace(text.charAt(at - 1));
  }

  private int offset(Place place) {
    int start = 0;
    for (int line = 1; line < place.line(); line++) {
      start = text.indexOf('\n', start) + 1;
    }
    return text.offsetByCodePoints(start, place.column() - 1);
  }

  private String applied() {
    StringBuilder changed = new StringBuilder(text);
    edits.stream()
        .sorted(Comparator.comparingInt(Edit::from).reversed())
        .forEach(edit -> changed.replace(edit.from(), edit.to(), edit.put()));
    return changed.toString();
  }
}
