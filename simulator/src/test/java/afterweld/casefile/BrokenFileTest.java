package afterweld.casefile;

import static afterweld.casefile.Reading.PLAIN;
import static afterweld.casefile.Reading.assertFaults;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeout;
import static org.junit.jupiter.api.Assertions.assertTrue;

import afterweld.casefile.text.Fault;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Files that are no YAML, no JSON, no text, too large, or made to hurt. */
class BrokenFileTest {
  private static final String EMPTY =
      "1:1: found no keys; expected a case with at least left, filler and passes";

  @ParameterizedTest
  @ValueSource(strings = {"", "\n\n", "# only a comment\n", "---\n", "~\n", "\uFEFF"})
  void anEmptyFileSaysWhatACaseNeeds(String text) {
    List<String> faults = Reading.lines(Reading.yaml(text));
    assertEquals(List.of(EMPTY), faults.stream().map(BrokenFileTest::atStart).toList());
  }

  private static String atStart(String fault) {
    return fault.replaceFirst("^2:1:", "1:1:");
  }

  @Test
  void anEmptyJsonFileToo() {
    assertEquals(List.of(EMPTY), Reading.lines(Reading.json("")));
    assertEquals(List.of(EMPTY), Reading.lines(Reading.json("null")));
  }

  @Test
  void aFileWithoutKeysIsAFault() {
    assertFaults(
        "just words\n",
        "^just",
        "found 'just words' without keys; expected a case with at least left, filler and passes");
    assertFaults(
        "- 6061\n",
        "^-",
        "found a list without keys; expected a case with at least left, filler and passes");
  }

  @Test
  void aBracketThatIsNeverClosedIsReportedWhereTheTextEnds() {
    String text = "left: {alloy: \"6061\"\nfiller: none\n";
    List<String> faults = Reading.lines(Reading.yaml(text));
    assertEquals(1, faults.size());
    assertTrue(faults.get(0).startsWith("2:"), faults::toString);
    assertTrue(faults.get(0).contains("not valid YAML"), faults::toString);
    assertEquals(
        List.of(
            "1:19: not valid JSON: the text ends before its last bracket, brace or quote is"
                + " closed"),
        Reading.lines(Reading.json("{\"left\": {\"alloy\":")));
  }

  @Test
  void aKeyInAPlainTextIsReportedAtItsColon() {
    assertFaults(
        "title: arm: left\n",
        "arm^:",
        "not valid YAML: found a second colon in one line; put a text with a colon into quotes");
  }

  @Test
  void aTabThatIndentsIsNamed() {
    assertFaults(
        "left:\n\talloy: \"6061\"\n",
        "^\talloy",
        "not valid YAML: found a tab before the text; expected blanks");
  }

  @Test
  void jsonIsStrict() {
    List<String> faults = Reading.lines(Reading.json("{\"left\": NaN}"));
    assertEquals(1, faults.size());
    assertTrue(faults.get(0).startsWith("1:"), faults::toString);
    assertTrue(faults.get(0).contains("not valid JSON"), faults::toString);
  }

  @Test
  void aSecondDocumentIsAFault() {
    assertFaults(
        PLAIN + "---\ntitle: second\n",
        "^title: second",
        "found a second document; expected one joint in one file");
    List<String> json = Reading.lines(Reading.json("{} {}"));
    assertTrue(
        json.contains("1:4: found a second document; expected one joint in one file"),
        json::toString);
  }

  @Test
  void anchorsAliasesAndTagsAreFaults() {
    String end = "; write the value out without it";
    assertFaults(
        "title: &name Plate\n" + PLAIN.substring(PLAIN.indexOf("left")) + "gauge: *name\n",
        "title: ^&name",
        "found an anchor (&)" + end,
        "gauge: ^*name",
        "found the alias *name" + end,
        "gauge: ^*name",
        "gauge: found 'name'; expected a length from 5 to 1000 mm (units: mm, cm, m, in, ft)");
    assertFaults(PLAIN.replace("Plate", "!!str Plate"), "^!!str", "found a tag (!)" + end);
    assertFaults(PLAIN.replace("title", "&t title"), "^&t", "found an anchor (&)" + end);
    assertFaults(
        PLAIN.replace("{alloy: \"6061\"", "&l {alloy: \"6061\""),
        "^&l",
        "found an anchor (&)" + end);
    assertFaults(PLAIN.replace("Plate", "\"&Plate!\""));
  }

