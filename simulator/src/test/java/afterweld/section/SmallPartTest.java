package afterweld.section;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import afterweld.section.soundness.Soundness;
import afterweld.thermal.HeatFlow;
import afterweld.thermal.HeatInputException;
import afterweld.thermal.Pass;
import afterweld.thermal.PeakMap;
import afterweld.thermal.WeldCourse.Place;
import afterweld.weld.Ring;
import afterweld.weld.Side;
import afterweld.weld.Warning;
import afterweld.weld.WeldCase;
import afterweld.weld.WeldCaseDraft;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Rings and narrow bodies as whole sections. */
class SmallPartTest {
  private static final double DIAMETER = 0.04;

  private static WeldCase butt(OptionalDouble width, Optional<Ring> ring, Optional<HeatFlow> flow) {
    Side base = Cases.side("6061", "T6", 0.003);
    Side side = new Side(base.alloy(), base.temper(), 0.003, width, base.composition());
    WeldCaseDraft draft =
        WeldCase.of(side, side)
            .title("small part")
            .filler(Cases.filler("4043", 0.4))
            .passes(List.of(Cases.pass(120, 4e-3, 293.15)))
            .ambient(293.15)
            .depth(0.0015)
            .naturalAge(30 * Cases.DAY);
    ring.ifPresent(draft::ring);
    flow.ifPresent(draft::heatFlow);
    return draft.done();
  }

  private static WeldCase ring(Place position, Optional<HeatFlow> flow) {
    return butt(OptionalDouble.empty(), Optional.of(new Ring(DIAMETER, position)), flow);
  }

  private static List<String> codes(SectionProfile profile) {
    return profile.warnings().stream().map(Warning::code).toList();
  }

  /** Outermost place on the right that is not base metal, m. */
  private static double softened(SectionProfile profile) {
    return profile.zones().stream()
        .filter(span -> span.zone() != Zone.BASE)
        .mapToDouble(ZoneSpan::to)
        .max()
        .orElseThrow();
  }

  @Test
  void aSmallRingIsFollowedRound() {
    SectionProfile half = Welded.SESSION.profile(ring(Place.MIDDLE, Optional.empty()));
    assertTrue(
        codes(half).containsAll(List.of("heat-flow-shell", "ring-section", "constant-current")));
    assertFalse(codes(half).contains("ring-as-plate"));
    SectionProfile end = Welded.SESSION.profile(ring(Place.END, Optional.empty()));
    assertTrue(softened(end) > 1.2 * softened(half), softened(end) + " " + softened(half));
    for (int i = 0; i < half.stations().size(); i++) {
      Station mirror = half.stations().get(half.stations().size() - 1 - i);
      assertEquals(half.stations().get(i).estimates(), mirror.estimates());
    }
  }

  @Test
  void worstIsNearTheEndOfTheLap() {
    WeldCase worst = ring(Place.WORST, Optional.empty());
    PeakMap peaks = Welded.SESSION.peaks(worst).orElseThrow();
    assertEquals(Math.PI * DIAMETER, peaks.length(), 1e-12);
    assertTrue(peaks.section() > 0.75 * peaks.length());
    assertEquals(2, peaks.legs());
    assertTrue(peaks.ring());
  }

  @Test
  void aRingIsShownAtItsStartHalfWayAndAtItsEnd() {
    AlongWeld along = Welded.SESSION.along(ring(Place.WORST, Optional.empty())).orElseThrow();
    assertEquals(
        List.of("start", "half lap", "lap end"),
        along.stated().places().stream().map(place -> along.label(place.place())).toList());
    List<Double> widths =
        along.stated().places().stream().map(AlongWeld.AtPlace::beadWidth).toList();
    List<Double> soft =
        along.stated().places().stream().map(at -> softened(at.profile().orElseThrow())).toList();
    assertTrue(widths.get(0) < widths.get(1) && widths.get(1) < widths.get(2), "" + widths);
    assertTrue(soft.get(1) < soft.get(2), "" + soft);
    AlongWeld.Sections falling = along.other().orElseThrow();
    assertTrue(falling.endCurrent() < 0.95, "end current " + falling.endCurrent());
    AlongWeld.AtPlace taken = falling.end();
    assertTrue(taken.beadWidth() < widths.get(2), "" + taken.beadWidth());
    assertTrue(
        softened(taken.profile().orElseThrow()) < soft.get(2),
        "" + softened(taken.profile().orElseThrow()));
  }

  /** The section asked for and the same place in the view along the weld are one and the same. */
  @Test
  void theViewAlongTheWeldAgreesWithTheSection() {
    WeldCase half = ring(Place.MIDDLE, Optional.empty());
    SectionProfile section = Welded.SESSION.thinProfile(half);
    AlongWeld along = Welded.SESSION.along(half).orElseThrow();
    assertEquals(
        section.stations(), along.stated().places().get(1).profile().orElseThrow().stations());
  }

