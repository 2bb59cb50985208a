package afterweld.strength;

import static afterweld.metallurgy.Treatments.ALLOY_6005A;
import static afterweld.metallurgy.Treatments.ALLOY_6061;
import static afterweld.metallurgy.Treatments.ALLOY_6063;
import static afterweld.metallurgy.Treatments.ALLOY_6082;
import static afterweld.metallurgy.Treatments.HOUR;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import afterweld.material.Composition;
import afterweld.metallurgy.PrecipitateState;
import afterweld.metallurgy.PrecipitationModel;
import afterweld.metallurgy.Treatments;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class StrengthLawsTest {
  /** An alloy and the temperature its tempers are solution treated at, °C. */
  enum Base {
    A6061(ALLOY_6061, 530),
    A6063(ALLOY_6063, 520),
    A6082(ALLOY_6082, 540),
    A6005A(ALLOY_6005A, 530);

    private final PrecipitationModel metal;
    private final double solution;

    Base(Composition composition, double solution) {
      metal = PrecipitationModel.wrought(composition);
      this.solution = solution;
    }
  }

  /** The whole point of a full treatment after welding: the base forgets the weld. */
  @Property(tries = 60)
  void fullTreatmentBringsWroughtMetalBack(
      @ForAll Base base,
      @ForAll @DoubleRange(min = 150, max = 585) double peak,
      @ForAll @DoubleRange(min = 5, max = 200) double cooling,
      @ForAll @DoubleRange(min = 100, max = 585) double secondPeak,
      @ForAll @DoubleRange(min = 0, max = 1000) double hoursBetween) {
    PrecipitateState before = base.metal.follow(Treatments.t6(base.solution));
    PrecipitateState welded =
        base.metal.advance(
            before,
            Treatments.weldCycle(peak, cooling)
                .then(Treatments.shelf(hoursBetween * HOUR))
                .then(Treatments.weldCycle(secondPeak, cooling)));
    PrecipitateState after = base.metal.advance(welded, Treatments.retreatment(base.solution));
    assertTrue(yieldOf(after) >= 0.97 * yieldOf(before), yieldOf(after) + " of " + yieldOf(before));
  }

  @Property(tries = 100)
  void strengthsArePositiveAndInOrder(
      @ForAll @DoubleRange(min = 0, max = 12) double si,
      @ForAll @DoubleRange(min = 0, max = 5) double mg,
      @ForAll @DoubleRange(min = 0, max = 0.4) double cu,
      @ForAll @DoubleRange(min = 0, max = 0.8) double mn,
      @ForAll boolean cast,
      @ForAll @DoubleRange(min = 25, max = 590) double peak,
      @ForAll @DoubleRange(min = 25, max = 260) double age) {
    Composition composition = Treatments.composition(si, mg, cu, 0.2, mn, 0.1);
    PrecipitationModel metal =
        cast ? PrecipitationModel.asCast(composition) : PrecipitationModel.wrought(composition);
    PrecipitateState state =
        metal.follow(
            Treatments.solution(500)
                .then(Treatments.weldCycle(Math.max(peak, 30), 45))
                .then(Treatments.aged(age, 5 * HOUR)));
    Strength strength = PrecipitateStrength.of(state);
    StrengthBreakdown parts = PrecipitateStrength.breakdown(state);
    assertTrue(strength.predicted());
    assertTrue(strength.yield() > 15e6, "yield " + strength.yield());
    assertTrue(strength.tensile() >= strength.yield());
    assertTrue(strength.hardness() > 0);
    assertTrue(parts.clusters() >= 0 && parts.precipitates() >= 0 && parts.cast() >= 0);
    assertEquals(strength.yield(), parts.total(), 1e-6 * strength.yield());
  }

  /** Trade fact: no magnesium, no response to ageing; at most 2 MPa. */
  @Test
  void siliconAloneDoesNotAge() {
    PrecipitationModel metal =
        PrecipitationModel.asCast(Treatments.composition(5, 0, 0, 0.2, 0, 0));
    PrecipitateState quenched = metal.follow(Treatments.shelf(60).then(Treatments.solution(530)));
    PrecipitateState aged = metal.advance(quenched, Treatments.aged(175, 8 * HOUR));
    assertTrue(
        yieldOf(aged) - yieldOf(quenched) <= 2e6, yieldOf(aged) + " after " + yieldOf(quenched));
  }

  /** The example of the package. */
  @Test
  void exampleOfThePackage() {
    PrecipitateState state = Base.A6061.metal.follow(Treatments.t6(530));
    Strength strength = PrecipitateStrength.of(state);
    assertEquals(278e6, strength.yield(), 0.5e6);
    assertEquals(109, strength.hardness(), 0.5);
    assertEquals(232e6, PrecipitateStrength.breakdown(state).precipitates(), 0.5e6);
    assertEquals(93, HardnessScale.brinell(strength.hardness()).value(), 0.5);
  }

  private static double yieldOf(PrecipitateState state) {
    return PrecipitateStrength.of(state).yield();
  }
}
