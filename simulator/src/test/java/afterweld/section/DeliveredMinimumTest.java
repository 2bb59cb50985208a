package afterweld.section;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import afterweld.material.Alloy;
import afterweld.material.Fact;
import afterweld.material.MaterialLibrary;
import afterweld.material.Temper;
import afterweld.strength.Strength;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Metal that is under the minimum of its temper is not that temper (minima: {@code tempers.csv}).
 */
class DeliveredMinimumTest {
  /** Minima are rounded to whole MPa or ksi. */
  private static final double ROUNDED = 0.99;

  private record Delivered(Alloy alloy, Temper temper) {
    double minimum(String property) {
      return alloy.facts().stream()
          .filter(fact -> fact.qualifier().equals(temper.name()))
          .filter(fact -> fact.property().equals(property))
          .map(Fact::value)
          .mapToDouble(Double::parseDouble)
          .max()
          .orElse(0);
    }

    Strength strength() {
      Side side =
          new Side(alloy, temper, 0.004, OptionalDouble.empty(), alloy.composition(), Set.of());
      return SectionMetal.base(side).strengthBefore();
    }

    @Override
    public String toString() {
      return alloy.name() + "-" + temper.name();
    }
  }

  static Stream<Delivered> delivered() {
    return MaterialLibrary.standard().bases().stream()
        .flatMap(alloy -> alloy.tempers().stream().map(temper -> new Delivered(alloy, temper)))
        .filter(one -> one.minimum("minimum yield") > 0);
  }

  @ParameterizedTest
  @MethodSource("delivered")
  void noDeliveredTemperIsUnderItsMinimum(Delivered one) {
    Strength strength = one.strength();
    assertTrue(
        strength.yield() >= ROUNDED * 1e6 * one.minimum("minimum yield"), strength.toString());
    assertTrue(
        strength.tensile() >= ROUNDED * 1e6 * one.minimum("minimum tensile"), strength.toString());
  }

  @Test
  void thereAreMinimaToHold() {
    assertTrue(delivered().count() >= 6);
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
    SectionProfile bar = Cases.butt("1100", "H14").withFiller(Cases.filler("1100", 0.3)).run();
    assertTrue(DeliveredMinimum.of(bar.weldCase().left()).isEmpty());
    assertTrue(said(bar).contains("no minimum"), said(bar));
  }

  private static String said(SectionProfile profile) {
    return profile.warnings().stream()
        .filter(warning -> warning.code().equals("delivered-minimum"))
        .map(Warning::text)
        .findFirst()
        .orElseThrow();
  }
}
