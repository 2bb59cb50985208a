package afterweld.metallurgy;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import afterweld.material.Composition;
import afterweld.thermal.TemperatureHistory;
import java.util.List;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** What holds for any composition and any history. */
class PrecipitationLawsTest {
  private static final double MAGNESIUM_PER_WT = 0.2698 / 24.305;
  private static final double SILICON_PER_WT = 0.2698 / 28.086;

  @Property(tries = 150)
  void soluteIsConservedAndEverythingStaysWithinBounds(
      @ForAll("compositions") Composition composition,
      @ForAll boolean cast,
      @ForAll("histories") TemperatureHistory history) {
    PrecipitationModel metal =
        cast ? PrecipitationModel.asCast(composition) : PrecipitationModel.wrought(composition);
    PrecipitateState state = metal.follow(history);
    assertConserved(new SoluteBudget(composition), state);
    assertBounded(metal, state);
  }

  /**
   * Every atom is in the matrix, in one of the populations or in the silicon phase. A metal without
   * magnesium or silicon is computed with a trace of both, and may be wrong by that trace.
   */
  private static void assertConserved(SoluteBudget budget, PrecipitateState state) {
    double bound = state.needleUnits() + state.intermediateUnits() + state.equilibriumUnits();
    double magnesium = state.matrixMagnesium() * MAGNESIUM_PER_WT + 2 * bound;
    double silicon = state.matrixSilicon() * SILICON_PER_WT + bound + state.siliconPhase();
    double trace = budget.hardening() - Math.min(budget.magnesium() / 2, budget.silicon());
    double tolerance = 1e-7 * budget.hardening() + trace;
    assertEquals(budget.magnesium(), magnesium, tolerance);
    assertEquals(budget.silicon(), silicon, tolerance);
  }

  private static void assertBounded(PrecipitationModel metal, PrecipitateState state) {
    assertWithin(0, metal.hardeningSolute() * (1 + 1e-7), state.totalUnits());
    assertWithin(0, 1, state.clusterDegree());
    assertWithin(0, 1, state.spheroidisation());
    assertWithin(0, 1, state.siliconPhase());
    for (SizeDistribution particles :
        List.of(state.needles(), state.intermediate(), state.equilibrium())) {
      for (int i = 0; i < particles.size(); i++) {
        assertWithin(0, 1e30, particles.number(i));
        assertWithin(0, 1e-3, particles.radius(i));
      }
    }
  }

  private static void assertWithin(double low, double high, double value) {
    assertTrue(value >= low && value <= high, value + " is not in " + low + " to " + high);
  }

  @Provide
  Arbitrary<Composition> compositions() {
    return Combinators.combine(
            Arbitraries.doubles().between(0, 12),
            Arbitraries.doubles().between(0, 5),
            Arbitraries.doubles().between(0, 0.4),
            Arbitraries.doubles().between(0, 0.5),
            Arbitraries.doubles().between(0, 0.8),
            Arbitraries.doubles().between(0, 0.3))
        .as(Treatments::composition);
  }

  /** Up to eight legs of 0.1 s to 10 days between 25 and 590 °C. */
  @Provide
  Arbitrary<TemperatureHistory> histories() {
    Arbitrary<Double> temperatures = Arbitraries.doubles().between(298.15, 863.15);
    Arbitrary<Double> times = Arbitraries.doubles().between(-1, 6).map(e -> Math.pow(10, e));
    return Combinators.combine(temperatures, temperatures.list().ofSize(8), times.list().ofSize(8))
        .as(PrecipitationLawsTest::history);
  }

  private static TemperatureHistory history(
      double start, List<Double> temperatures, List<Double> times) {
    return IntStream.range(0, times.size())
        .boxed()
        .reduce(
            TemperatureHistory.hold(start, 0),
            (history, i) -> history.thenTo(temperatures.get(i), times.get(i)),
            (first, second) -> second);
  }
}
