package afterweld.casefile;

import static afterweld.casefile.Reading.PLAIN;
import static afterweld.casefile.Reading.assertFaults;
import static afterweld.casefile.Reading.plainWith;
import static afterweld.casefile.Reading.plainWithPass;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Faults in sides, filler, passes and settings: exact place, expectation, nearest name. */
class CaseFaultsTest {
  private static final String LENGTH = "a length from 0.5 to 40 mm (units: mm, cm, m, in, ft)";
  private static final String FILLERS =
      "expected none, or alloy with dilution, or alloy with melted_area and deposit_area; suitable"
          + " fillers: ";
  private static final String PASSES =
      "expected a list of passes, each with process, current, voltage and travel_speed";

  @Test
  void aFileWithoutAFaultGivesACaseAndNoFault() {
    CaseReading reading = Reading.yaml(PLAIN);
    assertEquals(List.of(), reading.faults());
    assertTrue(reading.caseFile().isPresent());
  }

  @Test
  void severalFaultsAreReportedTogetherInTheOrderOfTheFile() {
    String text =
        """
        titel: Plate
        left: {alloy: 6016, temper: T6, thickness: 6}
        filler: {alloy: "4643", dilution: 30 %}
        passes:
          - {process: GTAW-AC, current: 180 A, voltage: 15 V, travel_speed: 100 in/min}
        """;
    CaseReading reading = Reading.yaml(text);
    assertEquals(
        List.of(
            "1:1: unknown key 'titel'; did you mean 'title'?",
            "2:15: alloy: found '6016'; expected one of 6061, 6063, 3003, 5083, A356; did you mean"
                + " '6061'?",
            "2:44: thickness: found '6', a number without a unit; expected " + LENGTH,
            "5:69: travel_speed: found '100 in/min' (42.33 mm/s); expected a speed from 0.3 to 40"
                + " mm/s"),
        Reading.lines(reading));
    assertEquals(Optional.empty(), reading.caseFile());
  }

