package afterweld.material;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The library refuses data files that are incomplete or wrong. */
class LibraryFaultsTest {
  private static final List<DataRow> ALLOYS = MaterialLibrary.alloyRows().toList();
  private static final List<DataRow> GUIDANCE = MaterialLibrary.guidanceRows().toList();
  private static final Set<String> NEEDED =
      Set.of(
          "family",
          "model",
          "solidus",
          "liquidus",
          "density",
          "latent heat",
          "conductivity slope",
          "yield",
          "tensile",
          "minimum yield",
          "minimum tensile",
          "solution temperature",
          "soak",
          "age temperature",
          "age time");

  @Test
  void anAlloyThatLacksANeededValue() {
    for (DataRow row : ALLOYS) {
      if (NEEDED.contains(row.property())) {
        List<DataRow> without = ALLOYS.stream().filter(other -> !other.equals(row)).toList();
        Exception fault =
            assertThrows(
                IllegalStateException.class,
                () -> MaterialLibrary.of(without, GUIDANCE),
                row::toString);
        assertTrue(fault.getMessage().startsWith(row.alloy() + ": "), fault.getMessage());
      }
    }
  }

  @Test
  void anAlloyWithoutConductivityOrUse() {
    List<DataRow> cold =
        ALLOYS.stream().filter(row -> !row.property().equals("conductivity")).toList();
    assertThrows(IllegalStateException.class, () -> MaterialLibrary.of(cold, GUIDANCE));
    List<DataRow> unsold =
        ALLOYS.stream().filter(row -> !row.property().equals("sold as")).toList();
    assertThrows(IllegalStateException.class, () -> MaterialLibrary.of(unsold, GUIDANCE));
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 3, 6})
  void aPairThatLacksARating(int index) {
    List<DataRow> without =
        GUIDANCE.stream().filter(row -> !row.equals(GUIDANCE.get(index))).toList();
    assertThrows(IllegalStateException.class, () -> MaterialLibrary.of(ALLOYS, without));
  }

  @Test
  void aValueStatedTwice() {
    List<DataRow> twice = new ArrayList<>(ALLOYS);
    twice.add(ALLOYS.get(40));
    Exception fault =
        assertThrows(IllegalStateException.class, () -> MaterialLibrary.of(twice, GUIDANCE));
    assertEquals("stated twice in the data files: " + ALLOYS.get(40).key(), fault.getMessage());
  }

  @Test
  void aValueWithoutSource() {
    assertRefused(
        IllegalArgumentException.class, row -> with(row, row.value(), row.unit(), " ", "read"));
  }

  @Test
  void anUnknownStatus() {
    assertRefused(
        IllegalArgumentException.class,
        row -> with(row, row.value(), row.unit(), row.source(), "read+memory"));
  }

  @Test
  void aValueInAnotherUnitOrNone() {
    assertRefused(
        IllegalStateException.class, row -> with(row, row.value(), "K", row.source(), "read"));
    assertRefused(
        IllegalStateException.class, row -> with(row, row.value(), "", row.source(), "read"));
  }

  @Test
  void aNumberThatIsNone() {
    assertRefused(
        IllegalStateException.class, row -> with(row, "about 582", "°C", row.source(), "read"));
  }

  private static void assertRefused(
      Class<? extends Exception> fault, UnaryOperator<DataRow> change) {
    DataRow solidus =
        ALLOYS.stream().filter(row -> row.property().equals("solidus")).findFirst().orElseThrow();
    List<DataRow> rows =
        ALLOYS.stream().map(row -> row.equals(solidus) ? change.apply(row) : row).toList();
    assertThrows(fault, () -> MaterialLibrary.of(rows, GUIDANCE));
  }

  private static DataRow with(
      DataRow row, String value, String unit, String source, String status) {
    return new DataRow(row.alloy(), row.property(), row.qualifier(), value, unit, source, status);
  }
}
