package afterweld.casefile;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/** Reads texts as files, for the tests. */
final class Reading {
  /** A case without a fault, without heat treatment. */
  static final String PLAIN =
      """
      title: Plate
      left: {alloy: "6061", temper: T6, thickness: 6 mm}
      filler: {alloy: "4643", dilution: 30 %}
      passes:
        - {process: GTAW-AC, current: 180 A, voltage: 15 V, travel_speed: 5 in/min}
      """;

  private static final CaseReader READER = new CaseReader(Metals.BASES, Metals.FILLERS);

  private Reading() {}

  static CaseReading yaml(String text) {
    return bytes("case.yaml", text.getBytes(StandardCharsets.UTF_8));
  }

  static CaseReading json(String text) {
    return bytes("case.json", text.getBytes(StandardCharsets.UTF_8));
  }

  static CaseReading bytes(String file, byte[] bytes) {
    return READER.read(file, bytes);
  }

  /** The case of a text that has no fault. */
  static CaseFile caseOf(String yaml) {
    CaseReading reading = yaml(yaml);
    assertEquals(List.of(), lines(reading));
    return reading.caseFile().orElseThrow();
  }

  /** All faults of a reading, each as {@code line:column: message}. */
  static List<String> lines(CaseReading reading) {
    return reading.faults().stream()
        .map(fault -> fault.line() + ":" + fault.column() + ": " + fault.message())
        .toList();
  }

  /**
   * Asserts all faults of a YAML text: pairs of a piece of the text, in which {@code ^} marks the
   * character the fault must point at, and the message.
   */
  static void assertFaults(String text, String... markedAndMessage) {
    List<String> expected = new ArrayList<>();
    for (int i = 0; i < markedAndMessage.length; i += 2) {
      expected.add(place(text, markedAndMessage[i]) + ": " + markedAndMessage[i + 1]);
    }
    assertEquals(String.join("\n", expected), String.join("\n", lines(yaml(text))));
  }

  private static String place(String text, String marked) {
    int found = text.indexOf(marked.replace("^", ""));
    if (found < 0 || !marked.contains("^")) {
      throw new IllegalArgumentException("not in the text, or not marked: " + marked);
    }
    String before = text.substring(0, found + marked.indexOf('^'));
    int lineStart = before.lastIndexOf('\n') + 1;
    long line = before.chars().filter(character -> character == '\n').count() + 1;
    return line + ":" + (before.length() - lineStart + 1);
  }

  /** The plain case with a part replaced that must be there. */
  static String plainWith(String target, String replacement) {
    return replaced(PLAIN, target, replacement);
  }

  /** The plain case with more keys in its pass. */
  static String plainWithPass(String keys) {
    return replaced(PLAIN, "in/min}", "in/min, " + keys + "}");
  }

  /** The text with a part replaced that must be there. */
  static String replaced(String text, String target, String replacement) {
    String changed = text.replace(target, replacement);
    if (changed.equals(text)) {
      throw new IllegalArgumentException("nothing to replace: " + target);
    }
    return changed;
  }

  /** The plain case with a heat treatment. */
  static String treatment(String steps) {
    return PLAIN + "after_weld:\n" + steps;
  }
}
