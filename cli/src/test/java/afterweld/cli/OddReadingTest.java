package afterweld.cli;

import static org.junit.jupiter.api.Assertions.assertTrue;

import afterweld.casefile.CaseReader;
import afterweld.casefile.CaseReading;
import afterweld.casefile.GridReader;
import afterweld.casefile.TraverseReader;
import afterweld.casefile.text.Fault;
import afterweld.material.MaterialLibrary;
import afterweld.study.HardnessTraverse;
import afterweld.weld.WeldCase;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/**
 * Whatever a case file, a traverse or the axes of a map contain, they are read or refused in plain
 * words, soon, and what is read holds no number that is none. Many more of them with {@code
 * -Pfuzz}.
 */
class OddReadingTest {
  private static final boolean FULL = Boolean.getBoolean("afterweld.fuzz");
  private static final long SEED = Long.getLong("afterweld.fuzz.seed", 13);
  private static final int CASES =
      Integer.getInteger("afterweld.fuzz.reading", FULL ? 300_000 : 4_000);
  private static final long SOON_NANOS = 5_000_000_000L;

  /** Words that only a programmer knows: settings and classes of the readers underneath. */
  private static final Pattern INNER_WORDS =
      Pattern.compile(
          "FEATURE|REDACTED|com\\.fasterxml|snakeyaml|Json[A-Z]|YAML[A-Z]|Exception|Error:|java\\."
              + "|[a-z]\\.[a-z]+\\.[A-Z]|Feature|[A-Z]{3,}_[A-Z]{3,}|@[0-9a-f]{6,}|StringReader"
              + "|\\bUNKNOWN\\b|InputSource|codepoint|CodeUnit");

  private static final int MOST_SHOWN = 20;

  private static final List<String> AXES =
      List.of(
          "travel_speed=2..8mm/s,preheat=20..150C",
          "current=120..220A",
          "dilution=10..60%,ageing_time=1..24h",
          "natural_age=0..30days",
          "quench_delay=1 s..40 s,solution_temperature=950..1000°F",
          "voltage=1/2..20 V,ageing_temperature=150..200 °C");

  private static final String JSON =
      """
      {"title": "Arm", "left": {"alloy": "6061", "temper": "T6", "thickness": "6 mm"}, "joint": "butt",
       "filler": {"alloy": "4643", "dilution": "30 %"}, "reinforcement": "1 mm",
       "passes": [{"process": "GMAW", "current": "180 A", "voltage": "20 V",
                   "travel_speed": "8 mm/s", "efficiency": 0.8}],
       "natural_age": "1 day", "after_weld": [{"age": {"temperature": "177 °C", "time": "8 h"}}],
       "require": {"yield": "20 ksi", "anodized_match": true}, "spread": {"runs": 100, "seed": 1}}
      """;

  private static final String EVERY_KEY =
      """
      title: Fork arm
      left: {alloy: "6061", temper: T6, thickness: 6 mm, width: 4 in, composition: {Mg: 0.9 %}}
      right: {alloy: A356, temper: T6, thickness: 1/4 in}
      joint: butt
      preparation: single-v
      ring: {diameter: 130 mm, position: half lap, end_current: 80 %}
      filler: {alloy: "4643", melted_area: 20 mm², deposit_area: 0.05 in², from_left: 50 %}
      heat_flow: plate
      passes:
        - {process: GTAW-AC, current: 180 A, voltage: 15 V, travel_speed: 5 in/min, bead_width: 11 mm}
        - {process: GMAW, current: 180 A, voltage: 20 V, travel_speed: 8 mm/s, interpass: 60 °C,
           penetration: 4 mm, offset: -1 mm, pause: 5 min}
      reinforcement: 1 mm
      ambient: 15 °C
      depth: 2 mm
      natural_age: 1 day
      after_weld:
        - solution_treat: {temperature: 985 °F, soak: 60 min, furnace: salt}
        - quench: {medium: water, temperature: 25 °C, delay: 8 s}
        - natural_age: 2 h
        - age: {temperature: 350 °F, time: 8 h, ramp: 90 min}
        - anneal: {temperature: 415 °C, time: 2 h, cooling: 28 K/h}
      require: {yield: 28 ksi, tensile: 36 ksi, hardness: 70 HB, anodized_match: true,
                service_temperature: 60 °C}
      routes: {furnace: {length: 1 m, width: 1 m, height: 1 m}, distortion_allowance: 1 mm,
               target: 0.9, order: [steps], tempers_available: [T6]}
      gauge: 2 in
      bend: {angle: 90 deg, length: 150 mm, width: 25 mm, load: edge}
      fillet: {leg: 5 mm, second_leg: 6 mm, length: 100 mm, load: across}
      tube: {diameter: 130 mm, pressure: 30 psi}
      member: {width: 200 mm}
      spread: {runs: 200, seed: 1, dilution: 10 %, furnace_temperature: 6 K, quench_delay: 2 s}
      """;

  /** What the user wrote is repeated as it is. */
  private static final Pattern QUOTED = Pattern.compile("'.{0,43}?'");

  private static final Pattern NO_NUMBER = Pattern.compile("\\b(NaN|Infinity)\\b");

  private static final MaterialLibrary LIBRARY = MaterialLibrary.standard();
  private static final CaseReader READER = new CaseReader(LIBRARY.bases(), LIBRARY.fillers());

