package afterweld.joint;

import static afterweld.joint.Profiles.MM;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.DoubleStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;

/** What holds for every joint, whatever its strengths. */
@Domain(RandomJoints.class)
@Domain(DomainContext.Global.class)
class CrossWeldLawsTest {
  private static final double ROUNDING = 1e-9;

  @Property(tries = 200)
  void efficiencyIsAboveZeroAndAtMostOne(@ForAll SliceLine joint) {
    CrossWeldTension.Efficiency efficiency = pull(joint, 50).tensileEfficiency();
    assertTrue(efficiency.left() > 0 && efficiency.left() <= 1 + ROUNDING);
    assertTrue(efficiency.right() > 0 && efficiency.right() <= 1 + ROUNDING);
  }

  @Property(tries = 200)
  void theWeakestSliceSetsTheTensileStrength(@ForAll SliceLine joint) {
    CrossWeldTension result = pull(joint, 50);
    double lowest =
        joint.slices().stream().mapToDouble(s -> s.metal().tensile()).min().orElseThrow();
    assertEquals(lowest, result.tensileOfWeakestSlice(), ROUNDING * lowest);
    assertEquals(lowest, result.tensile(), ROUNDING * lowest);
  }

  @Property(tries = 200)
  void averagingOnlyRaises(@ForAll RandomJoints.Softened joint) {
    CrossWeldTension result = pull(joint.line(), 50);
    double weakest = result.tensileOfWeakestSlice();
    assertTrue(result.tensile() >= weakest * (1 - ROUNDING));
    assertTrue(result.tensile() <= joint.line().left().metal().tensile() * (1 + ROUNDING));
  }

  @Property(tries = 200)
  void proofLiesBetweenTheLowestAndTheHighest(@ForAll SliceLine joint) {
    double low = proofs(joint).min().orElseThrow();
    double high = proofs(joint).max().orElseThrow();
    pull(joint, 50)
        .proof()
        .ifPresent(
            proof -> {
              assertTrue(proof >= low * (1 - ROUNDING), proof + " below " + low);
              assertTrue(proof <= high * (1 + ROUNDING), proof + " above " + high);
            });
  }

  private static DoubleStream proofs(SliceLine joint) {
    return joint.slices().stream()
        .filter(s -> s.overlap(-25 * MM, 25 * MM) > 0)
        .mapToDouble(s -> s.metal().proof());
  }

  @Property(tries = 200)
  void aLongerGaugeReadsMoreProofAndLessElongation(
      @ForAll RandomJoints.Softened joint,
      @ForAll @DoubleRange(min = 20, max = 120) double gauge,
      @ForAll @DoubleRange(min = 1, max = 25) double more) {
    CrossWeldTension shorter = pull(joint.line(), gauge);
    CrossWeldTension longer = pull(joint.line(), gauge + more);
    assertTrue(longer.strainAtMaximum() <= shorter.strainAtMaximum() * (1 + ROUNDING));
    if (shorter.proof().isPresent() && longer.proof().isPresent()) {
      assertTrue(longer.proof().getAsDouble() >= shorter.proof().getAsDouble() * (1 - ROUNDING));
    }
  }

  @Property(tries = 200)
  void leftAndRightAreAlike(@ForAll SliceLine joint) {
    CrossWeldTension result = pull(joint, 50);
    CrossWeldTension mirrored = pull(RandomJoints.mirrored(joint), 50);
    assertEquals(result.tensile(), mirrored.tensile(), ROUNDING * result.tensile());
    assertEquals(
        result.proof().orElse(-1), mirrored.proof().orElse(-1), ROUNDING * result.tensile());
    assertEquals(result.strainAtMaximum(), mirrored.strainAtMaximum(), 1e-7);
    assertEquals(result.tensileEfficiency().left(), mirrored.tensileEfficiency().right(), ROUNDING);
  }

  @Property(tries = 200)
  void moreReinforcementNeverWeakens(
      @ForAll SliceLine joint,
      @ForAll @DoubleRange(min = 0, max = 3) double bead,
      @ForAll @DoubleRange(min = 0, max = 3) double more) {
    CrossWeldTension low = pull(joint.withReinforcement(bead * MM, "weld"), 50);
    CrossWeldTension high = pull(joint.withReinforcement((bead + more) * MM, "weld"), 50);
    assertTrue(high.tensile() >= low.tensile() * (1 - ROUNDING));
    if (low.proof().isPresent() && high.proof().isPresent()) {
      assertTrue(high.proof().getAsDouble() >= low.proof().getAsDouble() * (1 - ROUNDING));
    }
  }

  private static CrossWeldTension pull(SliceLine joint, double gauge) {
    return CrossWeldTension.pull(joint, TensionCoupon.over(gauge * MM));
  }
}
