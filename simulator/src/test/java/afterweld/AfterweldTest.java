package afterweld;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import afterweld.casefile.CaseFile;
import afterweld.casefile.CaseReading;
import afterweld.casefile.TraverseReader;
import afterweld.choice.answer.Objection;
import afterweld.choice.filler.FillerOption;
import afterweld.material.Alloy;
import afterweld.material.Element;
import afterweld.material.MaterialLibrary;
import afterweld.quantity.UnitSystem;
import afterweld.study.TraverseFit;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What a program that uses the simulator as a library can ask. */
class AfterweldTest {
  private static final String PLATES =
      """
      title: Bracket
      left: {alloy: "%s", temper: T6, thickness: 5 mm, width: 120 mm}
      right: {alloy: "6061", temper: T6, thickness: 5 mm, width: 120 mm}
      filler: {alloy: "%s", dilution: 50 %%}
      passes:
        - {process: GTAW-AC, current: 190 A, voltage: 15 V, travel_speed: %s mm/s, bead_width: 10 mm}
      require: {tensile: 150 MPa}
      spread: {runs: 12}
      """;

  private static final Afterweld AFTERWELD = Afterweld.of(MaterialLibrary.standard());

  private static CaseFile read(Afterweld afterweld, String base, String filler, double speed) {
    byte[] text = PLATES.formatted(base, filler, speed).getBytes(StandardCharsets.UTF_8);
    CaseReading reading = afterweld.read("bracket.yaml", text);
    return reading.caseFile().orElseThrow(() -> new AssertionError(reading.faults().toString()));
  }

  private static CaseSession session(Afterweld afterweld, String base, String filler)
      throws NotAWeldException {
    return afterweld.session(read(afterweld, base, filler, 3));
  }

  @Test
  void whatIsAskedTwiceHasOneAnswer() throws NotAWeldException {
    CaseSession session = session(AFTERWELD, "6061", "4043");
    double tensile = session.joint().finished().middle().orElseThrow().tensile();
    assertEquals(tensile, session.spread().joint().tensile().orElseThrow(), 1e-6 * tensile);
    assertTrue(session.judgement(UnitSystem.METRIC).asked());
    assertTrue(session.profileJson().contains("\"lowest_yield_MPa\""));
    assertTrue(session.routesJson().contains("\"choice\""));
    assertTrue(session.spreadJson().contains("\"chance_met\""));
    assertTrue(session.ageingJson().contains("\"windows\""));
    assertTrue(session.bendJson().contains("\"guided_bends\""));
    assertTrue(session.fillersJson().contains("\"best_over_band\""));
    assertTrue(session.sheet(UnitSystem.US).isPresent());
  }

  /** One and the same fault, whatever is wrong with the numbers of a pass. */
  @Test
  void numbersThatMakeNoWeldAreToldByTheirField() {
    CaseFile cold = read(AFTERWELD, "6061", "4043", 39);
    NotAWeldException fault = assertThrows(NotAWeldException.class, () -> AFTERWELD.session(cold));
    assertEquals("bead_width", fault.field(), fault.getMessage());
    assertEquals(0, fault.pass());
  }

  @Test
  void aWeldOfWhichNothingIsRequiredIsJudgedByNothing() throws NotAWeldException {
    CaseFile asked = read(AFTERWELD, "6061", "4043", 3);
    assertFalse(AFTERWELD.session(asked.weld()).judgement(UnitSystem.METRIC).asked());
  }

  /** A works' own alloy is computed from what it holds; the guides of the trade have no word. */
  @Test
  void alloysOfOnesOwnAreComputedAndNotObjectedTo() throws NotAWeldException {
    MaterialLibrary standard = MaterialLibrary.standard();
    Alloy plate = standard.base("6061").orElseThrow();
    Alloy wire = standard.filler("4043").orElseThrow();
    Afterweld own =
        Afterweld.of(
            standard
                .with(plate.like("6061 lean", plate.composition().with(Element.MG, 0.6)))
                .with(wire.like("4043 rich", wire.composition().with(Element.SI, 5.9))));
    CaseSession session = session(own, "6061 lean", "4043 rich");
    assertEquals(List.of(), session.objections());
    List<String> compared = session.fillers().options().stream().map(FillerOption::filler).toList();
    assertTrue(compared.contains("4043 rich"), compared.toString());
    assertTrue(delivered(session) < delivered(session(AFTERWELD, "6061", "4043")));
  }