  @Test
  void aFewLinesOfAliasesThatGrowWithoutEndAreRefusedAtOnce() {
    StringBuilder bomb = new StringBuilder("a0: &a0 [x, x]\n");
    for (int i = 1; i < 40; i++) {
      String last = "*a" + (i - 1);
      bomb.append("a%d: &a%d [%s, %s]\n".formatted(i, i, last, last));
    }
    CaseReading reading = assertTimeout(Duration.ofSeconds(5), () -> Reading.yaml(bomb.toString()));
    assertTrue(reading.caseFile().isEmpty());
  }

  @Test
  void bytesThatAreNotUtf8AreReportedWithTheirPlace() {
    byte[] bytes = "title: Arm\nambient: 20 °C\n".getBytes(StandardCharsets.ISO_8859_1);
    assertEquals(
        List.of(
            "2:13: found the byte 0xB0, which is not UTF-8; expected a text saved as UTF-8 (the"
                + " degree sign may be left out: 325 F)"),
        Reading.lines(Reading.bytes("case.yaml", bytes)));
  }

  @Test
  void invisibleCharactersAreReportedOneByOne() {
    assertFaults(
        "title: a\u0000b\r\njoint: \u2028butt\n".replace("\r", ""),
        "a^\u0000",
        "found the invisible character U+0000; remove it",
        "joint: ^\u2028",
        "found the invisible character U+2028; remove it");
  }

  @Test
  void aFileTooLargeIsNotRead() {
    byte[] bytes = "# \n".repeat(90_000).getBytes(StandardCharsets.UTF_8);
    assertEquals(
        List.of("1:1: found a file of 270000 bytes; expected a case file of at most 256000 bytes"),
        Reading.lines(Reading.bytes("case.yaml", bytes)));
  }

  @ParameterizedTest
  @CsvSource({"case.yaml, [", "case.json, [", "case.yaml, '- '", "case.yaml, {", "case.json, {"})
  void nestingWithoutEndIsRefusedAtOnce(String file, String opening) {
    String text = opening.repeat(120_000);
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    CaseReading reading = assertTimeout(Duration.ofSeconds(5), () -> Reading.bytes(file, bytes));
    assertEquals(1, reading.faults().size());
    assertEquals(1, reading.faults().get(0).line());
  }

  @Test
  void deepNestingIsReportedWhereItGetsTooDeep() {
    assertFaults(
        "a: " + "[".repeat(30) + "\n",
        "a: " + "[".repeat(11) + "^[",
        "not valid YAML: keys and lists nested more than 12 deep");
  }

  /** Files as large as allowed, made of what parsers and readers are slow at. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "k%d: {}\n",
        "a: 1\n",
        "a, ",
        "- x\n",
        "x ",
        "'",
        ":",
        "\n",
        "#\n",
        "? x\n",
        "&a ",
        "%d",
        "é",
        "\\u00b0",
        "!",
        "*a ",
        "|\n x\n",
        "\u0001\n"
      })
  void aLargeFileOfAnyKindIsReadInSeconds(String piece) {
    StringBuilder text = new StringBuilder(piece.startsWith("a, ") ? "{" : "");
    for (int i = 0; text.length() < 120_000; i++) {
      text.append(piece.contains("%d") ? piece.formatted(i) : piece);
    }
    CaseReading reading =
        assertTimeout(Duration.ofSeconds(10), () -> Reading.yaml(text.toString()));
    assertTrue(reading.caseFile().isEmpty());
    assertTrue(reading.faults().size() <= 201);
  }

  @Test
  void aHugeNumberOfFaultsIsCutOffAndSaysSo() {
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < 1000; i++) {
      text.append("key").append(i).append(": 1\n");
    }
    List<Fault> faults = Reading.yaml(text.toString()).faults();
    assertEquals(201, faults.size());
    assertEquals("more than 200 faults; the others are not shown", faults.get(200).message());
  }

  @Test
  void aLongOrWildTextIsShortInTheMessage() {
    assertFaults(
        PLAIN + "joint: \"a\\tb\\nc" + "x".repeat(50) + "\"\n",
        "joint: ^\"",
        "joint: found 'a b c"
            + "x".repeat(35)
            + "...'; expected one of butt, lap, tee, corner,"
            + " socket, bead");
  }
}
