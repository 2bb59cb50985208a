package afterweld.cli.profile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import afterweld.choice.answer.Requirement;
import afterweld.cli.Fixtures;
import afterweld.cli.terminal.Paragraph;
import afterweld.joint.JointReport;
import afterweld.joint.JointSettings;
import afterweld.quantity.UnitSystem;
import afterweld.section.Estimate;
import afterweld.section.SectionProfile;
import afterweld.section.Station;
import afterweld.section.Zone;
import afterweld.section.soundness.Soundness;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The terminal table of a hand-made section, read as a person would. */
class ProfileTableTest {
  private static JointReport joint(SectionProfile profile) {
    return JointReport.of(profile, JointSettings.DEFAULT);
  }

  private static ProfileTable table(SectionProfile profile, UnitSystem units) {
    return new ProfileResult(profile, joint(profile), Fixtures.yieldOf(190), units).table();
  }

  private static String metric() {
    return table(Fixtures.profile(), UnitSystem.METRIC).text();
  }

  private static String flowing(String text) {
    return text.replaceAll("\\s+", " ");
  }

  @Test
  void everyLineFitsEightyColumnsInBothSystems() {
    for (UnitSystem units : UnitSystem.values()) {
      table(Fixtures.profile(), units)
          .text()
          .lines()
          .forEach(line -> assertTrue(line.length() <= 80, line));
    }
  }

  @Test
  void linesStillFitWithAllStagesOfALongSchedule() {
    List<String> states = IntStream.range(0, 8).mapToObj(i -> "state " + i).toList();
    String text = table(Fixtures.profile(states, station -> station), UnitSystem.US).text();
    text.lines().forEach(line -> assertTrue(line.length() <= 80, line));
    assertTrue(text.contains("tensile (ksi)"), text);
  }

  @Test
  void zonesShowPlaceAndPeak() {
    String text = metric();
    assertTrue(text.contains("zone              side   from (mm)  to (mm)   peak (°C)"), text);
    assertTrue(text.contains("annealed          left       -18.0    -12.0  205 to 278"), text);
    assertTrue(text.contains("fusion            weld        -5.0      5.0      molten"), text);
  }

  @Test
  void theLowestOfEachZoneStandsUnderItsState() {
    String text = metric();
    assertTrue(
        flowing(text)
            .contains("1 before welding, 2 as welded (after 24 h), 3 after heat treatment"));
    List<String> heads = text.lines().filter(line -> line.contains("hardness (HV)")).toList();
    String head = heads.get(0);
    String row =
        text.lines().filter(line -> line.startsWith("annealed")).skip(2).findFirst().orElseThrow();
    assertEquals("annealed left 108 48 94 276 110 237 316 150 277", flowing(row).strip());
    assertEquals(head.length(), row.length(), "numbers end under the end of their head");
  }

  @Test
  void theLowestPlaceIsNamedInWords() {
    String text = flowing(metric());
    assertTrue(
        text.contains(
            "as welded (after 24 h): lowest yield 110 MPa (94 to 132) in the annealed zone on both"
                + " sides, 15.0 mm from the weld centre, 40 % of before welding; there tensile strength 150"
                + " MPa (128 to 180), hardness 48 HV (40 to 57)"),
        text);
    assertTrue(
        text.contains(
            "before welding: lowest yield 276 MPa (235 to 331) in the base metal on both"));
  }

  @Test
  void uniformMetalHasNoLowestPlace() {
    SectionProfile uniform =
        Fixtures.profile(Fixtures.THREE_STATES, station -> with(station, alike(276)));
    String text = flowing(new LowestPlaces(uniform, UnitSystem.METRIC).text());
    assertTrue(
        text.contains("after heat treatment: lowest yield 276 MPa (235 to 331) everywhere"), text);
    assertFalse(text.contains("from the weld centre"), text);
  }