  @Test
  void aPlainWeldHasNoViewAlongIt() {
    assertTrue(
        Welded.SESSION
            .along(butt(OptionalDouble.empty(), Optional.empty(), Optional.empty()))
            .isEmpty());
    assertTrue(Welded.SESSION.along(ring(Place.WORST, Optional.of(HeatFlow.PLATE))).isEmpty());
  }

  @Test
  void aCurrentTakenBackIsComparedWithAConstantOne() {
    WeldCase constant = ring(Place.END, Optional.empty());
    WeldCase fallingCase = constant.change().ring(new Ring(DIAMETER, Place.END, 0.75)).done();
    AlongWeld along = Welded.SESSION.along(fallingCase).orElseThrow();
    AlongWeld.Sections other = along.other().orElseThrow();
    assertEquals(1, other.endCurrent());
    assertTrue(other.end().beadWidth() > along.stated().places().get(2).beadWidth());
    assertTrue(codes(Welded.SESSION.profile(fallingCase)).contains("falling-current"));
  }

  /** In parts whose heat enters as deep as the bead is wide: what is foretold is what comes. */
  @Test
  void anotherFallOfTheCurrentMeltsWhatWasForetoldOfIt() {
    Side wall = Cases.side("6061", "T6", 0.006);
    Ring ring = new Ring(0.06, Place.END);
    Pass pass = Cases.pass(200, 3e-3, 293.15);
    WeldCase constant =
        ring(Place.END, Optional.empty())
            .change()
            .sides(wall, wall)
            .ring(ring)
            .passes(List.of(pass))
            .done();
    AlongWeld.Sections foretold =
        Welded.SESSION.along(constant).orElseThrow().other().orElseThrow();
    WeldCase falling =
        constant
            .change()
            .ring(new Ring(0.06, Place.END, foretold.endCurrent()))
            .passes(List.of(foretold.passes().get(0).pass()))
            .done();
    AlongWeld entered = Welded.SESSION.along(falling).orElseThrow();
    assertBeads(foretold, entered.stated());
    assertBeads(
        Welded.SESSION.along(constant).orElseThrow().stated(), entered.other().orElseThrow());
  }

  private static void assertBeads(AlongWeld.Sections expected, AlongWeld.Sections found) {
    for (int i = 0; i < expected.places().size(); i++) {
      double bead = expected.places().get(i).beadWidth();
      assertEquals(bead, found.places().get(i).beadWidth(), 0.1e-3, "place " + i);
    }
  }

  /** Who sets the current that is named gets the bead that is promised. */
  @Test
  void tooColdAnArcIsToldTheCurrentThatMelts() {
    WeldCase cold = withCurrent(60);
    HeatInputException fault =
        assertThrows(HeatInputException.class, () -> Welded.SESSION.heats(cold));
    Matcher named = Pattern.compile("from about (\\d+) A on").matcher(fault.getMessage());
    assertTrue(named.find(), fault.getMessage());
    double current = Double.parseDouble(named.group(1));
    double bead = 2 * Welded.SESSION.heats(withCurrent(current)).get(0).fusionHalfWidth();
    assertTrue(bead > 2e-3 && bead < 3e-3, "bead " + bead);
  }

  private static WeldCase withCurrent(double current) {
    Pass pass = Cases.pass(current, 4e-3, 293.15);
    return ring(Place.MIDDLE, Optional.empty()).change().passes(List.of(pass)).done();
  }

  /** One place, one width: the last changed metal of the section and the row along the weld. */
  @Test
  void theBaseBeginsWhereTheViewAlongTheWeldEndsItsSoftening() {
    WeldCase end = ring(Place.END, Optional.empty());
    SectionProfile section = Welded.SESSION.thinProfile(end);
    AlongWeld.AtPlace there = Welded.SESSION.along(end).orElseThrow().stated().end();
    assertEquals(
        there.right().reach(section.softening().right().from()), softened(section), 0.05e-3);
  }

  /** Where the depth into the thicker part is open, the band holds both of its ends. */
  @Test
  void anOpenDepthIntoAThickPartWidensTheBand() {
    Side thick = Cases.side("6061", "T6", 0.008);
    Side thin = Cases.side("6061", "T6", 0.004);
    WeldCase open =
        butt(OptionalDouble.empty(), Optional.empty(), Optional.empty())
            .change()
            .sides(thick, thin)
            .passes(List.of(Cases.pass(250, 4e-3, 293.15)))
            .done();
    SectionProfile profile = Welded.SESSION.profile(open);
    assertTrue(codes(profile).contains("unequal-legs-depth"));
    for (double depth : new double[] {0.002, 0.008}) {
      Pass known = penetrating(open.passes().get(0), depth);
      SectionProfile end = Welded.SESSION.profile(open.change().passes(List.of(known)).done());
      assertFalse(codes(end).contains("unequal-legs-depth"));
      assertTrue(band(profile) > 1.05 * band(end), band(profile) + " " + band(end));
    }
  }

