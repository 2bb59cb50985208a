package afterweld.section;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import afterweld.material.Alloy;
import afterweld.material.MaterialLibrary;
import afterweld.material.Temper;
import afterweld.strength.Strength;
import afterweld.weld.Side;
import afterweld.weld.Warning;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Metal that is under the minimum of its temper is not that temper (minima: {@code
 * design_codes.csv}).
 */
class DeliveredMinimumTest {
  /** Minima are rounded to whole MPa or ksi. */
  private static final double ROUNDED = 0.99;

  private record Delivered(Side side, DeliveredMinimum least) {
    @Override
    public String toString() {
      return side.alloy().name() + "-" + side.temper().name();
    }
  }

  private static Side side(Alloy alloy, Temper temper, double thickness) {
    return new Side(alloy, temper, thickness, OptionalDouble.empty(), alloy.composition());
  }

  static Stream<Delivered> delivered() {
    return MaterialLibrary.standard().bases().stream()
        .flatMap(alloy -> alloy.tempers().stream().map(temper -> side(alloy, temper, 0.0045)))
        .flatMap(
            side -> DeliveredMinimum.of(side).map(least -> new Delivered(side, least)).stream());
  }

  @ParameterizedTest
  @MethodSource("delivered")
  void noDeliveredTemperIsUnderItsMinimum(Delivered one) {
    Strength strength = SectionMetal.base(one.side()).strengthBefore();
    assertTrue(strength.yield() >= ROUNDED * one.least().yield(), strength.toString());
    assertTrue(strength.tensile() >= ROUNDED * one.least().tensile(), strength.toString());
  }

  /** 31 and 44 ksi from 4 to 40 mm (US Aluminum Design Manual, Table 3.3-1M, read). */
  @Test
  void marinePlateHasItsMinimumInItsThickness() {
    Alloy alloy = MaterialLibrary.standard().base("5083").orElseThrow();
    Temper temper = alloy.temper("H116").orElseThrow();
    DeliveredMinimum least = DeliveredMinimum.of(side(alloy, temper, 0.008)).orElseThrow();
    assertEquals(215e6, least.yield());
    assertEquals(305e6, least.tensile());
    assertTrue(least.source().contains("3.3-1M"), least.source());
    assertTrue(DeliveredMinimum.of(side(alloy, temper, 0.003)).isEmpty());
  }

  @Test
  void thereAreMinimaToHold() {
    assertTrue(delivered().count() >= 30);
  }

  /** EN 1999-1-1, table 3.2a: 85 and 215 MPa for 5454-O and H111 (memory). */
  @Test
  void noBandOfUntouchedMetalGoesUnderTheMinimum() {
    SectionProfile tank = Cases.butt("5454", "O").withFiller(Cases.filler("5554", 0.3)).run();
    DeliveredMinimum least = DeliveredMinimum.of(tank.weldCase().left()).orElseThrow();
    assertEquals(85e6, least.yield());
    assertEquals(215e6, least.tensile());
    for (Station station : tank.stations()) {
      assertTrue(station.estimates().get(0).low().tensile() >= 215e6);
      if (station.zone() == Zone.BASE) {
        assertTrue(station.estimates().get(1).low().yield() >= 85e6);
      }
    }
    assertTrue(said(tank).contains("215 MPa"), said(tank));
  }

  @Test
  void whatTheWeldSoftenedHasNoMinimum() {
    SectionProfile aged = Cases.butt("6061", "T6").run();
    double least = DeliveredMinimum.of(aged.weldCase().left()).orElseThrow().yield();
    assertTrue(
        aged.stations().stream()
            .filter(station -> station.zone() == Zone.ANNEALED)
            .allMatch(station -> station.estimates().get(1).low().yield() < least));
  }

  @Test
  void whereNoMinimumIsKnownThatIsSaid() {
    SectionProfile annealed = Cases.butt("6061", "O").run();
    assertTrue(DeliveredMinimum.of(annealed.weldCase().left()).isEmpty());
    assertTrue(said(annealed).contains("no minimum"), said(annealed));
  }

  private static String said(SectionProfile profile) {
    return profile.warnings().stream()
        .filter(warning -> warning.code().equals("delivered-minimum"))
        .map(Warning::text)
        .findFirst()
        .orElseThrow();
  }
}