  @Test
  void spoiltCaseFilesAreReadOrRefusedInPlainWords() throws IOException {
    List<String> yaml = caseTexts();
    List<String> json = List.of(example("cover-strip.json"), JSON);
    Findings findings = new Findings();
    for (int i = 0; i < CASES; i++) {
      List<String> texts = i % 6 == 0 ? json : yaml;
      OddText odd = new OddText(SEED * 1_000_003 + i);
      byte[] spoilt = odd.spoil(odd.oneOf(texts), texts);
      findings.look(texts == json ? "case.json" : "case.yaml", spoilt, OddReadingTest::readCase);
    }
    findings.expectNone();
  }

  @Test
  void spoiltTraversesAreReadOrRefusedInPlainWords() throws IOException {
    String inches = "distance_in,HB,sd\n-1/2,80,3\n-0.4,75,\n0,60,2.5\n# cut here\n0.4,76,3\n";
    List<String> texts = List.of(example("fork-arm-traverse.csv"), inches);
    Findings findings = new Findings();
    for (int i = 0; i < CASES / 4; i++) {
      OddText odd = new OddText(SEED * 2_000_003 + i);
      findings.look(
          "traverse.csv", odd.spoil(odd.oneOf(texts), texts), OddReadingTest::readTraverse);
    }
    findings.expectNone();
  }

  @Test
  void spoiltAxesOfAMapAreReadOrRefusedInPlainWords() throws IOException {
    WeldCase weld = read("case.yaml", example("fork-arm.yaml")).caseFile().orElseThrow().weld();
    Findings findings = new Findings();
    for (int i = 0; i < CASES / 4; i++) {
      OddText odd = new OddText(SEED * 3_000_017 + i);
      findings.look("--grid", odd.spoil(odd.oneOf(AXES), AXES), (name, text) -> axes(text, weld));
    }
    findings.expectNone();
  }

  /** Files that were once answered with a failure, or with words of the reader underneath. */
  @Test
  void filesThatOnceFailedAreReadOrRefusedInPlainWords() throws IOException {
    Findings findings = new Findings();
    for (String text : Texts.documents("odd-cases.txt")) {
      byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
      findings.look("case.yaml", bytes, OddReadingTest::readCase);
      findings.look("case.json", bytes, OddReadingTest::readCase);
    }
    findings.expectNone();
  }

  private static List<String> caseTexts() throws IOException {
    List<String> texts = new ArrayList<>(GeneratedCases.yaml(150, SEED));
    for (String name : List.of("fork-arm", "pier-tube", "hub-casting", "arm-t4-age")) {
      texts.add(example(name + ".yaml"));
    }
    for (String name : List.of("butt-plate", "casting-repair", "strip", "tube-on-flange")) {
      texts.add(Texts.resource("library/starters/" + name + ".yaml"));
    }
    texts.add(EVERY_KEY);
    return texts;
  }

  private static String example(String name) throws IOException {
    return Files.readString(Path.of("examples", name));
  }

  private static CaseReading read(String name, String text) {
    return READER.read(name, text.getBytes(StandardCharsets.UTF_8));
  }

  /** What a reader said, and what it read, as text. */
  private record Answer(List<String> sentences, String read) {}

  private static Answer readCase(String name, byte[] bytes) {
    CaseReading reading = READER.read(name, bytes);
    String values =
        reading.caseFile().map(read -> read.toString().replace(read.weld().title(), "")).orElse("");
    return new Answer(reading.faults().stream().map(Fault::toString).toList(), values);
  }

  private static Answer readTraverse(String name, byte[] bytes) {
    TraverseReader reading = TraverseReader.read(name, bytes);
    String values = reading.traverse().map(HardnessTraverse::toString).orElse("");
    return new Answer(reading.faults().stream().map(Fault::toString).toList(), values);
  }

  private static Answer axes(byte[] bytes, WeldCase weld) {
    GridReader reading = GridReader.read(new String(bytes, StandardCharsets.UTF_8), weld);
    return new Answer(reading.faults(), reading.axes().toString());
  }

  /** Gathers what is wrong with the answers. */
  private static final class Findings {
    private final List<String> wrong = new ArrayList<>();
    private int kinds;

    void look(String name, byte[] bytes, BiFunction<String, byte[], Answer> reader) {
      long start = System.nanoTime();
      Optional<String> what;
      try {
        what = problem(reader.apply(name, bytes));
      } catch (RuntimeException | StackOverflowError thrown) {
        what = Optional.of("threw " + thrown + " at " + thrown.getStackTrace()[0]);
      }
      if (System.nanoTime() - start > SOON_NANOS) {
        what = Optional.of("took longer than five seconds");
      }
      what.ifPresent(found -> add(found, name, bytes));
    }

    private void add(String found, String name, byte[] bytes) {
      kinds++;
      if (wrong.size() < MOST_SHOWN) {
        wrong.add(found + "\n--- " + name + "\n" + new String(bytes, StandardCharsets.UTF_8));
      }
    }

    private static Optional<String> problem(Answer answer) {
      for (String sentence : answer.sentences()) {
        if (sentence.isBlank() || sentence.contains("\n")) {
          return Optional.of("said nothing, or more than a line: " + sentence);
        }
        if (INNER_WORDS.matcher(QUOTED.matcher(sentence).replaceAll("")).find()) {
          return Optional.of("said " + sentence);
        }
      }
      return NO_NUMBER.matcher(answer.read()).find()
          ? Optional.of("read " + answer.read())
          : Optional.empty();
    }

    void expectNone() {
      assertTrue(
          wrong.isEmpty(), () -> kinds + " answers are wrong:\n" + String.join("\n\n", wrong));
    }
  }
}
