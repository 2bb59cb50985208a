package afterweld.casefile;

import afterweld.casefile.text.Place;
import afterweld.casefile.text.Positions;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/**
 * The text of a case with the arc efficiency of its passes put in, and under {@code spread} how
 * well it is known: everything else, remarks included, stays as the user wrote it. What the fit
 * found that no key holds stands on top as a remark. A bead width gives way to the efficiency,
 * since it would set another.
 */
public final class FittedCase {
  /** The most that {@code spread} takes (assumed). */
  private static final double WIDEST = 0.5;

  /** A spread of nothing would be more than a fit can know (assumed). */
  private static final double NARROWEST = 0.001;

  private static final String SPREAD = "/spread";
  private static final String KNOWN_TO = "arc_efficiency";
  private static final List<String> SPREAD_KEYS =
      List.of(
          "runs",
          "seed",
          "dilution",
          "bead_width",
          "travel_speed",
          "furnace_temperature",
          "soak",
          "quench_delay",
          "ageing_time",
          "composition");

  private final String text;
  private final Positions positions;
  private final List<Edit> edits = new ArrayList<>();

  private FittedCase(String text, Positions positions) {
    this.text = text;
    this.positions = positions;
  }

  /** A stretch of the text and what takes its place. */
  private record Edit(int from, int to, String put) {}

  /**
   * The new text.
   *
   * @param text the case as read without faults
   * @param positions where its keys stand
   * @param efficiencies one for each pass
   * @param half half-width of the efficiency's 95 % interval, relative; empty if nobody should go
   *     by it: then {@code spread} stays as it is
   * @param remarks lines for the top; a JSON file, which knows no remarks, gets none
   */
  public static String of(
      String text,
      Positions positions,
      List<Double> efficiencies,
      OptionalDouble half,
      List<String> remarks) {
    FittedCase fitted = new FittedCase(text, positions);
    half.ifPresent(known -> fitted.spread(halfWidth(known)));
    for (int pass = 0; pass < efficiencies.size(); pass++) {
      fitted.edit("/passes/" + pass, efficiencies.get(pass));
    }
    return fitted.remarked(remarks) + fitted.applied();
  }

  /** In per cent, rounded up to one decimal: never surer than the fit. */
  private static String halfWidth(double half) {
    double kept = Math.max(NARROWEST, Math.min(WIDEST, half));
    return String.format(Locale.ROOT, "%.1f %%", Math.ceil(kept * 1e3 - 1e-6) / 10);
  }

  /** A text that begins with a brace is JSON. */
  private String remarked(List<String> remarks) {
    return text.stripLeading().startsWith("{")
        ? ""
        : remarks.stream().map(line -> "# " + line + "\n").collect(Collectors.joining());
  }

  private void spread(String half) {
    if (positions.holds(SPREAD + "/" + KNOWN_TO)) {
      int at = offset(positions.place(SPREAD + "/" + KNOWN_TO));
      edits.add(new Edit(at, end(at), inQuotes(quote(at), half)));
    } else if (positions.holds(SPREAD)) {
      join(half);
    } else {
      int passes = offset(positions.place("/passes"));
      String quote = quote(passes);
      String value = "{" + inQuotes(quote, KNOWN_TO) + ": " + inQuotes(quote, half) + "}";
      String entry = inQuotes(quote, "spread") + ": " + value;
      int at = braced() ? passes : aboveRemarks(passes);
      edits.add(new Edit(at, at, braced() ? entry + ", " : indent(passes) + entry + "\n"));
    }
  }

  /** The line above which a key stands with the remarks right over it. */
  private int aboveRemarks(int at) {
    int start = lineStart(at);
    while (start > 0
        && text.substring(lineStart(start - 1), start).stripLeading().startsWith("#")) {
      start = lineStart(start - 1);
    }
    return start;
  }

  private int lineStart(int at) {
    return text.lastIndexOf('\n', at - 1) + 1;
  }

  private String indent(int at) {
    return " ".repeat(at - lineStart(at));
  }

  /** Before the first of the keys that are there; without any the braces are empty. */
  private void join(String half) {
    Optional<String> first =
        SPREAD_KEYS.stream()
            .filter(key -> positions.holds(SPREAD + "/" + key))
            .min(Comparator.comparing(key -> positions.place(SPREAD + "/" + key)));
    int from =
        first
            .map(key -> keyStart(key, offset(positions.place(SPREAD + "/" + key))))
            .orElseGet(() -> text.indexOf('{', offset(positions.place(SPREAD))) + 1);
    String quote = quote(first.isPresent() ? from : offset(positions.place(SPREAD)));
    String entry = inQuotes(quote, KNOWN_TO) + ": " + inQuotes(quote, half);
    String next = first.isEmpty() ? "" : inBraces(from) ? ", " : line(from);
    edits.add(new Edit(from, from, entry + next));
  }

  /** Where a key begins whose value is at a place, its quotes included. */
  private int keyStart(String key, int value) {
    int from = text.lastIndexOf(key, value);
    return from > 0 && !quote(from - 1).isEmpty() ? from - 1 : from;
  }

  private String quote(int at) {
    char first = text.charAt(at);
    return first == '"' || first == '\'' ? String.valueOf(first) : "";
  }

  private static String inQuotes(String quote, String words) {
    return quote + words + quote;
  }

  /** Whether the whole file stands in braces, as JSON does, be it under remarks. */
  private boolean braced() {
    return text.lines()
        .map(String::strip)
        .filter(line -> !line.isEmpty() && !line.startsWith("#") && !line.equals("---"))
        .findFirst()
        .filter(line -> line.startsWith("{"))
        .isPresent();
  }

  private void edit(String pass, double efficiency) {
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
    int from = keyStart("process", at);
    String name = inQuotes(quote(from), "efficiency");
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
    return "\n" + indent(at);
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
