package afterweld.section;

import afterweld.metallurgy.PrecipitateState;
import afterweld.metallurgy.StoredWorkState;
import afterweld.quantity.UnitSystem;
import afterweld.strength.Strength;
import java.util.ArrayList;
import java.util.List;

/**
 * How a place beside the weld is named from what the weld did to it. Thresholds stand here and
 * nowhere else (assumed; chosen so that the names mean what the trade means by them).
 *
 * <p>Base ends where the yield as welded, waiting time included, is over 2 % below that before
 * welding; what lies nearer the weld has another name, whatever its yield came back to. Metal is
 * solutionized only where the last pass that counts took it above 480 °C (common practice: above
 * about 480 to 500 °C) and it stayed in solution: at 320 to 480 °C coarse precipitates grow in the
 * seconds of a pass. So a T4 start has the order of a T6 start: solutionized, annealed, base.
 *
 * <p>Going outwards the names follow their order: once a place is annealed, no place beyond it is
 * solutionized.
 */
final class ZoneRule {
  /** A yield loss under this share is no loss. */
  static final double UNCHANGED_YIELD = 0.02;

  /** Metal of a lower peak keeps its coarse precipitates, K. */
  static final double DISSOLVES = 480 + UnitSystem.ZERO_CELSIUS;

  /** From this peak on, coarse precipitates grow in the seconds of a pass, K. */
  private static final double COARSENS = 320 + UnitSystem.ZERO_CELSIUS;

  /**
   * With at most this share of the hardening solute in precipitates the metal counts as dissolved.
   */
  private static final double DISSOLVED = 0.40;

  /** With less than this share of the needles left the metal counts as annealed. */
  private static final double NEEDLES_LEFT = 0.20;

  /** Metal with less than this share of the hardening solute in needles has none to lose. */
  private static final double NO_NEEDLES = 0.01;

  private ZoneRule() {}

  /** Whether metal is hardened by needles, as T6 is and T4 is not. */
  static boolean hasNeedles(PrecipitateState state) {
    return state.needleUnits() >= NO_NEEDLES * state.hardeningSolute();
  }

  /** What heat-treatable metal is called that the weld changed. */
  static Zone precipitation(PrecipitateState before, PrecipitateState cooled) {
    boolean needlesGone =
        !hasNeedles(before) || cooled.needleUnits() < NEEDLES_LEFT * before.needleUnits();
    if (!needlesGone) {
      return Zone.OVERAGED;
    }
    boolean dissolved = cooled.totalUnits() <= DISSOLVED * before.hardeningSolute();
    return dissolved ? Zone.SOLUTIONIZED : Zone.ANNEALED;
  }

  /** What work-hardened metal is called that the weld changed. */
  static Zone recrystallization(StoredWorkState cooled) {
    return cooled.recrystallized() > 0.5 ? Zone.RECRYSTALLIZED : Zone.RECOVERED;
  }

  /**
   * Zone of a place outside the fusion line and the solidus.
   *
   * @param changed what its state is called if the weld changed it
   * @param passPeaks peak temperature of each pass, K
   * @param strengths before welding and as welded
   */
  static Zone of(Zone changed, List<Double> passPeaks, List<Strength> strengths) {
    Zone named = changed == Zone.SOLUTIONIZED && coarse(passPeaks) ? Zone.ANNEALED : changed;
    return named == Zone.SOLUTIONIZED || softer(strengths) ? named : Zone.BASE;
  }

  /**
   * Whether the passes left coarse precipitates: the last one of 320 °C or more did not reach 480
   * °C, or none reached 320 °C.
   *
   * @param passPeaks peak temperature of each pass, K
   */
  static boolean coarse(List<Double> passPeaks) {
    for (int pass = passPeaks.size() - 1; pass >= 0; pass--) {
      if (passPeaks.get(pass) >= COARSENS) {
        return passPeaks.get(pass) < DISSOLVES;
      }
    }
    return true;
  }

  /** Whether metal with these strengths before welding and as welded became softer. */
  static boolean softer(List<Strength> strengths) {
    return strengths.get(1).yield() < (1 - UNCHANGED_YIELD) * strengths.get(0).yield();
  }

  /** The stations of one side, nearest the weld first, their names in order outwards. */
  static List<StationRun> inOrder(List<StationRun> outwards) {
    List<StationRun> ordered = new ArrayList<>(outwards);
    for (int i = ordered.size() - 2; i >= 0; i--) {
      if (ordered.get(i).zone() == Zone.BASE) {
        ordered.set(i, ordered.get(i).inZone(ordered.get(i + 1).zone()));
      }
    }
    for (int i = 1; i < ordered.size(); i++) {
      Zone inner = ordered.get(i - 1).zone();
      if (ordered.get(i).zone().compareTo(inner) < 0) {
        ordered.set(i, ordered.get(i).inZone(inner));
      }
    }
    return ordered;
  }
}
