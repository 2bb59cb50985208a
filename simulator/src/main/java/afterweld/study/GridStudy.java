package afterweld.study;

import afterweld.choice.answer.Requirement;
import afterweld.joint.JointReport;
import afterweld.joint.JointStrength;
import afterweld.quantity.Check;
import afterweld.section.SectionProfile;
import afterweld.section.WeldSession;
import afterweld.thermal.HeatInputException;
import afterweld.thermal.Pass;
import afterweld.thermal.PassHeat;
import afterweld.weld.WeldCase;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A map of the joint over one or two inputs. The arc efficiency of the case as written is kept, so
 * that the bead follows the inputs. Values are of the last state; places are ranked by what the
 * case requires ({@link Aim}).
 *
 * @param aim what places are ranked by
 * @param axes one or two
 * @param nodes with the first axis running fastest
 * @param asWritten the joint of the case as it is written
 * @param efficiencies arc efficiency of each pass all over the map
 */
public record GridStudy(
    Aim aim, List<Axis> axes, List<Node> nodes, JointPlace asWritten, List<Double> efficiencies) {
  private static final int ALONE = 25;
  private static final int TOGETHER = 11;

  /** Copies the lists. */
  public GridStudy {
    axes = List.copyOf(axes);
    nodes = List.copyOf(nodes);
    efficiencies = List.copyOf(efficiencies);
  }

  /**
   * From where to where an input runs.
   *
   * @param input which
   * @param low SI or kelvin
   * @param high SI or kelvin, above {@code low}
   */
  public record Axis(GridInput input, double low, double high) {
    /** Refuses what it cannot be. */
    public Axis {
      Check.rising("ends of " + input.key(), low, high);
    }

    /** Value of one of a number of steps. */
    public double value(int step, int steps) {
      return low + (high - low) * step / (steps - 1);
    }
  }

  /**
   * One place of the map. Where nothing is claimed of the joint all numbers but the bead's are NaN.
   *
   * @param values of the axes, SI or kelvin
   * @param joint the joint there
   * @param lowestYield lowest local yield with its error band, Pa
   * @param softenedWidth from the first to the last metal whose yield is over 2 % below the base of
   *     its side before welding, be it softened base or weld metal, m
   * @param beadWidth widest bead, m; NaN where there is no weld
   */
  public record Node(
      List<Double> values,
      JointPlace joint,
      Band lowestYield,
      double softenedWidth,
      double beadWidth) {
    /** What it is ranked by; NaN where it is blank. */
    public double value() {
      return joint.value();
    }

    Node against(List<String> more) {
      return new Node(values, joint.against(more), lowestYield, softenedWidth, beadWidth);
    }
  }

  /** A value with its error band, Pa. */
  public record Band(double middle, double low, double high) {
    /** Nothing is claimed. */
    public static final Band NONE = new Band(Double.NaN, Double.NaN, Double.NaN);
  }

  /** Which places are best. */
  public Ranking ranking() {
    return new Ranking(nodes.stream().map(Node::joint).toList());
  }

  /** What it goes over. */
  public List<GridInput> inputs() {
    return axes.stream().map(Axis::input).toList();
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
   * @param session where welds that were computed are kept
   * @param gauge gauge length of the tension test, m
   * @param asked what the case requires
   * @param done called after every place, from any thread
   * @throws HeatInputException if the case as written makes no weld
   */
  public static GridStudy of(
      WeldSession session,
      WeldCase weldCase,
      double gauge,
      Requirement asked,
      List<Axis> axes,
      Runnable done) {
    List<PassHeat> heats = session.heats(weldCase);
    List<Pass> fixed = heats.stream().map(PassHeat::passAtThisEfficiency).toList();
    double dilution = weldCase.filler().dilution();
    WeldCase kept = CaseChange.dilution(CaseChange.withPasses(weldCase, fixed), dilution);
    JointPlace asWritten = JointPlace.of(session.profile(weldCase), gauge, asked);
    List<Node> nodes =
        IntStream.range(0, size(axes.size()))
            .parallel()
            .mapToObj(
                place -> {
                  List<Double> values = values(axes, place);
                  WeldCase at = at(kept, axes, values);
                  Node node = node(session, at, gauge, asked, values);
                  done.run();
                  return ages(axes) ? node.against(UnrankedAgeing.why(at)) : node;
                })
            .toList();
    List<Double> efficiencies = heats.stream().map(PassHeat::efficiency).toList();
    return new GridStudy(Aim.of(asked), axes, nodes, asWritten, efficiencies);
  }

  private static boolean ages(List<Axis> axes) {
    return axes.stream().map(Axis::input).anyMatch(GridInput::ages);
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

  private static WeldCase at(WeldCase kept, List<Axis> axes, List<Double> values) {
    WeldCase at = kept;
    for (int axis = 0; axis < axes.size(); axis++) {
      at = axes.get(axis).input().at(at, values.get(axis));
    }
    return at;
  }

  private static Node node(
      WeldSession session, WeldCase at, double gauge, Requirement asked, List<Double> values) {
    try {
      SectionProfile profile = session.profile(at);
      JointStrength pulled = JointReport.finished(profile, gauge);
      JointPlace joint = JointPlace.of(profile, pulled, asked);
      double bead =
          2 * profile.passes().stream().mapToDouble(PassHeat::fusionHalfWidth).max().orElseThrow();
      if (!joint.blank().isEmpty()) {
        return new Node(values, joint, Band.NONE, Double.NaN, bead);
      }
      SectionReading reading = new SectionReading(profile);
      Band lowest =
          new Band(pulled.lowestYield(), pulled.lowestYieldLow(), pulled.lowestYieldHigh());
      return new Node(values, joint, lowest, reading.exact().softenedWidth(gauge), bead);
    } catch (HeatInputException noWeld) {
      JointPlace none = JointPlace.none("No weld: " + noWeld.getMessage() + ".");
      return new Node(values, none, Band.NONE, Double.NaN, Double.NaN);
    }
  }
}
