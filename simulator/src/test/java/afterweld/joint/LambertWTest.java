package afterweld.joint;

import static org.junit.jupiter.api.Assertions.assertEquals;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;

class LambertWTest {
  /** The omega constant and W(e) = 1: definition of the function. */
  @Test
  void knownValues() {
    assertEquals(0.5671432904097838, LambertW.of(1), 1e-15);
    assertEquals(1, LambertW.of(Math.E), 1e-15);
    assertEquals(-1, LambertW.of(-1 / Math.E), 1e-7);
    assertEquals(0, LambertW.of(0), 0);
  }

  @Property
  void undoesItsDefinition(@ForAll @DoubleRange(min = -0.9999, max = 6) @Scale(4) double w) {
    double x = w * Math.exp(w);
    double lostNearBranchPoint = 1e-15 / Math.max(1e-15, 1 + w);
    assertEquals(w, LambertW.of(x), 1e-13 * Math.max(1, w) + lostNearBranchPoint);
  }
}
