package afterweld.joint.bend;

import afterweld.material.Alloy;
import afterweld.material.ClassPathTable;
import afterweld.quantity.Check;
import afterweld.thermal.furnace.FurnaceStep;
import afterweld.thermal.furnace.FurnaceStep.Anneal;
import afterweld.thermal.furnace.FurnaceStep.SolutionTreat;
import afterweld.weld.Joint;
import afterweld.weld.Side;
import afterweld.weld.WeldCase;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;

/**
 * The former of a guided bend in a qualification test. The code's edition in force decides; the
 * values here say how far they were checked.
 *
 * @param code the code
 * @param groups the code's groups of metals it is for
 * @param metals the same in words
 * @param formerThicknesses diameter of the former, thicknesses of the specimen
 * @param specimen thickness that a thicker plate's specimen is cut down to, m
 * @param source where the value is from
 * @param status how well it is supported
 */
public record BendTest(
    String code,
    Set<String> groups,
    String metals,
    double formerThicknesses,
    OptionalDouble specimen,
    String source,
    String status) {
  private static final String RESOURCE = "bend_tests.csv";
  private static final String GROUPS = "bend_groups.csv";
  private static final String SILICON_FILLER = "F23";
  private static final String ANNEALED = "-annealed";
  private static final double MM = 1e-3;

  /** Copies the groups. */
  public BendTest {
    Check.said("code", code);
    Check.positive("former", formerThicknesses, "thicknesses");
    Check.positive("specimen", specimen, "m");
    Check.said("source", source);
    groups = Set.copyOf(groups);
  }

  /** All that are known. */
  static List<BendTest> all() {
    return ClassPathTable.rows(BendTest.class, RESOURCE).stream().map(BendTest::of).toList();
  }

  private static BendTest of(Map<String, String> row) {
    String cutTo = row.get("specimen_mm");
    return new BendTest(
        row.get("code"),
        Set.of(row.get("groups").split(" ", -1)),
        row.get("metals"),
        Double.parseDouble(row.get("former_thicknesses")),
        cutTo.isEmpty()
            ? OptionalDouble.empty()
            : OptionalDouble.of(Double.parseDouble(cutTo) * MM),
        row.get("source"),
        row.get("status"));
  }

  /**
   * The test of a weld: the widest former that its bases and its filler ask for. Empty where one of
   * them is in no group with a former, as castings are, and where the joint is no butt joint.
   */
  static Optional<BendTest> of(WeldCase weldCase) {
    return of(weldCase, weldCase.afterWeld());
  }

  /** The test of the joint as welded: an anneal after welding changes the former. */
  static Optional<BendTest> asWelded(WeldCase weldCase) {
    return of(weldCase, List.of());
  }

  private static Optional<BendTest> of(WeldCase weldCase, List<FurnaceStep> steps) {
    if (!bends(weldCase.joint())) {
      return Optional.empty();
    }
    Stream<String> bases =
        Stream.of(weldCase.left(), weldCase.right()).map(side -> group(side, steps));
    Stream<String> fillers =
        weldCase.filler().alloy().map(Alloy::name).filter(name -> name.startsWith("4")).stream()
            .map(name -> SILICON_FILLER);
    List<Optional<BendTest>> asked =
        Stream.concat(bases, fillers).distinct().map(BendTest::forGroup).toList();
    return asked.stream().allMatch(Optional::isPresent)
        ? asked.stream()
            .flatMap(Optional::stream)
            .max(Comparator.comparingDouble(BendTest::formerThicknesses))
        : Optional.empty();
  }

  /** Whether the codes bend such a joint: fillet welds are broken and etched (from memory). */
  static boolean bends(Joint joint) {
    return joint == Joint.BUTT;
  }

  private static Optional<BendTest> forGroup(String group) {
    return all().stream().filter(test -> test.groups().contains(group)).findFirst();
  }

  private static String group(Side side, List<FurnaceStep> steps) {
    String group =
        ClassPathTable.rows(BendTest.class, GROUPS).stream()
            .filter(row -> row.get("alloy").equals(side.alloy().name()))
            .map(row -> row.get("group"))
            .findFirst()
            .orElse("");
    boolean annealed =
        steps.isEmpty()
            ? side.temper().name().equals("O")
            : steps.get(steps.size() - 1) instanceof Anneal
                || (side.temper().name().equals("O")
                    && steps.stream().noneMatch(SolutionTreat.class::isInstance));
    return annealed && side.alloy().heatTreatable() ? group + ANNEALED : group;
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

  /** Thickness of the specimen of a plate, m. */
  double specimenThickness(double plateThickness) {
    return Math.min(plateThickness, specimen.orElse(plateThickness));
  }
}
