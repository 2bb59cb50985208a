package afterweld.section.soundness;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import afterweld.joint.JointReport;
import afterweld.joint.JointSettings;
import afterweld.section.SectionProfile;
import afterweld.section.Welded;
import afterweld.section.WrittenWelds;
import afterweld.section.soundness.Soundness.State;
import afterweld.weld.WeldCase;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Welds that every welder knows to be a joint or none; the judgements are common practice. */
class SoundnessTest {
  private static Soundness of(String more, String pass, int passes) {
    return Welded.SESSION.soundness(WrittenWelds.of(more, pass, passes));
  }

  private static String plate(int millimetres) {
    return "left: {alloy: \"6061\", temper: T6, thickness: " + millimetres + " mm}\n";
  }

  private static String mig(double current, double voltage, double speed) {
    return pass("GMAW", current, voltage, speed);
  }

  private static String tig(double current, double voltage, double speed) {
    return pass("GTAW-AC", current, voltage, speed);
  }

  private static String pass(String process, double current, double voltage, double speed) {
    return String.format(
        Locale.ROOT,
        "process: %s, current: %s A, voltage: %s V, travel_speed: %s mm/s",
        process,
        current,
        voltage,
        speed);
  }

  @ParameterizedTest
  @CsvSource({"3, 120, 13, 3.5, 1", "6, 200, 15, 3, 2", "2, 80, 12, 5, 1", "12, 320, 18, 2, 3"})
  void ordinaryTungstenArcWorkIsSound(int plate, double amps, double volts, double speed, int n) {
    assertEquals(Soundness.SOUND, of(plate(plate), tig(amps, volts, speed), n));
  }

  @ParameterizedTest
  @CsvSource({"3, 120, 19, 11, 1", "6, 200, 23, 9, 1", "6, 200, 24, 9, 2", "10, 240, 25, 8, 3"})
  void ordinaryMetalArcWorkIsSound(int plate, double amps, double volts, double speed, int n) {
    assertEquals(Soundness.SOUND, of(plate(plate), mig(amps, volts, speed), n));
  }

  @Test
  void squareEdgesOfThickPlateAreNotFusedThroughInOnePass() {
    Soundness thick = of(plate(25) + "preparation: square\n", mig(290, 26, 8), 1);
    assertTrue(thick.notSound());
    assertTrue(thick.fusedShare().orElseThrow() < 0.25);
    assertTrue(thick.reasons().get(0).contains("4.9 mm"), thick.reasons().get(0));
    assertTrue(thick.remedies().stream().anyMatch(text -> text.contains("double-v")));
    assertTrue(of(plate(12) + "preparation: square\n", mig(180, 22, 8), 1).notSound());
  }

  /** A pool stated deep fills more than half a circle on its bead. */
  @Test
  void aStatedPenetrationCountsForThePool() {
    String sides = plate(19) + "preparation: single-v\n";
    String keyhole = tig(340, 18, 1.9) + ", bead_width: 8 mm";
    double shallow = number(of(sides, keyhole, 1), "about ([0-9.]+) mm²");
    double deep = number(of(sides, keyhole + ", penetration: 19 mm", 1), "about ([0-9.]+) mm²");
    assertTrue(deep > 1.5 * shallow, deep + " after " + shallow);
  }

  private static double number(Soundness soundness, String pattern) {
    Matcher found = Pattern.compile(pattern).matcher(soundness.reasons().toString());
    assertTrue(found.find(), soundness.reasons().toString());
    return Double.parseDouble(found.group(1));
  }

  @Test
  void whatIsFusedCarriesNoMoreThanItsShareOfTheBase() {
    SectionProfile profile =
        Welded.SESSION.profile(
            WrittenWelds.of(plate(25) + "preparation: square\n", mig(290, 26, 8), 1));
    // 6061-T6 plate of 317 MPa on 4.9 of 25 mm.
    assertTrue(
        profile.soundness().reasons().get(1).contains("at most 62 MPa"),
        profile.soundness().reasons().get(1));
  }

  @Test
  void aGrooveIsFilledByEnoughPassesOrASlowerOne() {
    assertTrue(of(plate(25), mig(280, 27, 8), 4).notSound());
    Soundness fast = of(plate(6), mig(200, 23, 14), 1);
    assertTrue(fast.notSound());
    assertTrue(fast.reasons().get(0).contains("not filled"), fast.reasons().get(0));
    // 20.7 mm² of groove from 1 mm³ for every ampere and second: 200 / 20.7 = 9.66 mm/s at most.
    assertTrue(fast.remedies().stream().anyMatch(text -> text.contains("9.6 mm/s")));
    assertTrue(of(plate(6), mig(200, 23, 9), 1).sound());
  }

