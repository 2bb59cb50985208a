package afterweld.casefile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeout;
import static org.junit.jupiter.api.Assertions.assertTrue;

import afterweld.casefile.text.Fault;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** Whatever a file contains, reading it answers quickly, and the answer is a case or faults. */
class CaseFuzzTest {
  private static final Duration SOON = Duration.ofSeconds(5);

  private static final String FULL =
      """
      title: Fork arm
      left: {alloy: "6061", temper: T6, thickness: 6 mm, width: 4 in, composition: {Mg: 0.9 %}}
      right: {alloy: A356, temper: T6, thickness: 1/4 in}
      joint: butt
      preparation: single-v
      ring: {diameter: 60 mm, position: half lap}
      filler: {alloy: "4643", dilution: 30 %, from_left: 50 %}
      passes:
        - {process: GTAW-AC, current: 180 A, voltage: 15 V, travel_speed: 5 in/min, bead_width: 11 mm}
        - {process: GMAW, current: 180 A, voltage: 20 V, travel_speed: 8 mm/s, interpass: 60 °C}
      reinforcement: 1 mm
      natural_age: 1 day
      after_weld:
        - solution_treat: {temperature: 985 °F, soak: 60 min, furnace: salt}
        - quench: {medium: water, temperature: 25 °C, delay: 8 s}
        - natural_age: 2 h
        - age: {temperature: 350 °F, time: 8 h, ramp: 90 min}
      require: {yield: 28 ksi, tensile: 36 ksi, hardness: 70 HB, anodized_match: true}
      routes: {furnace: {length: 1 m, width: 1 m, height: 1 m}, target: 0.9, order: [steps]}
      spread: {runs: 200, seed: 1, dilution: 10 %}
      """;

  private static final List<String> PIECES =
      List.of(
          "{",
          "}",
          "[",
          "]",
          ":",
          ",",
          "\"",
          "'",
          "-",
          "\n",
          "\t",
          " ",
          "#",
          "&a ",
          "*a",
          "!t ",
          "|",
          ">",
          "%",
          "@",
          "`",
          "?",
          "~",
          "---\n",
          "...\n",
          "null",
          "true",
          "1e999",
          "nan",
          ".inf",
          "-1",
          "0",
          "1/0",
          "°",
          "\u0000",
          "\uFEFF",
          "\u2028",
          "é",
          "\uD83D\uDE00",
          "<<: ",
          "NaN mm",
          "9".repeat(400),
          "6 mm",
          "alloy",
          "none");

  @Property(tries = 600)
  void aChangedCaseIsReadOrRefused(@ForAll("changes") List<Change> changes) {
    String text = FULL;
    for (Change change : changes) {
      text = change.in(text);
    }
    checkAnswer(Reading.bytes("case.yaml", text.getBytes(StandardCharsets.UTF_8)), text);
  }

  @Property(tries = 300)
  void aChangedJsonCaseIsReadOrRefused(@ForAll("changes") List<Change> changes) {
    String text =
        """
        {"left": {"alloy": "6061", "temper": "T6", "thickness": "6 mm"}, "filler": "none",
         "passes": [{"process": "GMAW", "current": "180 A", "voltage": "20 V",
                     "travel_speed": "8 mm/s", "efficiency": 0.8}]}
        """;
    for (Change change : changes) {
      text = change.in(text);
    }
    checkAnswer(Reading.bytes("case.json", text.getBytes(StandardCharsets.UTF_8)), text);
  }

  @Property(tries = 300)
  void randomBytesAreRefused(@ForAll byte[] bytes, @ForAll boolean json) {
    String file = json ? "case.json" : "case.yaml";
    CaseReading reading = assertTimeout(SOON, () -> Reading.bytes(file, bytes));
    assertTrue(reading.caseFile().isEmpty());
    assertTrue(!reading.faults().isEmpty());
  }

  @Property(tries = 300)
  void randomTextIsRefused(@ForAll String text, @ForAll boolean json) {
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    checkAnswer(Reading.bytes(json ? "case.json" : "case.yaml", bytes), text);
  }

  /** The unchanged case is good, so that the changes start from something. */
  @Property(tries = 1)
  void theCaseThatIsChangedHasNoFault() {
    assertEquals(List.of(), Reading.lines(Reading.yaml(FULL)));
  }

  private static void checkAnswer(CaseReading reading, String text) {
    assertEquals(reading.caseFile().isPresent(), reading.faults().isEmpty());
    long lines =
        text.replace("\r\n", "\n").replace('\r', '\n').chars().filter(c -> c == '\n').count() + 1;
    for (Fault fault : reading.faults()) {
      assertTrue(fault.line() >= 1 && fault.line() <= lines, fault::toString);
      assertTrue(fault.column() >= 1, fault::toString);
      assertTrue(!fault.message().isBlank() && !fault.message().contains("\n"), fault::toString);
    }
  }

  /**
   * One change of a text.
   *
   * @param at where, 0 to 1 of the length
   * @param removed how many characters are taken out
   * @param inserted what is put in
   */
  record Change(double at, int removed, String inserted) {
    String in(String text) {
      int start = (int) (at * text.length());
      int end = Math.min(text.length(), start + removed);
      return text.substring(0, start) + inserted + text.substring(end);
    }
  }

  @Provide
  Arbitrary<List<Change>> changes() {
    Arbitrary<Double> places = Arbitraries.doubles().between(0, 1);
    Arbitrary<Integer> lengths = Arbitraries.integers().between(0, 12);
    Arbitrary<String> insertions =
        Arbitraries.oneOf(
            Arbitraries.of(PIECES), Arbitraries.just(""), Arbitraries.strings().ofMaxLength(6));
    return Combinators.combine(places, lengths, insertions)
        .as(Change::new)
        .list()
        .ofMinSize(1)
        .ofMaxSize(4);
  }
}
