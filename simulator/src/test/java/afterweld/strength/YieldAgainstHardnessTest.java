package afterweld.strength;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/**
 * Yield = 3.0 HV - 48.1 MPa for 6xxx from 45 HV (Grong, Metallurgical Modelling of Welding, from
 * memory), a relation that the model does not use; cross-check to 12 %.
 */
class YieldAgainstHardnessTest {
  private static final double TOLERANCE = 0.12;

  /** One known misfit: naturally aged 6082, whose yield lies 13 % below the relation. */
  @Test
  void wroughtStatesFollowTheRelation() {
    List<Map<String, String>> wrought =
        PrecipitationStatesTest.rows().stream()
            .filter(row -> row.get("start").equals("wrought"))
            .toList();
    assertTrue(wrought.size() > 50);
    List<String> misfits =
        wrought.stream()
            .filter(row -> misfit(strength(row)) > TOLERANCE)
            .map(row -> row.get("case"))
            .toList();
    assertEquals(List.of("6082 T4 [state 1]"), misfits);
  }

  private static Strength strength(Map<String, String> row) {
    return PrecipitateStrength.of(
        PrecipitationStatesTest.model(row).follow(PrecipitationStatesTest.history(row)));
  }

  private static double misfit(Strength strength) {
    double related = 3.0 * strength.hardness() - 48.1;
    return strength.hardness() < 45 ? 0 : Math.abs(strength.yield() / 1e6 / related - 1);
  }
}