  @Test
  void aStatedDepositCounts() {
    String little = "filler: {alloy: \"4043\", melted_area: 14 mm2, deposit_area: 10 mm2}\n";
    String much = "filler: {alloy: \"4043\", melted_area: 14 mm2, deposit_area: 22 mm2}\n";
    assertTrue(of(plate(6) + little, mig(200, 23, 9), 1).notSound());
    assertTrue(of(plate(6) + much, mig(200, 23, 9), 1).sound());
  }

  @Test
  void withoutFillerNoGrooveIsFilled() {
    String none = "filler: none\n";
    assertTrue(of(plate(6) + none + "preparation: single-v\n", tig(200, 15, 2.5), 1).notSound());
    assertTrue(of(plate(3) + none, tig(120, 13, 3.5), 1).sound());
  }

  @Test
  void aSmallRingMeltsDown() {
    String ring =
        "left: {alloy: \"6061\", temper: T6, thickness: 3 mm, width: 30 mm}\nring: {diameter: 40 mm}\n";
    Soundness hot = of(ring, tig(90, 13, 2.5), 1);
    assertTrue(hot.notSound());
    assertTrue(hot.reasons().get(0).contains("collapses at the lap end"), hot.reasons().get(0));
  }

  @Test
  void aRingWithoutABeadAtItsStartLacksFusion() {
    String ring =
        "left: {alloy: \"6061\", temper: T6, thickness: 1.5 mm, width: 60 mm}\nring: {diameter: 50 mm}\n";
    Soundness cold = of(ring, tig(55, 12, 2.5), 1);
    assertTrue(cold.notSound());
    assertTrue(cold.reasons().get(0).startsWith("Lack of fusion at the start"));
  }

  /** The lap's end runs over its start: what does not melt there leaks, wherever one looks. */
  @ParameterizedTest
  @CsvSource({"half lap, 150", "lap end, 150", "worst, 150", "half lap, 160"})
  void aRingWhoseCurrentFallsTooFarLacksFusionAtItsEnd(String position, double amps) {
    String ring =
        """
        left: {alloy: "6061", temper: T6, thickness: 3 mm, width: 150 mm}
        joint: butt
        filler: {alloy: "4643", dilution: 50 %%}
        ring: {diameter: 60 mm, position: %s, end_current: %s %%}
        """;
    String pass = tig(amps, 13, 3.5) + ", preheat: 100 °C";
    Soundness fallen = of(ring.formatted(position, 40), pass, 1);
    assertTrue(fallen.notSound(), fallen::note);
    assertTrue(
        fallen.reasons().stream().anyMatch(text -> text.contains("at the lap end")), fallen::note);
    assertTrue(fallen.remedies().stream().anyMatch(text -> text.contains("(end_current)")));
    assertTrue(of(ring.formatted(position, 85), pass, 1).sound());
  }

  /** A thick neck beside a thin tube: the bead is wide enough, and no edge of it has melted. */
  @Test
  void edgesThatDoNotMeltWhereTheSectionIsTakenLackFusion() {
    String stub =
        """
        left: {alloy: A356, temper: T6, thickness: 6 mm, width: 30 mm}
        right: {alloy: "3003", temper: O, thickness: 1.65 mm}
        joint: butt
        filler: {alloy: "4043", dilution: 35 %%}
        ring: {diameter: 40 mm, position: %s}
        """;
    Soundness start = of(stub.formatted("start"), tig(95, 13, 3) + ", bead_width: 5 mm", 1);
    assertTrue(start.notSound());
    assertTrue(start.reasons().get(0).startsWith("Lack of fusion: neither edge"), start::note);
    assertTrue(start.remedies().get(0).startsWith("At the start hold the arc"), start::note);
    assertTrue(of(stub.formatted("lap end"), tig(95, 13, 3) + ", bead_width: 5 mm", 1).sound());
  }

