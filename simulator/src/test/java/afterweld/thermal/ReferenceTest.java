package afterweld.thermal;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Values computed by other methods than this field's: time integral of the moving point source,
 * images, brute maximisation, a shell solver with enthalpy. The method and its tolerance stand in
 * each row of the table.
 */
class ReferenceTest {
  static List<ReferenceCase> analytic() {
    List<ReferenceCase> cases = new ArrayList<>();
    double depth = 0;
    for (Table.Row row : Table.read("thermal_reference.csv")) {
      ReferenceCase next = ReferenceCase.of(row, depth);
      depth = next.sourceDepth();
      cases.add(next);
    }
    return cases.stream()
        .filter(item -> item.row().text("belongs_to").equals("analytic field"))
        .toList();
  }

  @ParameterizedTest
  @MethodSource("analytic")
  void agreesWithTheOtherMethod(ReferenceCase reference) {
    Table.Row row = reference.row();
    assertEquals(row.number("value"), reference.computed(), row.number("tolerance"));
  }

  @Test
  void hasEveryRow() {
    assertEquals(68, analytic().size());
  }
}