  @Test
  void aMuchStrongerStateIsSaidAsAMultiple() {
    SectionProfile hardened =
        Fixtures.profile(
            Fixtures.THREE_STATES,
            station ->
                with(station, List.of(Fixtures.band(52), Fixtures.band(52), Fixtures.band(276))));
    String text = flowing(new LowestPlaces(hardened, UnitSystem.METRIC).text());
    assertTrue(text.contains("5.3 times as much as before welding"), text);
  }

  private static List<Estimate> alike(double yield) {
    return Collections.nCopies(3, Fixtures.band(yield));
  }

  @Test
  void aLowerSideIsNamed() {
    SectionProfile weakLeft =
        Fixtures.profile(
            Fixtures.THREE_STATES,
            station -> Math.abs(station.distance() + 0.015) < 1e-6 ? softer(station) : station);
    String text = flowing(table(weakLeft, UnitSystem.METRIC).text());
    assertTrue(text.contains("in the annealed zone on the left, 15.0 mm"), text);
  }

  /** The centre line belongs to one of two unlike plates and says nothing of the other. */
  @Test
  void theWeakerOfTwoUnlikePlatesIsNamed() {
    SectionProfile weakLeft =
        Fixtures.profile(
            Fixtures.THREE_STATES, station -> station.distance() <= 0 ? softer(station) : station);
    String text = flowing(table(weakLeft, UnitSystem.METRIC).text());
    assertTrue(
        text.contains(
            "before welding: lowest yield 100 MPa (85 to 120) in the base metal on the left"),
        text);
  }

  /** Between unlike bases, weld metal is compared with the one whose place it took. */
  @Test
  void theBaseThatWeldMetalIsComparedWithIsNamed() {
    SectionProfile softWeld =
        Fixtures.profile(
            Fixtures.THREE_STATES,
            station -> {
              double base = station.distance() <= 0 ? 100 : 276;
              boolean soft = station.zone() == Zone.FUSION && station.distance() > 0;
              return with(
                  station,
                  Stream.of(base, soft ? 69.0 : 110, soft ? 69.0 : 110)
                      .map(Fixtures::band)
                      .toList());
            });
    String text = flowing(new LowestPlaces(softWeld, UnitSystem.METRIC).text());
    assertTrue(text.contains("from the weld centre, 25 % of the right base before welding;"), text);
  }

  private static Station softer(Station station) {
    return with(station, alike(100));
  }

  private static Station with(Station station, List<Estimate> estimates) {
    return new Station(
        station.distance(), station.place(), station.zone(), station.peakTemperature(), estimates);
  }

  @Test
  void aQuantityThatIsLowestElsewhereIsSaid() {
    SectionProfile softWeld =
        Fixtures.profile(
            Fixtures.THREE_STATES,
            station -> station.zone() == Zone.FUSION ? brittle(station) : station);
    String text = flowing(table(softWeld, UnitSystem.METRIC).text());
    // The low end 128 is that of the annealed zone: the lowest value may as well lie there.
    assertTrue(
        text.contains("; lowest tensile strength 130 MPa (128 to 130) in the weld metal,"), text);
  }

  private static Station brittle(Station station) {
    double pascal = Fixtures.MPA;
    afterweld.strength.Strength flat =
        new afterweld.strength.Strength(125 * pascal, 130 * pascal, 60);
    afterweld.section.Estimate estimate = new afterweld.section.Estimate(flat, flat, flat);
    return new Station(
        station.distance(),
        station.place(),
        station.zone(),
        station.peakTemperature(),
        Collections.nCopies(3, estimate));
  }

  @Test
  void heatSaysWhereEachEfficiencyComesFrom() {
    String text = flowing(metric());
    assertTrue(
        text.contains(
            "pass 1: GTAW-AC 180 A, 15.0 V, 2.10 mm/s, preheat 120 °C; arc efficiency 0.58 from the"
                + " bead width 11.0 mm; heat into the metal 0.75 kJ/mm"),
        text);
    assertTrue(
        text.contains("efficiency 0.60, the usual for the process (0.45 to 0.75; a bead width"),
        text);
    assertTrue(text.contains("filler 4643, dilution 40 % by common practice (25 % to 55 %)"), text);
  }

