package afterweld.cli;

import afterweld.choice.Objection;
import afterweld.choice.Objection.Severity;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** What stands against a heat treatment, for people and for programs. */
final class ObjectionList {
  private ObjectionList() {}

  /** For a person; empty where nothing stands against it. */
  static String text(List<Objection> objections) {
    return block("Against this heat treatment", objections, true)
        + block("On this heat treatment", objections, false);
  }

  private static String block(String head, List<Objection> objections, boolean against) {
    String list =
        objections.stream()
            .filter(one -> against == (one.severity() != Severity.NOTED))
            .map(one -> Paragraph.hanging("- ", one.text()))
            .collect(Collectors.joining());
    return list.isEmpty() ? "" : Paragraph.of(head) + list;
  }

  /** For a program. */
  static List<Map<String, Object>> json(List<Objection> objections) {
    return objections.stream().map(ObjectionList::json).toList();
  }

  private static Map<String, Object> json(Objection objection) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("severity", objection.severity().label());
    json.put("text", objection.text());
    return json;
  }
}
