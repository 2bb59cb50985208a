package afterweld.section;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import afterweld.strength.Strength;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ForkJoinPool;
import java.util.stream.Collectors;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

/** What must hold of any section, whatever its numbers. */
class SectionLawsTest {
  private static final int TRIES = 8;
  private static final List<Zone> OUTWARDS =
      List.of(
          Zone.FUSION,
          Zone.PARTIALLY_MELTED,
          Zone.SOLUTIONIZED,
          Zone.ANNEALED,
          Zone.OVERAGED,
          Zone.BASE);

  @Provide
  Arbitrary<Cases> welds() {
    Arbitrary<String> alloys = Arbitraries.of("6061", "6063", "6082");
    Arbitrary<String> tempers = Arbitraries.of("T4", "T6", "O");
    Arbitrary<Double> currents = Arbitraries.doubles().between(100, 140);
    Arbitrary<Double> speeds = Arbitraries.doubles().between(2.5, 5).map(speed -> speed * 1e-3);
    return Combinators.combine(alloys, tempers, currents, speeds)
        .as(
            (alloy, temper, current, speed) ->
                Cases.butt(alloy, temper).withPasses(Cases.pass(current, speed, 293.15)));
  }

  /** Outermost place on the right whose yield is over 5 % below that before welding, m. */
  private static double extent(SectionProfile profile) {
    List<Station> stations = profile.stations();
    for (int i = stations.size() - 1; i > 0; i--) {
      double outer = left(stations.get(i));
      double inner = left(stations.get(i - 1));
      if (inner < 0.95 && outer >= 0.95) {
        double from = stations.get(i - 1).distance();
        return from + (0.95 - inner) / (outer - inner) * (stations.get(i).distance() - from);
      }
    }
    return 0;
  }

  private static double left(Station station) {
    return station.estimates().get(1).middle().yield()
        / station.estimates().get(0).middle().yield();
  }

  @Property(tries = TRIES)
  void moreHeatNeverNarrowsTheSoftZone(
      @ForAll @DoubleRange(min = 100, max = 125) double current,
      @ForAll @DoubleRange(min = 2.5, max = 4) double millimetresPerSecond,
      @ForAll @DoubleRange(min = 1.05, max = 1.3) double more) {
    Cases butt = Cases.butt("6061", "T6");
    double speed = millimetresPerSecond * 1e-3;
    double plain = extent(butt.withPasses(Cases.pass(current, speed, 293.15)).run());
    double power = extent(butt.withPasses(Cases.pass(current * more, speed, 293.15)).run());
    double slow = extent(butt.withPasses(Cases.pass(current, speed / more, 293.15)).run());
    double warm = extent(butt.withPasses(Cases.pass(current, speed, 293.15 * more)).run());
    assertTrue(power > plain && slow > plain && warm > plain, plain + ": " + power + slow + warm);
  }

  @Property(tries = TRIES)
  void equalSidesGiveASymmetricSection(@ForAll("welds") Cases cases) {
    List<Station> stations = cases.run().stations();
    for (int i = 0; i < stations.size(); i++) {
      Station mirror = stations.get(stations.size() - 1 - i);
      assertEquals(-mirror.distance(), stations.get(i).distance(), 0);
      assertEquals(mirror.zone(), stations.get(i).zone());
      assertEquals(mirror.estimates(), stations.get(i).estimates());
    }
  }

  @Test
  void swappedSidesGiveTheMirroredSection() {
    Cases mixed = Cases.butt("6061", "T6").withRight(Cases.side("6063", "T4", 0.003));
    Cases swapped =
        mixed.withLeft(Cases.side("6063", "T4", 0.003)).withRight(Cases.side("6061", "T6", 0.003));
    SectionProfile one = mixed.run();
    SectionProfile other = swapped.run();
    for (Station station : one.stations()) {
      if (station.zone() != Zone.FUSION) {
        Strength mirrored = at(other, -station.distance());
        assertEquals(station.estimates().get(1).middle().yield(), mirrored.yield(), 1);
      }
    }
  }