  @Test
  void aThickBlockStaysColdUnlessItIsPreheated() {
    String tee = plate(40) + "right: {alloy: \"6061\", temper: T6, thickness: 3 mm}\njoint: tee\n";
    Soundness cold = of(tee, tig(200, 15, 2.5), 1);
    assertTrue(cold.notSound());
    assertTrue(cold.remedies().stream().anyMatch(text -> text.contains("Preheat the thick part")));
    assertTrue(of(tee, tig(200, 15, 2.5) + ", preheat: 120 °C", 1).sound());
    String even = plate(6) + "joint: tee\n";
    assertTrue(of(even, tig(180, 15, 2.5), 1).sound());
  }

  @Test
  void aPoolThatMissesOneSideJoinsNothing() {
    String off = plate(3) + "preparation: square\n";
    assertTrue(of(off, tig(120, 13, 3.5) + ", offset: 5 mm", 1).notSound());
    assertTrue(of(off, tig(120, 13, 3.5) + ", offset: -5 mm", 1).notSound());
  }

  @Test
  void aBeadOnThickPlateAndManyPassesInThickPlateAreNotComputed() {
    Soundness bead = of(plate(12) + "joint: bead\n", tig(180, 15, 3), 1);
    assertEquals(State.NOT_COMPUTED, bead.state());
    Soundness thick = of(plate(25), mig(280, 27, 8), 8);
    assertEquals(State.NOT_COMPUTED, thick.state());
    assertTrue(of(plate(3) + "joint: bead\n", tig(120, 13, 3), 1).sound());
  }

  @Test
  void aTenthOfTheThicknessMayBeMissingAndIsSaid() {
    String given = tig(120, 13, 3.5) + ", penetration: ";
    WeldCase nearly = WrittenWelds.of(plate(3), given + "2.8 mm", 1);
    SectionProfile profile = Welded.SESSION.thinProfile(nearly);
    assertTrue(profile.soundness().sound());
    assertTrue(profile.warnings().stream().anyMatch(w -> w.code().equals("root-not-reached")));
    assertFalse(of(plate(3), given + "2.6 mm", 1).sound());
  }

  /** Four beads on 25 mm do not meet in its middle: a section there is no section of the weld. */
  @Test
  void aSectionBelowThePoolsSaysSo() {
    String thick = plate(25) + "preparation: double-v\n";
    assertTrue(below(thick, 4));
    assertFalse(below(thick + "depth: 4 mm\n", 4));
    assertFalse(below(plate(6), 2));
    assertFalse(below(plate(25) + "preparation: square\n", 1), "the open root is said first");
  }

  private static boolean below(String more, int passes) {
    WeldCase weldCase = WrittenWelds.of(more, mig(280, 27, 7), passes);
    return Welded.SESSION.thinProfile(weldCase).warnings().stream()
        .anyMatch(warning -> warning.code().equals("no-weld-metal"));
  }

  @Test
  void nothingIsClaimedOfAJointThatIsNone() {
    for (String shape : List.of("preparation: square\n", "joint: bead\n")) {
      SectionProfile profile =
          Welded.SESSION.thinProfile(WrittenWelds.of(plate(12) + shape, mig(180, 22, 8), 1));
      JointReport report = JointReport.of(profile, JointSettings.DEFAULT);
      report.strengths().forEach(one -> assertTrue(one.tensile().isEmpty()));
      report.strengths().forEach(one -> assertTrue(Double.isNaN(one.lowestYield())));
      report.strengths().forEach(one -> assertEquals(profile.soundness().note(), one.note()));
    }
  }

  @ParameterizedTest
  @CsvSource({"8, 160", "8, 190", "6, 121", "5, 110"})
  void whoeverFollowsTheAdviceOnTheArcFusesThrough(int thickness, double current) {
    String more = plate(thickness) + "preparation: square\n";
    String said = String.join(" ", of(more, tig(current, 15, 3.3), 1).remedies());
    Matcher amperes = Pattern.compile("With (\\d+) A").matcher(said);
    Matcher speed = Pattern.compile("At ([\\d.]+) mm/s").matcher(said);
    boolean hotter = amperes.find();
    boolean slower = speed.find();
    assertTrue(hotter || slower, said);
    if (hotter) {
      double enough = Double.parseDouble(amperes.group(1));
      assertTrue(of(more, tig(enough, 15, 3.3), 1).sound(), said);
    }
    if (slower) {
      double slow = Double.parseDouble(speed.group(1));
      assertTrue(of(more, tig(current, 15, slow), 1).sound(), said);
    }
  }
}
