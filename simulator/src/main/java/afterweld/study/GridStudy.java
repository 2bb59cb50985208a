package afterweld.study;

import afterweld.choice.Requirement;
import afterweld.section.Estimate;
import afterweld.section.SectionProfile;
import afterweld.section.SectionSimulation;
import afterweld.section.WeldCase;
import afterweld.thermal.HeatInputException;
import afterweld.thermal.Pass;
import afterweld.thermal.PassHeat;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * A map of the joint over one or two inputs. The arc efficiency of the case as written is kept, so
 * that the bead follows the inputs. Values are of the last state, best estimates, the lowest yield
 * with its error band.
 *
 * @param axes one or two
 * @param nodes with the first axis running fastest
 */
public record GridStudy(List<Axis> axes, List<Node> nodes) {
  private static final Comparator<Node> BY_YIELD = Comparator.comparingDouble(Node::lowestYield);
  private static final int ALONE = 25;
  private static final int TOGETHER = 11;

  /** Copies the lists. */
  public GridStudy {
    axes = List.copyOf(axes);
    nodes = List.copyOf(nodes);
  }

  /**
   * From where to where an input runs.
   *
   * @param input which
   * @param low SI or kelvin
   * @param high SI or kelvin, above {@code low}
   */
  public record Axis(GridInput input, double low, double high) {
    /** Value of one of a number of steps. */
    public double value(int step, int steps) {
      return low + (high - low) * step / (steps - 1);
    }
  }

  /**
   * One place of the map.
   *
   * @param values of the axes, SI or kelvin
   * @param lowestYield lowest local yield, Pa
   * @param lowestYieldLow low end of its error band, Pa
   * @param lowestYieldHigh high end
   * @param tensile of the joint dressed flush, Pa
   * @param softenedWidth from the first to the last metal whose yield is over 2 % below the base of
   *     its side before welding, be it softened base or weld metal, m
   * @param beadWidth widest bead, m
   * @param noWeld why there is no weld; empty if there is one, and the numbers are NaN if not
   */
  public record Node(
      List<Double> values,
      double lowestYield,
      double lowestYieldLow,
      double lowestYieldHigh,
      double tensile,
      double softenedWidth,
      double beadWidth,
      String noWeld) {}

  /** The place with the lowest yield, among those that have one. */
  public Optional<Node> weakest() {
    return known().min(BY_YIELD);
  }

  /** The place whose lowest yield is highest. */
  public Optional<Node> strongest() {
    return known().max(BY_YIELD);
  }

  private Stream<Node> known() {
    return nodes.stream().filter(node -> Double.isFinite(node.lowestYield()));
  }

  /** Whether the weakest and the strongest place lie each in the error band of the other. */
  public boolean insideErrorBand() {
    return weakest().isPresent()
        && strongest().orElseThrow().lowestYield() <= weakest().orElseThrow().lowestYieldHigh()
        && weakest().orElseThrow().lowestYield() >= strongest().orElseThrow().lowestYieldLow();
  }

  /** Number of steps along each axis. */
  public static int steps(int axes) {
    return axes == 1 ? ALONE : TOGETHER;
  }

  /** How many places a map has. */
  public static int size(int axes) {
    return axes == 1 ? ALONE : TOGETHER * TOGETHER;
  }

  /**
   * Computes a map.
   *
   * @param gauge gauge length of the tension test, m
   * @param done called after every place, from any thread
   * @throws HeatInputException if the case as written makes no weld
   */
  public static GridStudy of(WeldCase weldCase, double gauge, List<Axis> axes, Runnable done) {
    List<PassHeat> heats = SectionSimulation.heats(weldCase);
    List<Pass> fixed = heats.stream().map(PassHeat::passAtThisEfficiency).toList();
    double dilution = weldCase.filler().dilution();
    WeldCase kept = CaseChange.dilution(CaseChange.withPasses(weldCase, fixed), dilution);
    List<Node> nodes =
        IntStream.range(0, size(axes.size()))
            .parallel()
            .mapToObj(
                place -> {
                  Node node = node(kept, gauge, values(axes, place), axes);
                  done.run();
                  return node;
                })
            .toList();
    return new GridStudy(axes, nodes);
  }

  private static List<Double> values(List<Axis> axes, int place) {
    int steps = steps(axes.size());
    List<Double> values = new ArrayList<>();
    values.add(axes.get(0).value(place % steps, steps));
    if (axes.size() > 1) {
      values.add(axes.get(1).value(place / steps, steps));
    }
    return values;
  }

  private static Node node(WeldCase kept, double gauge, List<Double> values, List<Axis> axes) {
    WeldCase at = kept;
    for (int axis = 0; axis < axes.size(); axis++) {
      at = axes.get(axis).input().at(at, values.get(axis));
    }
    try {
      SectionProfile profile = SectionSimulation.run(at);
      SectionReading banded = new SectionReading(profile);
      SectionReading reading = banded.exact();
      Estimate weakest = banded.weakest();
      return new Node(
          values,
          reading.lowestYield(),
          weakest.low().yield(),
          weakest.high().yield(),
          JointRun.of(reading, gauge, Requirement.NONE).tensile(),
          reading.softenedWidth(gauge),
          2 * profile.passes().stream().mapToDouble(PassHeat::fusionHalfWidth).max().orElseThrow(),
          "");
    } catch (HeatInputException noWeld) {
      double none = Double.NaN;
      return new Node(values, none, none, none, none, none, none, noWeld.getMessage());
    }
  }
}
