package afterweld.section;

import afterweld.metallurgy.PrecipitateState;
import afterweld.metallurgy.StoredWorkState;
import afterweld.strength.PrecipitateStrength;
import afterweld.strength.Strength;
import java.util.ArrayList;
import java.util.List;

/**
 * How a place beside the weld is named from what the weld did to it: the state right after cooling
 * against the state before. Thresholds stand here and nowhere else (assumed; chosen so that the
 * names mean what the trade means by them).
 *
 * <p>Far out, where needles dissolve but the visit is too short for coarse phases to grow, little
 * precipitate is left as well. That is not the metal the trade calls solutionized: going outwards,
 * once a place is annealed or overaged, no place beyond it is. Annealed metal (O) that only lost
 * some of its coarse precipitate and became no softer is base still.
 */
final class ZoneRule {
  /** A yield loss under this share is no loss. */
  private static final double UNCHANGED_YIELD = 0.02;

  /** A loss of precipitate under this share of the hardening solute is no loss. */
  private static final double UNCHANGED_PRECIPITATE = 0.05;

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

  /** Zone of a heat-treatable metal outside the fusion line and the solidus. */
  static Zone precipitation(PrecipitateState before, PrecipitateState cooled) {
    double solute = before.hardeningSolute();
    if (keptStrength(before, cooled)
        && before.totalUnits() - cooled.totalUnits() <= UNCHANGED_PRECIPITATE * solute) {
      return Zone.BASE;
    }
    boolean dissolved = cooled.totalUnits() <= DISSOLVED * solute;
    boolean noNeedlesBefore = !hasNeedles(before);
    if (noNeedlesBefore && !dissolved && keptStrength(before, cooled)) {
      return Zone.BASE;
    }
    boolean needlesGone =
        noNeedlesBefore || cooled.needleUnits() < NEEDLES_LEFT * before.needleUnits();
    if (!needlesGone) {
      return Zone.OVERAGED;
    }
    return dissolved ? Zone.SOLUTIONIZED : Zone.ANNEALED;
  }

  /** Zone of a work-hardened metal outside the fusion line and the solidus. */
  static Zone recrystallization(StoredWorkState cooled, double yieldBefore, double yieldCooled) {
    if (yieldCooled >= (1 - UNCHANGED_YIELD) * yieldBefore) {
      return Zone.BASE;
    }
    return cooled.recrystallized() > 0.5 ? Zone.RECRYSTALLIZED : Zone.RECOVERED;
  }

  /** Whether metal with these strengths before welding and as welded became softer. */
  static boolean softer(List<Strength> strengths) {
    return strengths.get(1).yield() < (1 - UNCHANGED_YIELD) * strengths.get(0).yield();
  }

  private static boolean keptStrength(PrecipitateState before, PrecipitateState cooled) {
    double yieldBefore = PrecipitateStrength.of(before).yield();
    return PrecipitateStrength.of(cooled).yield() >= (1 - UNCHANGED_YIELD) * yieldBefore;
  }

  /**
   * The stations of one side, nearest the weld first, with no solutionized metal beyond softened.
   */
  static List<StationRun> inOrder(List<StationRun> outwards) {
    List<StationRun> ordered = new ArrayList<>();
    boolean softened = false;
    for (StationRun run : outwards) {
      softened |= run.zone() == Zone.ANNEALED || run.zone() == Zone.OVERAGED;
      boolean beyond = softened && run.zone() == Zone.SOLUTIONIZED;
      ordered.add(beyond ? run.inZone(Zone.ANNEALED) : run);
    }
    return ordered;
  }
}
