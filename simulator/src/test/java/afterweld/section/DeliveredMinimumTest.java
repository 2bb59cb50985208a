package afterweld.section;

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
}