  /** Yield of the left plate before welding, Pa. */
  private static double delivered(CaseSession session) {
    return session.profile().stations().get(0).estimates().get(0).middle().yield();
  }

  /** What a table does not know of an alloy is said; no question ends without an answer. */
  @Test
  void alloysOfOnesOwnAreTreatedToo() throws NotAWeldException {
    MaterialLibrary standard = MaterialLibrary.standard();
    Alloy plate = standard.base("6061").orElseThrow();
    Alloy lean = plate.like("6061 lean", plate.composition().with(Element.MG, 0.7));
    String treated =
        PLATES.formatted("6061 lean", "4643", 3.0)
            + "after_weld:\n"
            + "  - solution_treat: {temperature: 530 °C, soak: 60 min}\n"
            + "  - quench: {medium: water, temperature: 25 °C, delay: 8 s}\n"
            + "  - age: {temperature: 175 °C, time: 8 h}\n";
    Afterweld own = Afterweld.of(standard.with(lean));
    CaseReading reading = own.read("bracket.yaml", treated.getBytes(StandardCharsets.UTF_8));
    CaseSession session =
        own.session(
            reading.caseFile().orElseThrow(() -> new AssertionError(reading.faults().toString())));
    List<String> noted = session.objections().stream().map(Objection::text).toList();
    assertEquals(
        List.of(
            "How fast 6061 lean must be quenched is not known here: prove the quench on a coupon."),
        noted);
    assertTrue(session.sheet(UnitSystem.METRIC).orElseThrow().refusals().isEmpty());
    assertTrue(session.routesJson().contains("\"choice\""));
    assertTrue(session.profileJson().contains("\"requirement\""));
  }

  @Test
  void aWorkHardenedAlloyIsKnownByItsNameAlone() {
    Alloy plate = MaterialLibrary.standard().base("5083").orElseThrow();
    assertThrows(IllegalArgumentException.class, () -> plate.like("5083 own", plate.composition()));
  }

  /** What an own filler holds speaks against it all the same. */
  @Test
  void anOwnFillerRichInMagnesiumIsNotAged() throws NotAWeldException {
    Alloy wire = MaterialLibrary.standard().filler("5356").orElseThrow();
    Afterweld own =
        Afterweld.of(
            MaterialLibrary.standard()
                .with(wire.like("5356 own", wire.composition().with(Element.MG, 4.6))));
    String aged =
        PLATES.formatted("6061", "5356 own", 3.0)
            + "after_weld:\n"
            + "  - age: {temperature: 175 °C, time: 8 h}\n";
    CaseReading reading = own.read("bracket.yaml", aged.getBytes(StandardCharsets.UTF_8));
    CaseSession session = own.session(reading.caseFile().orElseThrow());
    assertTrue(
        session.objections().stream().anyMatch(one -> one.text().contains("Mg")),
        session.objections().toString());
  }

  @Test
  void aTraverseIsReadAndFitted() throws NotAWeldException {
    CaseSession session = session(AFTERWELD, "6061", "4043");
    StringBuilder csv = new StringBuilder("distance_mm,HV\n");
    for (int mm = 6; mm < 40; mm += 2) {
      csv.append(mm).append(',').append(mm < 16 ? 72 + mm : 105).append('\n');
    }
    TraverseReader reading =
        session.readTraverse("traverse.csv", csv.toString().getBytes(StandardCharsets.UTF_8));
    TraverseFit fit = session.fit(reading.traverse().orElseThrow());
    assertTrue(fit.fit().isPresent(), fit.warnings().toString());
    assertTrue(fit.rmsAfter() < fit.rmsBefore());
  }
}