  @Test
  void jsonFaultsHaveTheirPlaceToo() {
    String text =
        """
        {"left": {"alloy": "6061", "temper": "T6", "thickness": "6 mm"},
         "filler": "non",
         "passes": [
          {"process": "GTAW-AC", "current": 180, "voltage": "15 V",
           "travel_speed": "5 in/min", "voltage": "16 V"}]}
        """;
    assertEquals(
        List.of(
            "2:12: filler: found 'non'; " + FILLERS + "4043, 5356, 4643, 5183",
            "4:37: current: found '180', a number without a unit; expected a current above 0, up to"
                + " 2000 A (units: A, kA)",
            "5:32: found the key 'voltage' again; the first is in line 4"),
        Reading.lines(Reading.json(text)));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "6        | found '6', a number without a unit",
        "6 kg     | found '6 kg'; unknown unit 'kg'",
        "six      | found 'six'",
        "true     | found 'true'",
        "[6 mm]   | found a list",
        "'{a: 1}' | found keys with values",
        ".nan mm  | found '.nan mm', which is not a number",
        "nan      | found 'nan', a number without a unit",
        "1e999 mm | found '1e999 mm', which is infinite",
        ".inf mm  | found '.inf mm', which is infinite",
        "1/0 in   | found '1/0 in', which is infinite",
        "0/0 in   | found '0/0 in', which is not a number"
      })
  void aThicknessThatIsNoLengthIsAFault(String value, String found) {
    assertFaults(
        plainWith("6 mm", value),
        "thickness: ^" + value,
        "thickness: " + found + "; expected " + LENGTH);
  }

  @Test
  void aKeyWithoutAValueIsAFault() {
    assertFaults(
        plainWith(" 6 mm", ""), "thickness:^", "thickness: found nothing; expected " + LENGTH);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "-6 mm    | found '-6 mm'",
        "0.4 mm   | found '0.4 mm'",
        "41 mm    | found '41 mm'",
        "2 in     | found '2 in' (50.8 mm)",
        "0 mm     | found '0 mm'"
      })
  void aThicknessOutOfRangeIsAFaultWithItsRange(String value, String found) {
    assertFaults(
        plainWith("6 mm", value),
        "thickness: ^" + value,
        "thickness: " + found + "; expected a length from 0.5 to 40 mm");
  }

  @Test
  void aMistypedUnitFindsItsNeighbour() {
    assertFaults(
        plainWith("6 mm", "1/4 inc"),
        "^1/4 inc",
        "thickness: found '1/4 inc'; unknown unit 'inc'; expected "
            + LENGTH
            + "; did you mean 'in'?");
  }

  @Test
  void aDecimalCommaIsExplained() {
    assertFaults(
        plainWith("6 mm", "\"6,5 mm\""),
        "^\"6,5 mm\"",
        "thickness: found '6,5 mm' with a comma (write 2.5, not 2,5); expected " + LENGTH);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "\"6061\" | alloy: ^6062   | alloy: found '6062'; expected one of 6061, 6063, 3003, 5083, A356; did you mean '6061'?",
        "\"6061\" | alloy: ^4643   | alloy: found '4643', which is a filler; expected one of 6061, 6063, 3003, 5083, A356",
        "\"6061\" | alloy: ^[1]    | alloy: found a list; expected one of 6061, 6063, 3003, 5083, A356",
        "T6       | temper: ^T9    | temper: found 'T9'; expected a temper of 6061: O, T4, T6; did you mean 'T4'?",
        "T6       | temper: ^H14   | temper: found 'H14'; expected a temper of 6061: O, T4, T6",
        "\"4643\" | alloy: ^4634   | alloy: found '4634'; expected one of 4043, 4643, 4145, 5356, 5183; did you mean '4643'?",
        "GTAW-AC  | ^GTAW-DC       | process: found 'GTAW-DC'; expected one of GTAW-AC, GTAW-DCEN, GMAW, GMAW-pulsed; did you mean 'GTAW-AC'?",
        "GTAW-AC  | process: ^plasma | process: found 'plasma'; expected one of GTAW-AC, GTAW-DCEN, GMAW, GMAW-pulsed"
      })
  void aNameTheLibraryDoesNotKnowListsTheKnownOnes(String target, String marked, String message) {
    String value = marked.substring(marked.indexOf('^') + 1);
    assertFaults(plainWith(target, value), marked, message);
  }

  @Test
  void unknownKeysAreFaultsAtAnyDepth() {
    String text =
        PLAIN.replace("thickness", "thicknes").replace("dilution: 30 %", "colour: grey")
            + "machine: none\n";
    assertFaults(
        text,
        "^thicknes:",
        "unknown key 'thicknes'; did you mean 'thickness'?",
        "^colour:",
        "unknown key 'colour'; known here: alloy, from_left, dilution, melted_area, deposit_area",
        "^machine:",
        "unknown key 'machine'; known here: title, left, right, joint, preparation, filler, ring, seam,"
            + " heat_flow, passes, reinforcement, ambient, depth, require, after_weld, natural_age, routes,"
            + " gauge, bend, fillet, tube, member, spread");
  }

  @Test
  void missingKeysOfTheCaseAreFaults() {
    assertFaults(
        "title: Nothing yet\n",
        "^title",
        "the case has no left; expected keys alloy, temper, thickness (and width, composition if"
            + " known)",
        "^title",
        "the case has no passes; " + PASSES,
        "^title",
        "the case has no filler; " + FILLERS + "4043, 4643, 4145, 5356, 5183");
  }

  @Test
  void missingKeysInsideAreFaultsAtTheKeyThatHoldsThem() {
    assertFaults(
        plainWith("{alloy: \"6061\", temper: T6, thickness: 6 mm}", "{}"),
        "^left",
        "left has no alloy; expected one of 6061, 6063, 3003, 5083, A356",
        "^left",
        "left has no temper; expected a temper such as T6",
        "^left",
        "left has no thickness; expected " + LENGTH);
    assertFaults(
        PLAIN.replace("process: GTAW-AC, ", "").replace("voltage: 15 V, ", ""),
        "- ^{current",
        "pass 1 has no process; expected one of GTAW-AC, GTAW-DCEN, GMAW, GMAW-pulsed",
        "- ^{current",
        "pass 1 has no voltage; expected a voltage above 0, up to 100 V (units: V)");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "6061 | T6   | 4043, 5356, 4643, 5183",
        "5083 | H116 | 5183, 5356",
        "3003 | H14  | 4043, 5356",
        "A356 | T6   | 4043, 4643"
      })
  void aMissingFillerListsTheSuitableOnes(String base, String temper, String fillers) {
    String text =
        PLAIN
            .replace("\"6061\", temper: T6", base + ", temper: " + temper)
            .replace("filler: {alloy: \"4643\", dilution: 30 %}\n", "");
    assertFaults(text, "^title", "the case has no filler; " + FILLERS + fillers);
  }

  @Test
  void duplicateKeysAreFaultsAtAnyDepth() {
    assertFaults(
        PLAIN.replace("6 mm", "6 mm, alloy: A356") + "title: Again\n",
        "mm, ^alloy",
        "found the key 'alloy' again; the first is in line 2",
        "^title: Again",
        "found the key 'title' again; the first is in line 1");
  }

  @Test
  void contradictionsInAPassAreFaults() {
    assertFaults(
        plainWithPass("bead_width: 9 mm, efficiency: 0.6"),
        "^efficiency",
        "efficiency: found together with bead_width, which sets the efficiency; expected one of the"
            + " two");
    assertFaults(
        plainWithPass("penetration: 7 mm"),
        "^7 mm",
        "penetration: found 7 mm; expected at most the thickness, 6 mm");
    assertFaults(
        plainWithPass("bead_width: 15 cm"),
        "^15 cm",
        "bead_width: found 150 mm; expected at most 20 thicknesses and 20 mm, 140 mm");
    assertFaults(
        plainWith("180 A", "1.8 kA"),
        "^1.8 kA",
        "current: current times voltage is 27.0 kW; expected at most 20 kW");
  }

  /** 0.9 of the solidus of 6061 in kelvin: 0.9 x 855.15 K = 496.5 °C. */
  @Test
  void preheatStaysUnderNineTenthsOfTheSolidus() {
    assertFaults(
        plainWithPass("preheat: 932 °F"),
        "^932 °F",
        "preheat: found 500 °C (932 °F); expected under 0.9 of the absolute solidus, 496 °C"
            + " (926 °F)");
    assertFaults(
        plainWithPass("preheat: -5 °C"),
        "^-5 °C",
        "preheat: found '-5 °C'; expected a temperature from 0 to 600 °C");
  }

  @Test
  void preheatInterpassAndPauseBelongToTheirPass() {
    String wrong = "expected interpass (preheat in the first pass, interpass in later ones)";
    assertFaults(
        plainWithPass("pause: 3 s")
            + "  - {process: GMAW, current: 200 A, voltage: 22 V, travel_speed: 8 mm/s, preheat: 66 C}\n",
        "^pause",
        "pause: expected only from the second pass on, as time before it",
        "^preheat",
        "preheat: " + wrong);
    assertFaults(
        plainWithPass("interpass: 66 °C"),
        "^interpass",
        "interpass: expected preheat (preheat in the first pass, interpass in later ones)");
  }

  @Test
  void anEfficiencyIsANumberWithoutAUnit() {
    String expected = "; expected a number without a unit from 0.3 to 0.9";
    assertFaults(plainWithPass("efficiency: 60 %"), "^60 %", "efficiency: found '60 %'" + expected);
    assertFaults(plainWithPass("efficiency: 0.95"), "^0.95", "efficiency: found '0.95'" + expected);
  }

  @Test
  void passesAreAListOfOneToFifty() {
    String head = PLAIN.substring(0, PLAIN.indexOf("  - {"));
    String pass = PLAIN.substring(PLAIN.indexOf("  - {"));
    assertFaults(
        head.replace("passes:", "passes: []"),
        "passes: ^[]",
        "passes: found a list of 0; expected 1 to 50 items");
    assertFaults(
        head.replace("passes:", "passes: two"), "passes: ^two", "passes: found 'two'; " + PASSES);
    assertFaults(head + "  - root\n", "- ^root", "passes: found 'root'; " + PASSES);
    assertFaults(
        head + pass.repeat(51),
        "^- {process",
        "passes: found a list of 51; expected 1 to 50 items");
  }

  @Test
  void aLegShorterThanFourThicknessesIsAFault() {
    assertFaults(
        plainWith("6 mm", "6 mm, width: 24 mm"),
        "^24 mm",
        "width: found 24 mm; expected a leg from the weld centre longer than four thicknesses,"
            + " 24 mm");
  }

  @Test
  void aCertificateIsCheckedElementByElement() {
    assertFaults(
        plainWith("6 mm", "6 mm, composition: {Mg: 1.0, Sn: 1 %, Si: -1 %, Zn: 99.5 %}"),
        "Mg: ^1.0",
        "Mg: found '1.0', a number without a unit; expected a content by weight from 0 to 100 %"
            + " (units: %)",
        "^Sn:",
        "unknown key 'Sn'; did you mean 'Si'?",
        "Si: ^-1 %",
        "Si: found '-1 %'; expected a content by weight from 0 to 100 %");
    assertFaults(
        plainWith("6 mm", "6 mm, composition: {Zn: 99.5 %}"),
        "composition: ^{Zn",
        "composition: adds up to 102 %; expected under 100 %");
  }

  @Test
  void dilutionIsGivenOnceAndInPercent() {
    assertFaults(
        plainWith("30 %", "0.3"),
        "^0.3",
        "dilution: found '0.3', a number without a unit; expected a share from 0 to 100 %"
            + " (units: %)");
    assertFaults(
        plainWith("30 %", "130 %"),
        "^130 %",
        "dilution: found '130 %'; expected a share from 0 to 100 %");
    assertFaults(
        plainWith("30 %", "30 %, melted_area: 12 mm2"),
        "^filler",
        "filler has no deposit_area; expected an area above 0, up to 10000 mm² (units: mm², cm²,"
            + " in²)",
        "^dilution",
        "dilution: found together with areas, which give the dilution; expected one of them");
    assertFaults(
        plainWith("\"4643\"", "none"),
        "^dilution",
        "dilution: found without a filler; expected a filler alloy beside it");
  }

  @Test
  void jointPreparationAndRingAreChecked() {
    assertFaults(
        PLAIN + "joint: but\npreparation: v\nring: {diameter: 5 mm, position: end}\n",
        "joint: ^but",
        "joint: found 'but'; expected one of butt, lap, tee, corner, socket, bead; did you mean"
            + " 'butt'?",
        "preparation: ^v",
        "preparation: found 'v'; expected one of square, single-v, double-v, fillet",
        "diameter: ^5 mm",
        "diameter: found '5 mm'; expected a length from 10 to 5000 mm",
        "position: ^end",
        "position: found 'end'; expected one of worst, start, half lap, lap end; did you mean 'lap"
            + " end'?");
  }

  @Test
  void geometryThatCannotBeIsAFault() {
    assertFaults(
        PLAIN + "preparation: fillet\n",
        "^fillet",
        "preparation: found 'fillet' with the joint 'butt'; expected square, single-v or double-v,"
            + " or a lap, tee, corner or socket joint");
    assertFaults(
        PLAIN + "ring: {diameter: 12 mm}\n",
        "^12 mm",
        "diameter: found 12 mm; expected more than twice the thickness of the right side");
    assertFaults(
        PLAIN + "right: {thickness: 3 mm}\ndepth: 4 mm\n",
        "^4 mm",
        "depth: found 4 mm; expected at most the thickness of the thinner side, 3 mm");
  }

  @Test
  void aRequirementIsChecked() {
    assertFaults(
        PLAIN + "require: {yield: 40 ksi, tensile: 36 ksi, hardness: 70, anodized_match: maybe}\n",
        "^40 ksi",
        "yield: found 275.8 MPa; expected at most the tensile strength asked for, 248.2 MPa",
        "^70,",
        "hardness: found '70', a number without a unit; expected a hardness from 20 to 250 HV"
            + " (units: HV, HB, HRB)",
        "^maybe",
        "anodized_match: found 'maybe'; expected true or false");
  }

  @Test
  void routesAreChecked() {
    String routes =
        """
        routes:
          furnace: {length: 3 m, width: 1 m}
          tempers_available: [T4, T3]
          target: 0.2
          order: [distortion, step, distortion]
        """;
    assertFaults(
        PLAIN + routes,
        "^furnace",
        "furnace has no height; expected a length above 0, up to 100 m (units: mm, cm, m, in, ft)",
        "^T3",
        "tempers_available: found 'T3'; expected one of O, T4, T6; did you mean 'T4'?",
        "^0.2",
        "target: found '0.2'; expected a number without a unit from 0.5 to 0.999",
        "^step,",
        "order: found 'step'; expected one of strength margin, distortion, steps, furnace hours; did"
            + " you mean 'steps'?",
        "^distortion]",
        "order: found 'distortion' again");
  }

  @Test
  void jointSettingsAreChecked() {
    String settings =
        """
        gauge: 50
        bend: {length: 20 mm, load: edges, angle: 200 deg}
        fillet: {leg: 6 mm, length: 25 mm}
        tube: {diameter: 100 mm, pressure: 10 mm}
        """;
    assertFaults(
        PLAIN + settings,
        "gauge: ^50",
        "gauge: found '50', a number without a unit; expected a length from 5 to 1000 mm (units: mm,"
            + " cm, m, in, ft)",
        "^20 mm",
        "length: found 20 mm; expected at least four thicknesses, 24 mm",
        "^edges",
        "load: found 'edges'; expected one of couples, edge; did you mean 'edge'?",
        "^200 deg",
        "angle: found '200 deg'; expected an angle above 0, up to 180 deg",
        "^fillet",
        "fillet has no load; expected one of along, across",
        "^25 mm",
        "length: found 25 mm; expected at least eight throats and 30 mm, 33.94 mm",
        "^100 mm",
        "diameter: found 100 mm; expected a thin wall, an outside diameter of at least 21"
            + " thicknesses of the right side, 126 mm; without tube the rest of the case is computed",
        "^10 mm",
        "pressure: found '10 mm'; unknown unit 'mm'; expected a pressure above 0, up to 1000 bar"
            + " (units: bar, psi, ksi, MPa)");
  }

  @Test
  void spreadSettingsAreChecked() {
    assertFaults(
        PLAIN + "spread: {runs: 3.5, seed: -1, travel_speed: 5 mm/s}\n",
        "^3.5",
        "runs: found '3.5'; expected a whole number from 10 to 100000, without a unit",
        "^-1",
        "seed: found '-1'; expected a whole number from 0 to 999999999999999999, without a unit",
        "^5 mm/s",
        "travel_speed: found '5 mm/s'; unknown unit 'mm/s'; expected a share from 0 to 50 % (units:"
            + " %)");
  }

  @Test
  void aSectionThatIsNoSectionIsAFault() {
    assertFaults(
        plainWith("{alloy: \"6061\", temper: T6, thickness: 6 mm}", "6061") + "spread: [1]\n",
        "left: ^6061",
        "left: found '6061'; expected keys alloy, temper, thickness (and width, composition if"
            + " known)",
        "spread: ^[1]",
        "spread: found a list; expected keys runs, seed and half-widths of the inputs");
  }

  @Test
  void aTitleIsTextAndShort() {
    assertFaults(plainWith("Plate", "[Plate]"), "^[Plate]", "title: found a list; expected a text");
    assertFaults(
        plainWith("Plate", "Plate ".repeat(40)),
        "title: ^Plate",
        "title: expected at most 200 characters");
  }

  /** The leg on the edge of a lapped part ends where the edge does. */
  @Test
  void aLapHasNoLargerLegThanItsEdge() {
    String lap = Reading.PLAIN + "joint: lap\nfillet: {leg: 9 mm, length: 100 mm, load: across}\n";
    assertTrue(
        Reading.lines(Reading.yaml(lap))
            .toString()
            .contains("leg: found 9 mm; expected at most 6 mm"),
        Reading.lines(Reading.yaml(lap)).toString());
    Reading.caseOf(lap.replace("9 mm", "6 mm").replace("across", "across, sides: both"));
    Reading.caseOf(lap.replace("joint: lap", "joint: tee"));
  }

  /** No table turns Rockwell B of castings into another scale (ASTM E140 is for wrought metal). */
  @Test
  void noRockwellIsAskedOfACasting() {
    String wrought = Reading.PLAIN + "require: {hardness: 40 HRB}\n";
    Reading.caseOf(wrought);
    String cast = wrought.replace("\"6061\"", "A356").replace("4643", "4043");
    assertTrue(
        Reading.lines(Reading.yaml(cast)).toString().contains("none is known for castings"), cast);
    assertEquals(
        1,
        TraverseReader.read(
                "t.csv",
                "distance_mm,HRB\n1,40\n".getBytes(java.nio.charset.StandardCharsets.UTF_8),
                true)
            .faults()
            .stream()
            .filter(fault -> fault.message().contains("castings"))
            .count());
  }

  /** What the reader takes for a thin tube is one to the formula: mean radius over wall 10. */
  @Test
  void aTubeThatIsReadIsThinEnoughToBeComputed() {
    String tube = Reading.PLAIN + "tube: {diameter: DIAMETER mm, pressure: 10 bar}\n";
    Reading.caseOf(tube.replace("DIAMETER", "126"));
    String found = Reading.lines(Reading.yaml(tube.replace("DIAMETER", "125"))).toString();
    assertTrue(found.contains("126 mm"), found);
  }
}