  /** Mean width of the band of as-welded hardness in the softened metal of the thin part. */
  private static double band(SectionProfile profile) {
    return profile.stations().stream()
        .filter(station -> station.zone() == Zone.OVERAGED || station.zone() == Zone.ANNEALED)
        .map(station -> station.estimates().get(1))
        .mapToDouble(as -> (as.high().hardness() - as.low().hardness()) / as.middle().hardness())
        .average()
        .orElseThrow();
  }

  private static Pass penetrating(Pass pass, double depth) {
    return new Pass(
        pass.process(),
        pass.current(),
        pass.voltage(),
        pass.travelSpeed(),
        pass.startTemperature(),
        pass.beadWidth(),
        OptionalDouble.of(depth),
        pass.efficiency(),
        pass.offset(),
        pass.pause());
  }

  /** A leg so narrow that all of it softens has no temperature from which it does. */
  @Test
  void aLegMaySoftenThroughout() {
    WeldCase narrow = butt(OptionalDouble.of(0.03), Optional.empty(), Optional.empty());
    Softening softening = Welded.SESSION.profile(narrow).softening();
    assertTrue(softening.left().throughout() && !softening.left().threshold());
  }

  /** Metal that melted out to its free edge is soft to that edge. */
  @Test
  void aLegThatMeltsToItsEndIsSoftThroughout() {
    WeldCase strip =
        WrittenWelds.of(
            """
            left: {alloy: "6063", temper: T6, thickness: 5 mm, width: 40 mm}
            joint: butt
            seam: {length: 120 mm, position: end}
            """,
            "process: GTAW-AC, current: 220 A, voltage: 15 V, travel_speed: 2.5 mm/s",
            1);
    SectionProfile profile = Welded.SESSION.profile(strip);
    assertTrue(profile.stations().stream().allMatch(one -> one.peakTemperature() > 850));
    assertTrue(profile.softening().left().throughout());
    assertTrue(profile.softening().right().throughout());
  }

  @Test
  void theCaseMayNameTheField() {
    WeldCase flat = ring(Place.END, Optional.of(HeatFlow.PLATE));
    SectionProfile profile = Welded.SESSION.profile(flat);
    assertTrue(codes(profile).containsAll(List.of("heat-flow-plate", "ring-as-plate")));
    assertTrue(Welded.SESSION.peaks(flat).isEmpty());
  }

  @Test
  void aNarrowStripIsFollowedAlong() {
    OptionalDouble narrow = OptionalDouble.of(0.03);
    SectionProfile strip = Welded.SESSION.profile(butt(narrow, Optional.empty(), Optional.empty()));
    assertTrue(codes(strip).contains("heat-flow-shell"));
    assertFalse(codes(strip).contains("narrow-legs"));
    SectionProfile forced =
        Welded.SESSION.profile(butt(narrow, Optional.empty(), Optional.of(HeatFlow.PLATE)));
    assertTrue(codes(forced).contains("narrow-legs"));
    SectionProfile wide =
        Welded.SESSION.profile(butt(OptionalDouble.empty(), Optional.empty(), Optional.empty()));
    assertTrue(codes(wide).stream().noneMatch(code -> code.startsWith("heat-flow")));
    assertTrue(softened(strip) > softened(wide), softened(strip) + " " + softened(wide));
  }

  /** Where a ring begins on cold metal its bead is narrower, and the root may stay open there. */
  @Test
  void aSectionAtAColdStartIsJudgedByTheBeadThere() {
    String pipe =
        """
        left: {alloy: "5052", temper: H34, thickness: 3 mm, width: 150 mm}
        joint: butt
        filler: {alloy: "5356", dilution: 60 %}
        ring: {diameter: 250 mm, position: PLACE}
        """;
    String pass = "process: GTAW-AC, current: 95 A, voltage: 13 V, travel_speed: 3 mm/s";
    Soundness start =
        Welded.SESSION.soundness(WrittenWelds.of(pipe.replace("PLACE", "start"), pass, 1));
    assertTrue(start.notSound(), start.toString());
    assertTrue(start.remedies().toString().contains("At the start"), start.toString());
    Soundness lap =
        Welded.SESSION.soundness(WrittenWelds.of(pipe.replace("PLACE", "half lap"), pass, 1));
    assertTrue(lap.sound(), lap.toString());
  }
}