  @Test
  void requirementWarningsNotesAndCautionsAreShown() {
    String text = flowing(metric());
    assertTrue(text.contains("Requirement: met"), text);
    assertTrue(text.contains("- The depth of the dip is uncertain."), text);
    assertTrue(text.contains("- Single-v preparation assumed."), text);
    assertTrue(text.contains("- Estimates for sound metal, not a design value."), text);
  }

  @Test
  void usUnitsAreInchesFahrenheitAndKsi() {
    String text = table(Fixtures.profile(), UnitSystem.US).text();
    assertTrue(text.contains("from (in)"), text);
    assertTrue(text.contains("yield (ksi)"), text);
    assertTrue(text.contains("5.0 in/min"), text);
    assertTrue(text.contains("248 °F"), text);
    assertTrue(text.contains("over 2 in"), text);
    String asAsked = "190 MPa (27.6 ksi) asked";
    assertTrue(text.contains(asAsked), text);
    assertFalse(text.replace(asAsked, "").contains("MPa"), text);
    assertFalse(text.contains("(mm)") || text.contains("°C)"), text);
  }

  @Test
  void theQuietAnswerHasALineForEachStateAndTheRequirement() {
    String answer = table(Fixtures.profile(), UnitSystem.METRIC).answer();
    assertTrue(answer.endsWith("requirement: met\n"), answer);
    assertEquals(4, answer.lines().filter(line -> !line.startsWith(" ")).count(), answer);
    assertFalse(answer.contains("zone  "), answer);
  }

  @Test
  void unpredictedMetalIsADashAndAWarning() {
    SectionProfile profile =
        Fixtures.profile(
            Fixtures.THREE_STATES,
            station -> station.zone() == Zone.FUSION ? unpredicted(station) : station);
    String text = table(profile, UnitSystem.METRIC).text();
    assertTrue(text.contains("–"), text);
    assertTrue(flowing(text).contains("The model gives no strength for the metal at some"), text);
    assertTrue(flowing(text).contains("some stations are not predicted and not counted"), text);
    assertTrue(text.contains("Requirement: open"), text);
  }

  static Station unpredicted(Station station) {
    return new Station(
        station.distance(),
        station.place(),
        station.zone(),
        station.peakTemperature(),
        new ArrayList<>(Collections.nCopies(3, Fixtures.notPredicted())));
  }

  @Test
  void aTitleCannotMoveTheCursor() {
    assertEquals("a [2Jb", Paragraph.printable("a\u001b[2Jb\n"));
  }

  @Test
  void nothingRequiredIsSaid() {
    String text =
        new ProfileResult(
                Fixtures.profile(), joint(Fixtures.profile()), Requirement.NONE, UnitSystem.METRIC)
            .table()
            .text();
    assertTrue(text.endsWith("\nRequirement: none\n- The case requires nothing.\n"), text);
  }

  /** Figures of a zone are no joint's where none is claimed. */
  @Test
  void whereNoJointIsClaimedTheZonesSaySo() {
    assertFalse(metric().contains("not of the joint"));
    SectionProfile welded = Fixtures.profile();
    Soundness open =
        new Soundness(
            Soundness.State.NOT_COMPUTED, List.of("Thick."), List.of(), OptionalDouble.empty());
    SectionProfile thick =
        new SectionProfile(
            welded.weldCase(),
            open,
            welded.states(),
            welded.stations(),
            welded.runs(),
            welded.zones(),
            welded.weldMetal(),
            welded.passes(),
            welded.tellingCycles(),
            welded.softening(),
            welded.warnings(),
            welded.cautions());
    String text = flowing(table(thick, UnitSystem.METRIC).text());
    assertTrue(text.contains("zone, of the metal at this depth and not of the joint: 1"), text);
  }
}
