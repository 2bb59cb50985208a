package afterweld.study;

import afterweld.section.Estimate;
import afterweld.section.SectionProfile;
import afterweld.section.WeldSession;
import afterweld.strength.Strength;
import afterweld.thermal.HeatInputException;
import afterweld.thermal.Pass;
import afterweld.thermal.PassHeat;
import afterweld.weld.WeldCase;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.IntStream;

/**
 * The hardness that a case predicts along a traverse, by arc efficiency. Passes keep the ratio of
 * their efficiencies.
 *
 * <p>Sections are computed at efficiencies a fiftieth apart, as a fit asks for them, and read in
 * between with distances stretched by the ratio of the efficiencies: a peak temperature moves
 * outwards about as the heat grows, so that the two sections nearly agree before they are mixed.
 */
final class TraverseModel {
  /** No arc puts in more (common practice). */
  static final double HIGHEST_EFFICIENCY = 0.9;

  /** No arc puts in less (common practice). */
  private static final double LOWEST_EFFICIENCY = 0.3;

  /** Distance of the efficiencies that are computed (numerics). */
  private static final double SCAN = 0.01;

  private static final int NODES_PER_UNIT = 50;

  private final WeldSession session;
  private final WeldCase weldCase;
  private final List<PassHeat> heats;
  private final double lowest;
  private final Map<Integer, Node> known = new ConcurrentHashMap<>();

  /**
   * The model of a case whose last state is the one measured.
   *
   * @throws HeatInputException if the case makes no weld
   */
  TraverseModel(WeldSession session, WeldCase weldCase) {
    this.session = session;
    double dilution = weldCase.filler().dilution();
    this.weldCase = CaseChange.dilution(weldCase, dilution);
    this.heats = session.heats(weldCase);
    this.lowest = scanned();
  }

  /** Efficiency of the first pass as the case has it. */
  double ownEfficiency() {
    return heats.get(0).efficiency();
  }

  /** Efficiencies of all passes when the first has this one. */
  List<Double> efficiencies(double first) {
    return heats.stream()
        .map(heat -> Math.min(HIGHEST_EFFICIENCY, first * heat.efficiency() / ownEfficiency()))
        .toList();
  }

  /** The lowest efficiency of the first pass at which every pass melts a bead. */
  double lowestEfficiency() {
    return lowest;
  }

  private double scanned() {
    double efficiency = LOWEST_EFFICIENCY;
    while (efficiency < ownEfficiency() - SCAN && !melts(efficiency)) {
      efficiency += SCAN;
    }
    return efficiency;
  }

  private boolean melts(double efficiency) {
    try {
      return !session.heats(at(efficiency)).isEmpty();
    } catch (HeatInputException noBead) {
      return false;
    }
  }

  /** The case with another efficiency. */
  WeldCase at(double efficiency) {
    List<Double> all = efficiencies(efficiency);
    List<Pass> passes =
        IntStream.range(0, heats.size())
            .mapToObj(
                i ->
                    CaseChange.heat(
                        weldCase.passes().get(i),
                        OptionalDouble.empty(),
                        OptionalDouble.of(Math.max(LOWEST_EFFICIENCY, all.get(i)))))
            .toList();
    return CaseChange.withPasses(weldCase, passes);
  }

  /** A section computed at one efficiency. */
  private record Node(double efficiency, SectionReading reading, double beadWidth) {
    double[] hardness(double[] distances, double wanted) {
      double[] places =
          Arrays.stream(distances).map(distance -> distance * efficiency / wanted).toArray();
      return reading.at(places, Strength::hardness);
    }
  }

  /**
   * Hardness, HV.
   *
   * @param distances m, increasing
   */
  double[] hardness(double efficiency, double[] distances) {
    double[] low = below(efficiency).hardness(distances, efficiency);
    double[] high = above(efficiency).hardness(distances, efficiency);
    double share = share(efficiency);
    return IntStream.range(0, low.length)
        .mapToDouble(k -> low[k] + share * (high[k] - low[k]))
        .toArray();
  }

  private static double share(double efficiency) {
    return efficiency * NODES_PER_UNIT - Math.floor(efficiency * NODES_PER_UNIT);
  }

  private Node below(double efficiency) {
    return node((int) Math.floor(efficiency * NODES_PER_UNIT));
  }

  private Node above(double efficiency) {
    return node((int) Math.floor(efficiency * NODES_PER_UNIT) + 1);
  }

  private Node node(int number) {
    return known.computeIfAbsent(number, n -> computed((double) n / NODES_PER_UNIT));
  }

  /** At the ends, where no weld may be made, the nearest efficiency that makes one stands in. */
  private Node computed(double asked) {
    double efficiency = Math.max(lowest, Math.min(HIGHEST_EFFICIENCY, asked));
    SectionProfile profile = session.profile(at(efficiency));
    double width = 2 * profile.passes().get(0).fusionHalfWidth();
    return new Node(efficiency, new SectionReading(profile), width);
  }

  /** Hardness of the left base, far from the weld, HV. */
  double baseHardness(double efficiency) {
    return hardness(efficiency, new double[] {-1})[0];
  }

  /** Hardness of a base with its error band, far from the weld, in the case as written. */
  Estimate base(boolean left) {
    return below(ownEfficiency()).reading().outermost(left);
  }

  /** Width of the first pass's bead, m. */
  double beadWidth(double efficiency) {
    double low = below(efficiency).beadWidth();
    return low + share(efficiency) * (above(efficiency).beadWidth() - low);
  }

  /** Bead width that the case states for the first pass. */
  OptionalDouble measuredWidth() {
    return weldCase.passes().get(0).beadWidth();
  }
}
