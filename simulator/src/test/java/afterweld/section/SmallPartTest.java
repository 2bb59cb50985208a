package afterweld.section;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import afterweld.thermal.HeatFlow;
import afterweld.thermal.PeakMap;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Rings and narrow bodies as whole sections. */
class SmallPartTest {
  private static final double DIAMETER = 0.04;

  private static WeldCase butt(OptionalDouble width, Optional<Ring> ring, Optional<HeatFlow> flow) {
    Side base = Cases.side("6061", "T6", 0.003);
    Side side = new Side(base.alloy(), base.temper(), 0.003, width, base.composition());
    return new WeldCase(
        "small part",
        side,
        side,
        Joint.BUTT,
        Preparation.SQUARE,
        ring,
        Cases.filler("4043", 0.4),
        List.of(Cases.pass(120, 4e-3, 293.15)),
        OptionalDouble.empty(),
        293.15,
        0.0015,
        30 * Cases.DAY,
        List.of(),
        flow,
        List.of());
  }

  private static WeldCase ring(Ring.Position position, Optional<HeatFlow> flow) {
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
    SectionProfile half = SectionSimulation.run(ring(Ring.Position.HALF_LAP, Optional.empty()));
    assertTrue(
        codes(half)
            .containsAll(List.of("heat-flow-shell", "ring-section", "ring-constant-current")));
    assertFalse(codes(half).contains("ring-as-plate"));
    SectionProfile end = SectionSimulation.run(ring(Ring.Position.LAP_END, Optional.empty()));
    assertTrue(softened(end) > 1.2 * softened(half), softened(end) + " " + softened(half));
    for (int i = 0; i < half.stations().size(); i++) {
      Station mirror = half.stations().get(half.stations().size() - 1 - i);
      assertEquals(half.stations().get(i).estimates(), mirror.estimates());
    }
  }

  @Test
  void worstIsNearTheEndOfTheLap() {
    WeldCase worst = ring(Ring.Position.WORST, Optional.empty());
    PeakMap peaks = SectionSimulation.peaks(worst).orElseThrow();
    assertEquals(Math.PI * DIAMETER, peaks.length(), 1e-12);
    assertTrue(peaks.section() > 0.75 * peaks.length());
    assertEquals(2, peaks.legs());
    assertTrue(peaks.ring());
  }

  @Test
  void theCaseMayNameTheField() {
    WeldCase flat = ring(Ring.Position.LAP_END, Optional.of(HeatFlow.PLATE));
    SectionProfile profile = SectionSimulation.run(flat);
    assertTrue(codes(profile).containsAll(List.of("heat-flow-plate", "ring-as-plate")));
    assertTrue(SectionSimulation.peaks(flat).isEmpty());
  }

  @Test
  void aNarrowStripIsFollowedAlong() {
    OptionalDouble narrow = OptionalDouble.of(0.03);
    SectionProfile strip = SectionSimulation.run(butt(narrow, Optional.empty(), Optional.empty()));
    assertTrue(codes(strip).contains("heat-flow-shell"));
    assertFalse(codes(strip).contains("narrow-legs"));
    SectionProfile forced =
        SectionSimulation.run(butt(narrow, Optional.empty(), Optional.of(HeatFlow.PLATE)));
    assertTrue(codes(forced).contains("narrow-legs"));
    SectionProfile wide =
        SectionSimulation.run(butt(OptionalDouble.empty(), Optional.empty(), Optional.empty()));
    assertTrue(codes(wide).stream().noneMatch(code -> code.startsWith("heat-flow")));
    assertTrue(softened(strip) > softened(wide), softened(strip) + " " + softened(wide));
  }
}
