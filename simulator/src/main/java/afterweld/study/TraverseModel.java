package afterweld.study;

import afterweld.section.SectionSimulation;
import afterweld.section.WeldCase;
import afterweld.strength.Strength;
import afterweld.thermal.HeatInputException;
import afterweld.thermal.Pass;
import afterweld.thermal.PassHeat;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.IntStream;

/**
 * The hardness that a case predicts along a traverse, by arc efficiency. Sections are kept, since a
 * fit asks for the same ones again. Passes keep the ratio of their efficiencies.
 */
final class TraverseModel {
  static final double HIGHEST_EFFICIENCY = 0.9;
  private static final double LOWEST_EFFICIENCY = 0.3;
  private static final double SCAN = 0.01;

  private final WeldCase weldCase;
  private final List<PassHeat> heats;
  private final Map<Double, SectionReading> known = new ConcurrentHashMap<>();

  /**
   * The model of a case whose last state is the one measured.
   *
   * @throws HeatInputException if the case makes no weld
   */
  TraverseModel(WeldCase weldCase) {
    double dilution = weldCase.filler().dilution();
    this.weldCase = CaseChange.dilution(weldCase, dilution);
    this.heats = SectionSimulation.heats(weldCase);
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
    double efficiency = LOWEST_EFFICIENCY;
    while (efficiency < ownEfficiency() - SCAN && !melts(efficiency)) {
      efficiency += SCAN;
    }
    return efficiency;
  }

  private boolean melts(double efficiency) {
    try {
      return !SectionSimulation.heats(at(efficiency)).isEmpty();
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

  /**
   * Hardness, HV.
   *
   * @param distances m, increasing
   */
  double[] hardness(double efficiency, double[] distances) {
    return reading(efficiency).at(distances, Strength::hardness);
  }

  /** Hardness of the left base, far from the weld, HV. */
  double baseHardness(double efficiency) {
    return hardness(efficiency, new double[] {-1})[0];
  }

  /** Width of the first pass's bead, m. */
  double beadWidth(double efficiency) {
    return 2 * SectionSimulation.heats(at(efficiency)).get(0).fusionHalfWidth();
  }

  /** Bead width that the case states for the first pass. */
  OptionalDouble measuredWidth() {
    return weldCase.passes().get(0).beadWidth();
  }

  private SectionReading reading(double efficiency) {
    return known.computeIfAbsent(
        efficiency, value -> new SectionReading(SectionSimulation.run(at(value))));
  }
}