  private static Strength at(SectionProfile profile, double distance) {
    return profile.stations().stream()
        .filter(station -> Math.abs(station.distance() - distance) < 1e-9)
        .findFirst()
        .orElseThrow()
        .estimates()
        .get(1)
        .middle();
  }

  @Property(tries = TRIES)
  void aFullTreatmentErasesTheWeldInTheBaseMetal(@ForAll("welds") Cases cases) {
    String alloy = cases.left().alloy().name();
    double peakAged = SectionMetal.base(Cases.side(alloy, "T6", 0.003)).strengthBefore().yield();
    SectionProfile profile = cases.then(Cases.fullTreatment(alloy)).run();
    for (Station station : profile.stations()) {
      if (station.zone() != Zone.FUSION) {
        double after = station.estimates().get(2).middle().yield();
        assertTrue(after >= 0.97 * peakAged, station.distance() + ": " + after / peakAged);
      }
    }
  }

  @Property(tries = TRIES)
  void zonesStandInOrderAndTileTheLine(@ForAll("welds") Cases cases) {
    SectionProfile profile = cases.run();
    List<ZoneSpan> spans = profile.zones();
    List<Integer> ranks = new ArrayList<>();
    for (ZoneSpan span : spans) {
      ranks.add(OUTWARDS.indexOf(span.zone()));
    }
    int weld = ranks.indexOf(0);
    for (int i = 1; i < ranks.size(); i++) {
      assertTrue(i <= weld ? ranks.get(i) < ranks.get(i - 1) : ranks.get(i) > ranks.get(i - 1));
      assertEquals(spans.get(i - 1).to(), spans.get(i).from(), 0);
    }
    List<Station> stations = profile.stations();
    assertEquals(stations.get(0).distance(), spans.get(0).from(), 0);
    for (int i = 1; i < stations.size(); i++) {
      assertTrue(stations.get(i).distance() > stations.get(i - 1).distance());
    }
  }

  @Property(tries = TRIES)
  void bandsHoldTheirMiddleAndValuesAreThoseOfMetal(@ForAll("welds") Cases cases) {
    for (Station station : cases.run().stations()) {
      for (Estimate estimate : station.estimates()) {
        assertTrue(estimate.low().yield() < estimate.middle().yield());
        assertTrue(estimate.middle().yield() < estimate.high().yield());
        assertTrue(estimate.middle().yield() > 15e6 && estimate.middle().tensile() < 450e6);
        assertTrue(estimate.middle().tensile() >= estimate.middle().yield());
      }
    }
  }

  @Test
  void noMagnesiumNoResponse() {
    // Trade fact: weld metal without magnesium does not answer to ageing.
    Cases pure =
        Cases.butt("1100", "H14")
            .withFiller(Cases.filler("4043", 0.3))
            .then(Cases.fullTreatment("6063"));
    SectionProfile profile = Welded.SESSION.profileOfEveryStage(pure.weldCase());
    Station centre =
        profile.stations().stream()
            .filter(station -> station.distance() == 0)
            .findFirst()
            .orElseThrow();
    int quenched = profile.states().indexOf("after quench");
    double before = centre.estimates().get(quenched).middle().yield();
    double after = centre.estimates().get(profile.states().size() - 1).middle().yield();
    assertEquals(0, after - before, 2e6);
  }

  @Test
  void theResultDoesNotDependOnTheNumberOfThreads() {
    Cases cases =
        Cases.butt("6061", "T6")
            .withRight(Cases.side("6082", "T6", 0.003))
            .then(Cases.fullTreatment("6061"));
    List<String> printed = new ArrayList<>();
    for (int threads : new int[] {1, 2, 4, 2}) {
      ForkJoinPool pool = new ForkJoinPool(threads);
      printed.add(pool.submit(() -> printed(cases.runAnew())).join());
      pool.shutdown();
    }
    assertEquals(1, printed.stream().distinct().count());
  }

  private static String printed(SectionProfile profile) {
    return profile.stations().stream().map(Station::toString).collect(Collectors.joining("\n"));
  }
}
