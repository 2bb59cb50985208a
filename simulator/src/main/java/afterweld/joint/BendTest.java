package afterweld.joint;

import com.fasterxml.jackson.databind.MappingIterator;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * The former of a guided bend in a qualification test. The code's edition in force decides; the
 * values here say how far they were checked.
 *
 * @param code the code
 * @param metals which metals it is for, in the code's groups
 * @param formerThicknesses diameter of the former, thicknesses of the specimen
 * @param specimen thickness that a thicker plate's specimen is cut down to, m
 * @param source where the value is from
 * @param status how well it is supported
 */
public record BendTest(
    String code,
    String metals,
    double formerThicknesses,
    OptionalDouble specimen,
    String source,
    String status) {
  private static final String RESOURCE = "/afterweld/joint/bend_tests.csv";
  private static final double MM = 1e-3;

  /** All that are known. */
  static List<BendTest> all() {
    try (InputStream in = BendTest.class.getResourceAsStream(RESOURCE);
        MappingIterator<Map<String, String>> rows =
            new CsvMapper()
                .readerForMapOf(String.class)
                .with(CsvSchema.emptySchema().withHeader())
                .readValues(in)) {
      return rows.readAll().stream().map(BendTest::of).toList();
    } catch (IOException e) {
      throw new UncheckedIOException("the formers of bend tests cannot be read", e);
    }
  }

  private static BendTest of(Map<String, String> row) {
    String cutTo = row.get("specimen_mm");
    return new BendTest(
        row.get("code"),
        row.get("metals"),
        Double.parseDouble(row.get("former_thicknesses")),
        cutTo.isEmpty()
            ? OptionalDouble.empty()
            : OptionalDouble.of(Double.parseDouble(cutTo) * MM),
        row.get("source"),
        row.get("status"));
  }

  /** Diameter of the former for a plate's thickness, m. */
  public double formerDiameter(double plateThickness) {
    return formerThicknesses * specimenThickness(plateThickness);
  }

  /** Outer strain that the test asks everywhere when the strip is wrapped round the former. */
  public double strain(double plateThickness) {
    return GuidedBend.outerStrain(
        specimenThickness(plateThickness), formerDiameter(plateThickness));
  }

  private double specimenThickness(double plateThickness) {
    return Math.min(plateThickness, specimen.orElse(plateThickness));
  }
}
