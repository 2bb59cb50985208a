package afterweld.strength;

import afterweld.material.ClassPathTable;
import afterweld.material.Source;
import afterweld.material.Status;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * One hardness in three scales.
 *
 * @param brinell HB, 500 kgf, 10 mm
 * @param vickers HV
 * @param rockwellB HRB, where the scale reaches
 * @param source where the pair comes from
 */
record HardnessPair(double brinell, double vickers, OptionalDouble rockwellB, Source source) {

  /** The table of the class path, rising. */
  static List<HardnessPair> table() {
    return ClassPathTable.rows(HardnessPair.class, "hardness_conversion.csv").stream()
        .map(HardnessPair::of)
        .toList();
  }

  private static HardnessPair of(Map<String, String> row) {
    String rockwell = row.get("HRB");
    return new HardnessPair(
        Double.parseDouble(row.get("HB")),
        Double.parseDouble(row.get("HV")),
        rockwell.isEmpty()
            ? OptionalDouble.empty()
            : OptionalDouble.of(Double.parseDouble(rockwell)),
        new Source(row.get("source"), Status.of(row.get("status"))));
  }
}
