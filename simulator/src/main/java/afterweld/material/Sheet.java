package afterweld.material;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * The lines about one subject, an alloy or a pair of base and filler, as a data sheet to look
 * things up in.
 *
 * @param subject what the sheet is about, for messages
 * @param rows its lines, in file order
 */
record Sheet(String subject, List<DataRow> rows) {

  /** Splits lines into one sheet per subject, in order of first appearance. */
  static Map<String, Sheet> bySubject(List<DataRow> rows, Function<DataRow, String> subject) {
    Map<String, List<DataRow>> groups =
        rows.stream()
            .collect(
                Collectors.groupingBy(
                    subject, LinkedHashMap::new, Collectors.toUnmodifiableList()));
    Map<String, Sheet> sheets = new LinkedHashMap<>();
    groups.forEach((name, lines) -> sheets.put(name, new Sheet(name, lines)));
    return sheets;
  }

  /** All lines of a property. */
  List<DataRow> all(String property) {
    return rows.stream().filter(row -> row.property().equals(property)).toList();
  }

  /** The line of a property for a qualifier, if there is one. */
  Optional<DataRow> find(String property, String qualifier) {
    return all(property).stream().filter(row -> row.qualifier().equals(qualifier)).findFirst();
  }

  /** The line of a property for a qualifier, which must be there. */
  DataRow need(String property, String qualifier) {
    return find(property, qualifier).orElseThrow(() -> missing(property, qualifier));
  }

  /** The one line of a property that needs no qualifier. */
  DataRow need(String property) {
    return need(property, "");
  }

  /** The lines of a property, of which there must be one. */
  List<DataRow> some(String property) {
    List<DataRow> found = all(property);
    if (found.isEmpty()) {
      throw missing(property, "");
    }
    return found;
  }

  List<Fact> facts() {
    return rows.stream().map(DataRow::fact).toList();
  }

  /** What to throw where a needed line is missing. */
  IllegalStateException missing(String property, String qualifier) {
    return new IllegalStateException(
        (subject + ": the data files have no " + property + " " + qualifier).strip());
  }
}
